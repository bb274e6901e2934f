package org.shotledger.supply;

import org.shotledger.units.Require;

/**
 * A fuel pressure regulator.
 *
 * @param name what it is called
 * @param basePressure pressure held above ambient with the reference port at ambient, Pa, 0.5 to 10 bar
 * @param boostReference Pa more for each Pa of plenum pressure above ambient: 0 not referenced, 1 referenced, up to 3
 */
public record Regulator(String name, double basePressure, double boostReference) {
    public Regulator {
        Require.named("regulator", name);
        Require.within("base pressure of " + name, basePressure, 0.5e5, 10e5, "Pa");
        Require.within("boost reference of " + name, boostReference, 0, 3, "");
    }

    /**
     * Pressure in the rail or at the jet.
     *
     * @param ambient Pa absolute
     * @param plenum Pa absolute
     * @return Pa absolute
     */
    public double railPressure(double ambient, double plenum) {
        return ambient + basePressure + boostReference * (plenum - ambient);
    }

    /**
     * Pressure that drives fuel into the plenum.
     *
     * @param ambient Pa absolute
     * @param plenum Pa absolute
     * @return Pa; negative where boost would push back into the fuel line
     */
    public double dropIntoPlenum(double ambient, double plenum) {
        return railPressure(ambient, plenum) - plenum;
    }
}
