package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;

/** The drift of the invented demo car: the physics behind it and the edges of the safe region. */
class DriftTest {
    private static final Plan PLAN = Whimbrel.PLAN;
    private static final Drift DRIFT = Drift.of(PLAN);

    @Test
    void without_drift_the_plan_comes_back() {
        FaultOutcome planned = DRIFT.planned();
        assertEquals(
                PLAN.stated().strongest().orElseThrow().wheelPower(),
                planned.wheelPower(),
                1e-6 * planned.wheelPower());
        assertEquals(PLAN.stated().strongest().orElseThrow().lambda(), planned.lambda(), 1e-9);
        assertTrue(planned.safe(), planned.firstWords());
    }

    /** A search asks whether a place is safe without working the outcome out; also with a blocked nozzle, where cylinders differ. */
    @Test
    void a_search_finds_safe_what_the_outcome_says_is_safe() {
        SplittableRandom random = new SplittableRandom(12);
        Scenario sound = DRIFT.sound();
        int nozzles = sound.car().nitrous().nozzles();
        Drift blocked = DRIFT.with(sound.withOpenJets(nozzles - 1, nozzles - 1));
        int safe = 0;
        for (int i = 0; i < 40; i++) {
            double bottle = DRIFT.bottlePressure() * random.nextDouble(0.9, 1.15);
            double fuel = DRIFT.fuelPressure() * random.nextDouble(0.85, 1.25);
            double boost = random.nextDouble(-0.15e5, 0.15e5);
            FaultOutcome outcome = DRIFT.at(bottle, fuel, boost);
            assertEquals(outcome.safe(), DRIFT.safe(bottle, fuel, boost), outcome.firstWords());
            assertEquals(blocked.at(bottle, fuel, boost).safe(), blocked.safe(bottle, fuel, boost));
            safe += outcome.safe() ? 1 : 0;
        }
        assertTrue(safe > 3 && safe < 37, safe + " of 40 are safe");
    }

    @Test
    void choked_nitrous_ignores_boost() {
        BoostReference shifts = BoostReference.of(PLAN);
        double planned = PLAN.stated().strongest().orElseThrow().nitrous().massFlow();
        for (BoostReference.Row row : shifts.rows()) {
            if (!Double.isNaN(row.nitrousFlow())) {
                assertEquals(planned, row.nitrousFlow(), 1e-6 * planned, "at " + row.boostShift() + " Pa");
            }
        }
    }

    @Test
    void a_fuel_jet_feels_boost_as_the_orifice_equation_says() {
        // m ~ sqrt(p_rail - p_nozzle): Bernoulli with a discharge coefficient, any hydraulics text; solenoid and jet
        // are both
        // orifices, so the whole circuit follows the same root
        BoostReference shifts = BoostReference.of(PLAN);
        double planned = row(shifts, 0).referencedFuel();
        int compared = 0;
        for (BoostReference.Row row : shifts.rows()) {
            if (!Double.isNaN(row.nitrousFlow())) {
                double factor = Math.sqrt(1 - row.boostShift() / shifts.drop());
                assertEquals(planned, row.referencedFuel(), 1e-9 * planned);
                assertEquals(planned * factor, row.unreferencedFuel(), 1e-9 * planned);
                compared++;
            }
        }
        assertTrue(compared >= 10, compared + " rows compared");
    }

    @Test
    void lambda_without_reference_follows_from_the_oxygen_books() {
        // lambda = O2 supplied / O2 demanded, with the fuel of the orifice equation put in by hand
        BoostReference shifts = BoostReference.of(PLAN, List.of(-0.2e5, 0.0, 0.2e5));
        for (BoostReference.Row row : shifts.rows()) {
            double factor = Math.sqrt(1 - row.boostShift() / shifts.drop());
            var plan = Scenario.of(PLAN);
            var point = Simulation.run(
                            plan.withBoostShift(row.boostShift()),
                            BoostLine.at(shifts.rpm(), shifts.planPlenumPressure()))
                    .peak()
                    .orElseThrow();
            var m = point.charge().mixture();
            double supplied = 0.2314 * m.dryAir() + 15.999 / 44.013 * m.nitrous();
            double demanded = m.mainFlow() * m.mainFuel().oxygenDemand()
                    + factor * m.nitrousFuelFlow() * m.nitrousFuel().oxygenDemand();
            // the little fuel that evaporates displaces a little air, which the hand formula leaves out
            assertEquals(supplied / demanded, row.unreferencedLambda(), 1e-3 * supplied / demanded);
        }
    }

