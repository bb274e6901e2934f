package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shotledger.plan.Plan;

/**
 * Faults of a planned engine, what each does and what catches it.
 *
 * <p>A fault grows evenly to its full size. The engine is hurt when a limit has been broken for as long as {@link TimeToDamage}
 * says; the nitrous ceases when a channel has left its interlock, its sensor has answered, the controller has switched, the
 * solenoid has closed and the lines behind it have emptied ({@link CutOff}).
 *
 * @param effects one a fault
 * @param leak what a seeping solenoid does with the engine off
 * @param arming the arming conditions that watch
 * @param bench where further faults are tried
 */
public record Faults(List<FaultEffect> effects, SolenoidLeak leak, ArmingConditions arming, FaultBench bench) {

    public Faults {
        effects = List.copyOf(effects);
    }

    /**
     * The usual faults of a plan.
     *
     * @param plan the plan
     * @return the faults
     */
    public static Faults of(Plan plan) {
        return of(plan, TimeToDamage.USUAL);
    }

    /**
     * The usual faults, with times of one's own for what the engine bears.
     *
     * @param plan the plan
     * @param damage how long the engine bears a broken limit
     * @return the faults
     */
    public static Faults of(Plan plan, TimeToDamage damage) {
        return of(plan, Drift.of(plan), damage);
    }

    /**
     * The usual faults of a plan, with a drift that serves other questions too.
     *
     * @param plan the plan
     * @param drift its drift, from which the arming conditions follow
     * @param damage how long the engine bears what
     * @return the faults
     */
    public static Faults of(Plan plan, Drift drift, TimeToDamage damage) {
        ArmingConditions arming = ArmingConditions.of(plan, drift);
        FaultBench bench = FaultBench.of(plan, arming, damage);
        List<FaultEffect> effects =
                CommonFaults.of(bench.sound()).stream().map(bench::effect).toList();
        return new Faults(effects, SolenoidLeak.of(plan), arming, bench);
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
        return new Faults(all, leak, arming, bench);
    }

    /**
     * The faults that hurt the engine although every fitted channel watches.
     *
     * @return those not borne, not prevented and not cut in time
     */
    public List<FaultEffect> uncaught() {
        return effects.stream().filter(e -> !e.detection().answer().saves()).toList();
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
                "Of %d faults the engine bears or the arming conditions catch %d%s. Times the engine bears a broken limit are common"
                        + " practice without a source.",
                effects.size(),
                effects.size() - left.size(),
                left.isEmpty() ? "" : "; not caught in time: " + names);
    }
}
