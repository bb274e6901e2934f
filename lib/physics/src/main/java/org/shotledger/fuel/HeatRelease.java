package org.shotledger.fuel;

/**
 * Heat freed in the cylinders per second, by origin.
 *
 * @param fromFuel heat of combustion freed, W
 * @param fromDecomposition heat freed by the nitrous oxide falling apart, W
 * @param combustionEfficiency heat of combustion freed over the heating value of all fuel, 0 to 1
 * @param limit what ran out first
 */
public record HeatRelease(double fromFuel, double fromDecomposition, double combustionEfficiency, Scarce limit) {
    /** What the mixture runs out of. */
    public enum Scarce {
        /** Rich: oxygen is used up. */
        OXYGEN,
        /** Lean: fuel is used up. */
        FUEL
    }

    /**
     * All heat.
     *
     * @return W
     */
    public double total() {
        return fromFuel + fromDecomposition;
    }
}
