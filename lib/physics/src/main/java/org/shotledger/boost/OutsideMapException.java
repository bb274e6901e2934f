package org.shotledger.boost;

/** An operating point that the compressor map does not cover; the map is never extrapolated. */
public final class OutsideMapException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final MapEdge edge;

    OutsideMapException(String map, MapEdge edge, double correctedFlow, double pressureRatio, String allowed) {
        super("The point of " + correctedFlow + " kg/s corrected flow at pressure ratio " + pressureRatio
                + " lies beyond " + edge.words() + " of the compressor map " + map + "; " + allowed);
        this.edge = edge;
    }

    /**
     * The border that was crossed.
     *
     * @return which
     */
    public MapEdge edge() {
        return edge;
    }
}
