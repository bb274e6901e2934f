package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shotledger.budget.Budget;

/**
 * Faults of a planned engine, what each does and what catches it.
 *
 * <p>A fault grows evenly to its full size. The engine is hurt when a limit has been broken for as long as {@link Endurance}
 * says; the nitrous ceases when a channel's gate has been passed, its sensor has answered, the controller has switched, the
 * solenoid has closed and the lines behind it have emptied ({@link CutOff}).
 *
 * @param effects one a fault
 * @param leak what a seeping solenoid does with the engine off
 * @param window the gates that watch
 * @param bench where further faults are tried
 */
public record Faults(List<FaultEffect> effects, LeakThrough leak, NitrousWindow window, FaultBench bench) {

    /** Copies the list. */
    public Faults {
        effects = List.copyOf(effects);
    }

    /**
     * The usual faults of a budget's plan.
     *
     * @param budget the budget
     * @return the faults
     */
    public static Faults of(Budget budget) {
        return of(budget, Endurance.USUAL);
    }

    /**
     * The usual faults, with times of one's own for what the engine bears.
     *
     * @param budget the budget
     * @param endurance how long the engine bears a broken limit
     * @return the faults
     */
    public static Faults of(Budget budget, Endurance endurance) {
        return of(budget, Drift.of(budget), endurance);
    }

    /**
     * The usual faults of a budget, with a drift that serves other questions too.
     *
     * @param budget the budget
     * @param drift its drift, from which the window follows
     * @param endurance how long the engine bears what
     * @return the faults
     */
    public static Faults of(Budget budget, Drift drift, Endurance endurance) {
        NitrousWindow window = NitrousWindow.of(budget, drift);
        FaultBench bench = FaultBench.of(budget, window, endurance);
        List<FaultEffect> effects =
                CommonFaults.of(budget).stream().map(bench::effect).toList();
        return new Faults(effects, LeakThrough.of(budget), window, bench);
    }

    /**
     * The same with a fault more.
     *
     * @param fault the fault, for example
     *     {@code Fault.sudden("regulator drops to 2.8 bar", s -> s.withFuelPressure(2.8e5))}
     * @return all faults, the new one last
     */
    public Faults and(Fault fault) {
        List<FaultEffect> all = new ArrayList<>(effects);
        all.add(bench.effect(fault));
        return new Faults(all, leak, window, bench);
    }

    /**
     * The faults that hurt the engine although every channel of the window watches.
     *
     * @return those not borne, not prevented and not cut in time
     */
    public List<FaultEffect> uncaught() {
        return effects.stream().filter(e -> !e.caught().answer().saves()).toList();
    }

    /**
     * The answer in one line.
     *
     * @return how many faults are caught, and which are not
     */
    public String summary() {
        List<FaultEffect> left = uncaught();
        String names =
                String.join("; ", left.stream().map(e -> e.fault().name()).toList());
        return String.format(
                Locale.ROOT,
                "Of %d faults the engine bears or the window catches %d%s. Times the engine bears a broken limit are common"
                        + " practice without a source.",
                effects.size(),
                effects.size() - left.size(),
                left.isEmpty() ? "" : "; not caught in time: " + names);
    }
}
