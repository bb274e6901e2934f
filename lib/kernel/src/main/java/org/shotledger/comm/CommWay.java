package org.shotledger.comm;

/** How messages reach the page; a kernel implements it. */
public interface CommWay {

    /**
     * Sends one message.
     *
     * @param type {@code comm_open}, {@code comm_msg} or {@code comm_close}
     * @param comm the comm it belongs to
     * @param message its content
     */
    void send(String type, Comm comm, CommMessage message);
}
