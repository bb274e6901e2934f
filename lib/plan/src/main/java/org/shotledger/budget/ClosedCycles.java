package org.shotledger.budget;

import org.shotledger.build.Build;
import org.shotledger.build.FuelStreams;
import org.shotledger.engine.Charge;
import org.shotledger.engine.CycleInput;
import org.shotledger.engine.TrappedCharge;
import org.shotledger.fuel.HeatRelease;
import org.shotledger.fuel.Octane;

/**
 * Makes the closed cycle of one cylinder out of a charge.
 *
 * @param build the build
 * @param timing when and how fast the charge burns
 */
record ClosedCycles(Build build, BurnTiming timing) {
    /** Common practice, no source: residual gas, wall, octane where unknown; late evaporation left out, on the safe side. */
    private static final double RESIDUAL_TEMPERATURE = 1100;

    private static final double LATE_EVAPORATION = 0;
    private static final double WALL_TEMPERATURE = 450;
    private static final double UNKNOWN_OCTANE = 100;

    CycleInput cycle(double rpm, Charge charge, HeatRelease heat, double exhaustPressure, double retard, boolean on) {
        FuelStreams fuels = build.fuels();
        TrappedCharge.Inside inside = new TrappedCharge.Inside(
                exhaustPressure, RESIDUAL_TEMPERATURE, LATE_EVAPORATION, 1 - fuels.mainEvaporated());
        return TrappedCharge.of(build.engine(), rpm, charge, heat, inside)
                .cycle(
                        rpm,
                        timing.burning(retard, on),
                        WALL_TEMPERATURE,
                        exhaustPressure,
                        fuels.main().octane().map(Octane::research).orElse(UNKNOWN_OCTANE));
    }
}
