package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * The simplest balance: the heat of combustion is that of the fuel, or of the oxygen where that is less,
 * {@code Q = eta min(sum m_f LHV, lambda sum m_f LHV)}. It overstates rich mixtures, because the carbon monoxide and
 * hydrogen they leave hold more heat per missing oxygen than the fuel does.
 *
 * @param burnedFraction share of that heat really freed, 0.8 to 1; 0.92 to 0.98 is common practice
 */
public record OxygenLimited(double burnedFraction) implements CombustionModel {
    /** Checks the share. */
    public OxygenLimited {
        Require.within("burned fraction", burnedFraction, 0.8, 1, "");
    }

    @Override
    public HeatRelease burn(Mixture mixture) {
        double lambda = mixture.lambda();
        double share = burnedFraction * Math.min(1, lambda);
        boolean rich = lambda < 1;
        return new HeatRelease(
                share * mixture.fuelPower(),
                mixture.nitrous() * Oxidisers.NITROUS_OXIDE_DECOMPOSITION,
                share,
                rich ? HeatRelease.Scarce.OXYGEN : HeatRelease.Scarce.FUEL);
    }

    @Override
    public String basis() {
        return "heat limited by fuel or by oxygen (Thornton 1917), burned fraction " + burnedFraction;
    }
}
