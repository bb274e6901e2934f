package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.bottle.Pass;
import org.shotledger.car.Car;
import org.shotledger.car.OtherLimits;
import org.shotledger.engine.MoistAir;
import org.shotledger.job.Job;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;

/** Days that are shared are those that would have been run: whatever moves a day is told apart, and what does not is not run again. */
class BottlesTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final Setup SETUP = JOB.setup()
            .withBoost(new BoostTarget(BoostTable.constant(1.2e5), BoostTable.constant(1.0e5), 0))
            .withJets(new JetPair(1.0e-3, 0.56e-3))
            .withArming(new ActivationWindow(6500, 7000))
            .withPasses(new PassPlan(1, 2));
    private static final Case AT = JOB.stated();
    private static final Bottles SHARED = new Bottles();
    private static final Day DAY = SHARED.day(CAR, SETUP, AT).orElseThrow();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bottle.shell-mass 9 kg",
                "bottle.water-capacity 13.1 L",
                "bottle.start-temperature 301 K",
                "bottle.charge 5.1 kg",
                "nitrous-system.nitrous.hose-length 5.2 m"
            })
    void aFigureOfTheSheetThatMovesTheDayIsTold(String change) {
        int end = change.indexOf(' ');
        Job other = JOB.with(change.substring(0, end), change.substring(end + 1));
        told(other.car(), SETUP.withBottle(other.setup().bottle()), AT);
    }

    @Test
    void whatIsSetAndWhatTheCaseIsAreTold() {
        told(CAR, SETUP.withJets(new JetPair(1.1e-3, 0.56e-3)), AT);
        told(CAR, SETUP.withPasses(new PassPlan(1, 3)), AT);
        told(CAR, SETUP.withPasses(new PassPlan(2, 2)), AT);
        told(CAR, SETUP.withBottle(new BottleFill(SETUP.bottle().charge(), 290)), AT);
        told(CAR, SETUP, AT.with(Factor.NITROUS_FLOW, 1.05));
        MoistAir air = AT.air();
        told(CAR, SETUP, AT.withAir(new MoistAir(air.pressure(), air.temperature() + 20, air.relativeHumidity())));
        BoostTarget high = new BoostTarget(BoostTable.constant(1.2e5), BoostTable.constant(7e5), 0);
        told(CAR, SETUP.withBoost(high), AT);
        told(OtherLimits.of(CAR, Map.of("bottlePressureLow", 45e5)), SETUP.withPasses(new PassPlan(1, 12)), AT);
        told(OtherLimits.of(CAR, Map.of("bottlePressureHigh", 56e5)), SETUP, AT);
    }

    @Test
    void carsThatDifferInSomethingElseShareIt() {
        assertSame(DAY, SHARED.day(CAR.with(CAR.fuels()), SETUP, AT).orElseThrow());
        assertSame(
                DAY,
                SHARED.day(JOB.with("base-pull.wheel-power", "300 kW").car(), SETUP, AT)
                        .orElseThrow());
        assertSame(DAY, SHARED.day(CAR, SETUP.withRetard(3), AT).orElseThrow());
        assertTrue(SHARED.day(CAR, SETUP.withoutJets(), AT).isEmpty());
        assertNotSame(DAY, SHARED.withoutDays().day(CAR, SETUP, AT).orElseThrow());
    }

    @Test
    void anOutcomeThatSharesThemIsTheWholeOneButForTheSecondsOfThePass() {
        List<Case> cases = List.of(AT, AT.with(Factor.NITROUS_FLOW, 1.05));
        List<Outcome> whole = Evaluate.all(CAR, SETUP, cases);
        List<Outcome> judged = Evaluate.judged(SHARED, CAR, SETUP, cases);
        for (int i = 0; i < cases.size(); i++) {
            assertEquals(whole.get(i).limits(), judged.get(i).limits());
            assertEquals(whole.get(i).power(), judged.get(i).power());
            assertEquals(
                    whole.get(i).changeover().size(), judged.get(i).changeover().size());
            assertTrue(whole.get(i).pass().isPresent() && judged.get(i).pass().isEmpty());
        }
    }

    /** The day shared is the one that is run alone, and not the first one. */
    private static void told(Car car, Setup setup, Case at) {
        List<Pass> alone =
                new Bottles().day(car, setup, at).orElseThrow().passes().passes();
        List<Pass> shared = SHARED.day(car, setup, at).orElseThrow().passes().passes();
        assertEquals(alone.size(), shared.size());
        for (int i = 0; i < alone.size(); i++) {
            assertEquals(alone.get(i).massUsed(), shared.get(i).massUsed());
            assertEquals(alone.get(i).lowestPressure(), shared.get(i).lowestPressure());
            assertEquals(alone.get(i).end(), shared.get(i).end());
        }
        assertNotSame(DAY, SHARED.day(car, setup, at).orElseThrow());
    }
}
