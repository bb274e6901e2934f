package org.shotledger.display;

/** A result that carries a verdict; the headless runner prints the last one when a notebook is done. */
public interface HasVerdict {

    /**
     * The verdict in one line.
     *
     * @return one sentence of plain text, without a line break
     */
    String verdictLine();
}
