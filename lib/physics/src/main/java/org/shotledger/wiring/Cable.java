package org.shotledger.wiring;

import static org.shotledger.units.QuantityKind.CURRENT;
import static org.shotledger.units.UnitSystem.SI;

/**
 * Wire and fuse for one load.
 *
 * @param load the load
 * @param wire the thinnest wire that serves
 * @param fuse the fuse that guards the wire
 * @param allowed current the wire may carry, A
 * @param drop voltage lost there and back at the load's current, V
 * @param decidedBy what a thinner wire would have failed
 */
public record Cable(Load load, Wire wire, Fuse fuse, double allowed, double drop, String decidedBy) {

    /**
     * Chooses fuse, then wire: the wire must carry the fuse's rating, so that the fuse opens first, and lose no more voltage than
     * allowed.
     *
     * @param load the load
     * @param rules what holds for every cable
     * @return the cable
     * @throws IllegalArgumentException when no blade fuse or no wire of the table serves
     */
    public static Cable of(Load load, Rules rules) {
        Fuse fuse = Fuse.smallest(load.current(), load.surge(), load.surgeTime())
                .orElseThrow(() -> new IllegalArgumentException("The load '" + load.name() + "' takes "
                        + CURRENT.text(load.current(), SI) + ", and " + CURRENT.text(load.surge(), SI)
                        + " at switching on; no blade fuse up to 100 A carries that, so"
                        + " split the load or guard it by a bolted fuse."));
        String decidedBy = "thinnest wire of the table";
        for (Wire wire : Ampacity.wires()) {
            double allowed = Ampacity.allowed(wire, load.engineSpace(), rules.bundled());
            double drop = load.current() * wire.resistance(2 * load.length(), rules.temperature());
            if (allowed < fuse.rating()) {
                decidedBy = "current";
            } else if (drop > rules.allowedDrop() * rules.voltage()) {
                decidedBy = "voltage drop";
            } else {
                return new Cable(load, wire, fuse, allowed, drop, decidedBy);
            }
        }
        throw new IllegalArgumentException("The load '" + load.name() + "' of "
                + CURRENT.text(load.current(), SI) + " over "
                + load.length() + " m needs a wire thicker than 0 AWG; split it or shorten its cable.");
    }

    /**
     * What holds for every cable of a car.
     *
     * @param voltage supply voltage with the engine running, V
     * @param temperature of the copper under load, K
     * @param allowedDrop voltage that may be lost there and back, as a share of the supply, 0 to 1
     * @param bundled wires under load in one bundle, 1 or more
     */
    public record Rules(double voltage, double temperature, double allowedDrop, int bundled) {}
}
