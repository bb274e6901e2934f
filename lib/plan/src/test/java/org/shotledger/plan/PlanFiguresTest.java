package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/** A plan of a given setup: its words, smaller shots, the spark, the speed of opening and what to measure next; anew in every test. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PlanFiguresTest {
    private static final double THOU = 25.4e-6;
    private static final double HP = 745.69987158227022;

    private final Job job = Job.load(Path.of("../../data/whimbrel"));
    private final Setup setup =
            job.setup().withBoost(BoostTarget.constant(1.17e5)).withJets(new JetPair(43 * THOU, 22 * THOU));

    /** One case is enough where the cases do not matter. */
    private Plan plan(Setup set) {
        return Plan.of(job.withCases(List.of(job.stated())), set);
    }

    private static Plan with(Plan plan, List<Outcome> outcomes) {
        return new Plan(plan.job(), plan.setup(), outcomes, plan.limits(), List.of(), Optional.empty(), List.of());
    }

    @Test
    void the_verdict_is_one_line() {
        Plan plan = plan(setup);
        OperatingPoint most = plan.stated().strongest().orElseThrow();
        // 1.17 bar are 16.97 psi; torque is 30 / pi times power over speed, and 900 N m are allowed
        assertEquals(
                "Whimbrel: " + Math.round(most.wheelPower() / HP)
                        + " hp at the wheels under 'event' of the 720 hp asked from 17.0 psi gauge (1.17 bar gauge) of boost and 6 nozzles"
                        + " of 43.0 thou nitrous and 22.0 thou fuel; every limit in 1 cases: " + closest(plan)
                        + "; one bottle gives 3 of the 3 passes asked. An estimate, to be proven in small steps.",
                plan.verdictLine());
        assertFalse(plan.reached());
        assertEquals(Verdict.BROKEN, plan.verdict());
        Plan stopped = plan.stoppedBy("the jets");
        assertEquals(
                plan.verdictLine().replace("hp asked from", "hp asked (more is stopped by the jets) from"),
                stopped.verdictLine());
        Plan little = Plan.of(job.with(job.target().withWheelPower(most.wheelPower() * 1.0005)), setup);
        assertTrue(little.reached(), "a thousandth may be missing");
        assertSame(little, little.stoppedBy("the jets"));
        Limit asked = little.limits().find("target-power").orElseThrow();
        assertEquals(little.target().wheelPower(), asked.value());
        assertEquals(0, asked.relativeMargin());
        Limit missed = plan.limits().find("target-power").orElseThrow();
        assertEquals(most.wheelPower(), missed.value());
        assertEquals(720 * HP, missed.bound(), 1e-3);
        assertEquals(String.format("%,.0f rpm", most.rpm()), missed.place());
    }

    private static String closest(Plan plan) {
        Limit first = plan.parts().all().stream()
                .min((a, b) -> Double.compare(a.relativeMargin(), b.relativeMargin()))
                .orElseThrow();
        assertEquals(first, plan.closest(3).get(0));
        assertEquals(3, plan.closest(3).size());
        assertTrue(plan.parts().find("target-power").isEmpty());
        return String.format(
                java.util.Locale.ROOT,
                "%s, the closest is %s (%s, case 'event') with %.1f %% %s",
                first.relativeMargin() < 0 ? "broken" : first.relativeMargin() < 0.05 ? "tight" : "holds",
                first.name(),
                first.place(),
                Math.abs(100 * first.relativeMargin()),
                first.relativeMargin() < 0 ? "too much" : "left");
    }

    @Test
    void what_is_set_otherwise_than_the_sheet_is_said() {
        Setup moved = setup.withRetard(9.5).withArming(new ActivationWindow(6100, 7800));
        Plan plan = plan(moved).comparedWith(job.setup());
        assertEquals(
                List.of(
                        "the nitrous opens from 6,100 rpm instead of 5,800, as the models have no answer for the shot below",
                        "9.5 deg of spark retard instead of 6.0 deg, so that it knocks no more than the base pull"),
                plan.moved());
        assertTrue(
                plan.verdictLine().contains(". Otherwise than the sheet: " + String.join("; ", plan.moved()) + ". An"),
                plan.verdictLine());
        assertEquals(List.of(), plan(setup).comparedWith(job.setup()).moved());
        Plan alone = plan(moved.withoutJets());
        assertSame(alone, alone.comparedWith(job.setup()));
        assertTrue(
                alone.verdictLine().contains(" of boost alone, without nitrous; every limit in"), alone.verdictLine());
        assertFalse(alone.verdictLine().contains("one bottle"), alone.verdictLine());
        assertEquals(List.of(), alone.outside());
        assertEquals(
                List.of(
                        "The bore is below the smallest measured, 0.79 mm (31 thou); smaller holes tend to pass more for their area."),
                plan(setup.withJets(new JetPair(30 * THOU, 16 * THOU))).outside());
        String said = assertThrows(
                        IllegalStateException.class,
                        () -> plan(setup.withBoost(BoostTarget.constant(2.9e5))).shots())
                .getMessage();
        assertEquals("The plan of Whimbrel has no operating point; there is nothing to step up to.", said);
    }

    /** Half of what nitrous adds: the rung below the exact jet first, then those beside it, each with fuel that is not leaner than asked. */
    @Test
    void smaller_shots_are_rungs_around_the_power_asked_for() {
        Plan plan = plan(setup);
        OperatingPoint full = plan.stated().strongest().orElseThrow();
        Shots shots = plan.shots();
        double off = Evaluate.model(job.car(), setup, job.stated())
                .at(full.rpm(), full.plenumPressure(), Mode.ARMED)
                .wheelPower();
        assertEquals(off, shots.offPower(), 1e-9 * off);
        double half = (off + full.wheelPower()) / 2;
        List<Setup> found = shots.setupsFor(half).toList();
        assertEquals(5, found.size());
        double[] bores = found.stream()
                .mapToDouble(s -> s.jets().orElseThrow().nitrousBore())
                .toArray();
        double[] power = found.stream().mapToDouble(s -> power(s, full)).toArray();
        // the first falls short by less than a rung, the next one above it gives more
        assertTrue(power[0] <= half * 1.001, power[0] + " for " + half);
        double above = job.car().nitrous().ladder().above(bores[0] * 1.0001);
        int next = indexOf(bores, above);
        assertTrue(power[next] > half * 0.99, power[next] + " for " + half);
        for (int i = 1; i < 5; i++) {
            assertTrue(
                    Math.abs(bores[i] - bores[0]) >= Math.abs(bores[i - 1] - bores[0]) - 1e-12, Arrays.toString(bores));
        }
        for (Setup shot : found) {
            OperatingPoint point = point(shot, full);
            assertTrue(point.lambda() <= 0.7801, "not leaner: " + point.lambda());
            double leaner =
                    job.car().nitrous().ladder().below(shot.jets().orElseThrow().fuelBore() * 0.9999);
            Setup less = shot.withJets(new JetPair(shot.jets().orElseThrow().nitrousBore(), leaner));
            assertTrue(point(less, full).lambda() > 0.7799, "a rung less would be leaner");
        }
        assertEquals(0, shots.setupsFor(off + 1e3).count(), "less than the smallest jet gives");
        assertTrue(shots.setupsFor(full.wheelPower() * 0.995)
                .allMatch(s -> s.jets().orElseThrow().nitrousBore() < 43 * THOU));
    }

    private static int indexOf(double[] bores, double bore) {
        for (int i = 0; i < bores.length; i++) {
            if (Math.abs(bores[i] - bore) < 1e-9) {
                return i;
            }
        }
        throw new AssertionError(bore + " is not among " + Arrays.toString(bores));
    }

    private OperatingPoint point(Setup shot, OperatingPoint full) {
        return Evaluate.model(job.car(), shot, job.stated()).at(full.rpm(), full.plenumPressure(), Mode.NITROUS);
    }

    private double power(Setup shot, OperatingPoint full) {
        return point(shot, full).wheelPower();
    }

    /** The knock of the strongest case is 0.95 of the base pull's at most, by the fewest half degrees that do; 20 degrees at most. */
    @Test
    void the_spark_is_as_late_as_the_strongest_knock_asks_for() {
        Plan plan = plan(setup);
        assertEquals(6, Spark.retard(plan), "what the sheet says knocks less");
        double base = knock(plan.stated());
        Case hard = job.stated().with(Factor.KNOCK, 1.15 / base);
        Outcome knocking = Evaluate.of(job.car(), setup, hard);
        double retard = Spark.retard(with(plan, List.of(plan.stated(), knocking)));
        assertTrue(retard > 6 && retard < 20, "deg: " + retard);
        assertEquals(Math.rint(2 * retard), 2 * retard);
        OperatingPoint worst = worst(knocking);
        assertTrue(again(hard, worst, retard) <= 0.95);
        assertTrue(again(hard, worst, retard - 0.5) > 0.95);
        Outcome close = Evaluate.of(job.car(), setup, job.stated().with(Factor.KNOCK, 0.94 / base));
        assertEquals(6, Spark.retard(with(plan, List.of(close))));
        Outcome far = Evaluate.of(job.car(), setup, job.stated().with(Factor.KNOCK, 10));
        assertEquals(20, Spark.retard(with(plan, List.of(far))));
        assertEquals(6, Spark.retard(plan(setup.withoutJets())), "nothing knocks without nitrous");
    }

    private double again(Case at, OperatingPoint point, double retard) {
        return Evaluate.model(job.car(), setup.withRetard(retard), at)
                .at(point.rpm(), point.plenumPressure(), Mode.NITROUS)
                .cylinder()
                .knock();
    }

    private static OperatingPoint worst(Outcome outcome) {
        return outcome.withNitrous().stream()
                .max((a, b) -> Double.compare(a.cylinder().knock(), b.cylinder().knock()))
                .orElseThrow();
    }

    private static double knock(Outcome outcome) {
        return worst(outcome).cylinder().knock();
    }

    /** The window is 5800 to 7800 rpm in steps of 100, of which four tenths, 800 rpm, must remain. */
    @Test
    void the_nitrous_opens_above_the_speeds_without_an_answer() {
        Plan plan = plan(setup);
        assertEquals(OptionalDouble.empty(), Opening.answered(plan), "every speed has one");
        assertEquals(
                OptionalDouble.of(6400), Opening.answered(with(plan, List.of(plan.stated(), without(plan, 6300)))));
        assertEquals(OptionalDouble.of(7000), Opening.answered(with(plan, List.of(without(plan, 6900)))));
        assertEquals(OptionalDouble.empty(), Opening.answered(with(plan, List.of(without(plan, 7000)))));
        assertEquals(OptionalDouble.empty(), Opening.answered(with(plan, List.of())));
    }

    private static Outcome without(Plan plan, double missing) {
        Outcome o = plan.stated();
        return new Outcome(
                o.car(),
                o.setup(),
                o.at(),
                o.off(),
                o.armed().stream().filter(p -> p.rpm() != missing).toList(),
                o.changeover(),
                o.pass(),
                o.limits());
    }

    /** Each estimate at the upper end of its band: the car calibrated anew and the setup run; what has no answer there comes first. */
    @Test
    void the_estimates_are_ranked_by_what_they_move() {
        Job estimated = job.stating("turbo.turbine.efficiency", "68 % +/- 4 %", "estimated", "usual")
                .stating("engine.rod-length", "147 mm +/- 0.5 mm", "estimated", "usual")
                .stating("bottle.shell-mass", "12.4 kg", "estimated", "usual")
                .stating("bottle.charge", "17 lb +/- 10 lb", "estimated", "usual")
                .withCases(List.of(job.stated()));
        Plan plan = Plan.of(estimated, setup);
        List<Estimate> all = plan.estimates();
        assertEquals(
                List.of("bottle.charge", "turbo.turbine.efficiency", "engine.rod-length"),
                all.stream().map(Estimate::path).toList());
        // 27 lb in 12.6 L, 972 kg/m3, are beyond the equation of state where the bottle lies in the sun
        assertTrue(all.get(0).power() < 0 && all.get(0).margin() == Double.NEGATIVE_INFINITY);
        assertEquals(
                "bottle.charge, 17 lb +/- 10 lb: at the end of its band the sheet has no answer; a scale: full less empty",
                all.get(0).toString());
        Outcome better =
                Evaluate.of(job.with("turbo.turbine.efficiency", "72 %").car(), setup, job.stated());
        Estimate turbine = all.get(1);
        assertEquals(better.power() / plan.stated().power() - 1, turbine.power(), 1e-9);
        assertEquals(better.limits().leastMargin() - plan.stated().limits().leastMargin(), turbine.margin(), 1e-9);
        assertEquals(
                String.format(
                        java.util.Locale.ROOT,
                        "turbo.turbine.efficiency, 68 %% +/- 4 %%: power %+.1f %%, least margin %+.1f %%; the turbine's map; 65 to 70 %% otherwise",
                        100 * turbine.power(),
                        100 * turbine.margin()),
                turbine.toString());
        assertEquals(
                "no.such.place, 1: power +1.0 %, least margin -2.0 %; measure it",
                new Estimate("no.such.place", "1", 0.01, -0.02).toString());
    }

    /** What the sheet sets and not the car, such as regulator and bottle, moves the plan's setup; what the plan set otherwise stays. */
    @Test
    void an_estimate_of_what_is_set_moves_the_setup() {
        Job estimated = job.stating(
                        "nitrous-system.fuel.regulator.base-pressure", "3.5 bar +/- 0.4 bar", "estimated", "usual")
                .stating("bottle.start-temperature", "30 degC +/- 3 degC", "estimated", "usual")
                .withCases(List.of(job.stated()));
        Setup later = setup.withRetard(9);
        Plan plan = Plan.of(estimated, later);
        for (Estimate estimate : plan.estimates()) {
            Job moved = job.with(estimate.path(), estimate.path().startsWith("bottle") ? "33 degC" : "3.9 bar");
            Setup set = later.withBottle(moved.setup().bottle())
                    .withNitrousRegulator(moved.setup().nitrousRegulator());
            Outcome after = Evaluate.of(job.car(), set, job.stated());
            assertTrue(Math.abs(estimate.power()) > 1e-4, estimate.toString());
            assertEquals(after.power() / plan.stated().power() - 1, estimate.power(), 1e-9);
            assertEquals(after.limits().leastMargin() - plan.stated().limits().leastMargin(), estimate.margin(), 1e-9);
        }
        assertEquals(2, plan.estimates().size());
    }

    /** Of unusual figures the first three are named, the others counted; a day, its passes and the reasoning are those of the setup. */
    @Test
    void the_verdict_doubts_what_is_unusual_in_the_sheet() {
        Job odd = job.with("vehicle.drag-area", "1.4 m2").with("vehicle.wheelbase", "3.7 m");
        String two =
                " Unusual in the sheet: vehicle.drag-area 1.4 m2, vehicle.wheelbase 3.7 m; see page 1 or ./shotledger check.";
        Plan plan = Plan.of(odd.withCases(List.of(odd.stated())), setup);
        assertTrue(plan.verdictLine().contains(two), plan.verdictLine());
        Job more = odd.with("vehicle.centre-height", "0.85 m")
                .with("bottle.shell-mass", "46 kg")
                .with("vehicle.mass", "2900 kg");
        String line = Plan.of(more.withCases(List.of(more.stated())), setup).verdictLine();
        assertTrue(line.contains(" and 2 more; see page 1 or ./shotledger check."), line);
        assertEquals(3, plan.passes().size());
        assertTrue(plan.day().isPresent());
        assertEquals(
                plan.stated().power(),
                plan.ledger().find("wheel-power").orElseThrow().value());
        assertEquals("wheel-power", plan.why("wheel-power").get(0).key());
        assertEquals(Verdict.BROKEN, plan.verdict());
        Plan reached = Plan.of(
                job.with(job.target().withWheelPower(400 * HP)).withCases(List.of(job.stated())),
                setup.withBoost(BoostTarget.constant(0.9e5)));
        assertTrue(reached.reached());
        assertEquals(reached.parts().verdict(), reached.verdict());
        assertFalse(reached.verdictLine().contains(" asked from"), reached.verdictLine());
    }

    /** An estimate beyond what the car can have is least known of all; a share of a thousandth is printed in tenths of a per cent. */
    @Test
    void an_estimate_without_an_answer_comes_first() {
        Job estimated = job.stating("base-pull.wheel-power", "590 hp +/- 200 hp", "estimated", "usual")
                .withCases(List.of(job.stated()));
        List<Estimate> all = Plan.of(estimated, setup).estimates();
        assertEquals(1, all.size());
        assertTrue(Double.isNaN(all.get(0).power()) && Double.isNaN(all.get(0).margin()));
        assertEquals(
                "base-pull.wheel-power, 590 hp +/- 200 hp: at the end of its band the sheet has no answer; the dynamometer's"
                        + " sheet; the uncorrected figure is best",
                all.get(0).toString());
    }
}