    @Test
    void unreferenced_regulator_leans_with_boost_and_referenced_hardly_moves() {
        BoostReference shifts = BoostReference.of(PLAN);
        double last = Double.NEGATIVE_INFINITY;
        for (BoostReference.Row row : shifts.rows()) {
            if (!Double.isNaN(row.unreferencedLambda())) {
                assertTrue(row.unreferencedLambda() > last, "rises at " + row.boostShift());
                last = row.unreferencedLambda();
            }
        }
        BoostReference.Row up = row(shifts, 0.5e5);
        double planned = row(shifts, 0).referencedLambda();
        assertTrue(up.unreferencedLambda() - planned > 4 * (up.referencedLambda() - planned));
    }

    @Test
    void mixture_rises_with_bottle_pressure_and_falls_with_fuel_pressure() {
        // at one speed; the speed of most power may move. The bottle stays below the pressure at which the flux of
        // saturated
        // liquid has its maximum, near the critical point, where the liquid's density collapses faster than pressure
        // rises
        BoostLine one = new BoostLine(List.of(DRIFT.line().stops().get(2)));
        double last = 0;
        for (double bottle : DriftMap.grid(45e5, 67e5, 12)) {
            double lambda = Simulation.run(DRIFT.sound().withBottlePressure(bottle), one)
                    .lambda();
            assertTrue(lambda > last, "at " + bottle);
            last = lambda;
        }
        last = Double.POSITIVE_INFINITY;
        for (double fuel : DriftMap.grid(2.5e5, 4.2e5, 12)) {
            double lambda =
                    Simulation.run(DRIFT.sound().withFuelPressure(fuel), one).lambda();
            assertTrue(lambda < last, "at " + fuel);
            last = lambda;
        }
    }

    @Test
    void every_limit_is_kept_at_an_edge_and_one_is_broken_beyond() {
        for (DriftEdge edge : DriftMap.of(PLAN).edges()) {
            assertTrue(edge.found(), edge.input() + " has an edge");
            FaultOutcome at = edge.input().at(DRIFT, edge.value());
            assertTrue(at.safe(), edge.input() + " at the edge: " + at.firstWords());
            double step = 1e-3 * edge.input().band(DRIFT) * (edge.up() ? 1 : -1);
            FaultOutcome beyond = edge.input().at(DRIFT, edge.value() + step);
            assertFalse(beyond.safe(), edge.input() + " beyond the edge");
            edge.limit()
                    .ifPresent(l -> assertEquals(
                            Verdict.BROKEN,
                            beyond.limits().find(l.key()).orElseThrow().verdict(),
                            l.name()));
        }
    }

    @Test
    void safe_on_the_map_means_every_limit_kept() {
        DriftMap map = DriftMap.of(DRIFT, 0, DriftMap.grid(45e5, 72e5, 7), DriftMap.grid(1.8e5, 5e5, 7));
        int safe = 0;
        for (List<FaultOutcome> row : map.outcomes()) {
            for (FaultOutcome outcome : row) {
                boolean kept = outcome.refusal().isEmpty()
                        && outcome.limits().all().stream().allMatch((Limit l) -> l.margin() >= 0);
                assertEquals(kept, outcome.safe());
                safe += kept ? 1 : 0;
            }
        }
        assertEquals(safe / 49.0, map.safeShare(), 1e-12);
        assertTrue(safe > 0 && safe < 49, safe + " of 49 are safe");
    }

    private static BoostReference.Row row(BoostReference shifts, double shift) {
        return shifts.rows().stream()
                .filter(r -> Math.abs(r.boostShift() - shift) < 1)
                .findFirst()
                .orElseThrow();
    }
}
