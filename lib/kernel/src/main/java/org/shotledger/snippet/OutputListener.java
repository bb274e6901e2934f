package org.shotledger.snippet;

/** Told what a cell prints. */
@FunctionalInterface
public interface OutputListener {

    /**
     * Some text was printed.
     *
     * @param stream {@code stdout} or {@code stderr}
     * @param text whole characters, usually many lines at once
     */
    void printed(String stream, String text);
}
