package org.shotledger.setup;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * What is done with the bottles over a day. It decides nothing about a single pass.
 *
 * @param rest time between the end of one pass and the start of the next, s, 10 to 1e5
 * @param voltage supply voltage of the heater during the wait, V, 8 to 18
 * @param bottles bottles of the car's kind that are taken along filled, 1 to 10
 * @param mother the bottle from which the car's bottle is filled again; empty for none
 * @param chilledTo temperature to which the car's bottle is chilled before it is filled, K, 200 to 309; empty for as cold as it must be
 * @param scaleStep step of the table from weight to passes left, kg, 0.01 to 10
 */
public record DaySheet(
        double rest, double voltage, int bottles, Optional<Mother> mother, OptionalDouble chilledTo, double scaleStep) {
    /** Twenty minutes between passes, the battery alone, one bottle, no refill, steps of a pound: common practice, no source. */
    public static final DaySheet USUAL =
            new DaySheet(1200, 12.5, 1, Optional.empty(), OptionalDouble.empty(), UnitFactors.POUND);

    /**
     * A bottle to fill from; it stands so that liquid leaves it.
     *
     * @param waterCapacity inside volume, m3, 1e-3 to 1
     * @param charge nitrous oxide in it when it is full, kg, 0.5 to 700
     * @param temperature of bottle and contents, K, 233 to 309
     */
    public record Mother(double waterCapacity, double charge, double temperature) {
        public Mother {
            Require.within("water capacity of the mother bottle", waterCapacity, 1e-3, 1, "m3");
            Require.within("charge of the mother bottle", charge, 0.5, 700, "kg");
            Require.within("temperature of the mother bottle", temperature, 233, 309, "K");
        }
    }

    public DaySheet {
        Require.within("time between two passes", rest, 10, 1e5, "s");
        Require.within("supply voltage of the heater", voltage, 8, 18, "V");
        Require.within("number of bottles", bottles, 1, 10, "");
        chilledTo.ifPresent(t -> Require.within("temperature to which the bottle is chilled", t, 200, 309, "K"));
        Require.within("step of the scale table", scaleStep, 0.01, 10, "kg");
    }
}
