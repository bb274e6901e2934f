package org.shotledger.boost;

/** The borders of a compressor map. */
public enum MapEdge {
    /** Less flow than the first points of the lines: the flow breaks down. */
    SURGE("the surge line"),
    /** More flow than the last points of the lines. */
    CHOKE("the choke line"),
    /** Faster than the fastest line or than the speed limit. */
    OVERSPEED("the fastest line"),
    /** Slower than the slowest line. */
    SLOWEST("the slowest line");

    private final String words;

    MapEdge(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "the surge line"}
     */
    public String words() {
        return words;
    }
}
