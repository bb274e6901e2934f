package org.shotledger.budget;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.bottle.Charge;
import org.shotledger.bottle.Emptying;
import org.shotledger.bottle.HeatInput;
import org.shotledger.bottle.History;
import org.shotledger.bottle.Outflow;
import org.shotledger.bottle.Sample;
import org.shotledger.build.BottleSheet;

/**
 * One bottle over a day of passes, heated back between them.
 *
 * <p>A pass is taken as in the budget's own count: contents in equilibrium, no heat from the shell, which is the safe side. Between passes
 * shell, air and heater warm the bottle (lumped shell, {@link HeatInput#surroundings}) until it is back at its start temperature.
 *
 * @param warmUp time from the temperature of the air to the start temperature before the first pass, s; NaN when it is never
 *     reached
 * @param passes the passes, the last one perhaps cut short
 */
public record BottleDay(double warmUp, List<Pass> passes) {
    private static final double LONGEST_WAIT = 4 * 3600;
    private static final double ROW = 5;
    private static final double REACHED = 0.1;

    /** Copies the list. */
    public BottleDay {
        passes = List.copyOf(passes);
    }

    /**
     * One pass.
     *
     * @param startMass nitrous oxide at its start, kg
     * @param startPressure bottle pressure then, Pa absolute
     * @param endMass nitrous oxide at its end, kg
     * @param endTemperature temperature of the contents then, K
     * @param endPressure bottle pressure then, Pa absolute
     * @param seconds time under nitrous with liquid and pressure in the band, s
     * @param full whether that is the whole time asked for
     * @param reheat time back to the start temperature, s; NaN when it is never reached
     */
    public record Pass(
            double startMass,
            double startPressure,
            double endMass,
            double endTemperature,
            double endPressure,
            double seconds,
            boolean full,
            double reheat) {}

    /**
     * Runs the day until a pass is cut short, or the passes asked for and one more are done.
     *
     * @param budget the budget
     * @return the day
     */
    public static BottleDay of(Budget budget) {
        BottleSheet sheet = budget.build().bottle();
        double air = budget.conditions().air().temperature();
        Charge charge = sheet.vessel().charged(sheet.charge(), sheet.startTemperature());
        Outflow draw = BottleRun.draw(budget.evaluator(), budget.peak());
        List<Pass> passes = new ArrayList<>();
        boolean goOn = true;
        while (goOn && passes.size() <= budget.wish().passes()) {
            Pass pass = pass(budget, charge, draw, air);
            passes.add(pass);
            goOn = pass.full() && Double.isFinite(pass.reheat());
            charge = sheet.vessel().charged(pass.endMass(), sheet.reheatedTemperature());
        }
        double start = Math.min(air, sheet.startTemperature());
        return new BottleDay(reheat(sheet, sheet.vessel().charged(sheet.charge(), start), air), passes);
    }

    private static Pass pass(Budget budget, Charge charge, Outflow draw, double air) {
        double seconds = budget.wish().passSeconds();
        History history = Emptying.of(charge, draw)
                .withPressureLimit(budget.build().limits().bottlePressureLow())
                .withDuration(seconds)
                .equilibrium();
        double end = history.usableUntil();
        Sample last = history.at(end);
        return new Pass(
                history.first().mass(),
                history.first().pressure(),
                last.mass(),
                last.temperature(),
                last.pressure(),
                end,
                end >= seconds * (1 - 1e-9),
                reheat(budget.build().bottle(), charge.bottle().charged(last.mass(), last.temperature()), air));
    }

    private static double reheat(BottleSheet sheet, Charge charge, double air) {
        double goal = sheet.reheatedTemperature() - REACHED;
        if (charge.temperature() >= goal) {
            return 0;
        }
        HeatInput warmth = HeatInput.surroundings(air);
        History history = Emptying.of(charge, Outflow.none())
                .withHeat(sheet.heaterPower() > 0 ? heated(sheet, charge, warmth) : warmth)
                .withRows(ROW)
                .withDuration(LONGEST_WAIT)
                .equilibrium();
        return history.moments().stream()
                .filter(moment -> moment.temperature() >= goal)
                .findFirst()
                .map(Sample::time)
                .orElse(Double.NaN);
    }

    /** The heater turns off at its temperature; a bottle that is then full of liquid stands above the saturation pressure. */
    private static HeatInput heated(BottleSheet sheet, Charge charge, HeatInput warmth) {
        double off = charge.bottle().charged(charge.mass(), sheet.heaterOff()).pressure();
        return warmth.withHeater(sheet.heaterPower(), off, 0.99 * off);
    }
}
