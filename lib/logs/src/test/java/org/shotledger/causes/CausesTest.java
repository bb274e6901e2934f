package org.shotledger.causes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shotledger.causes.PlantedLog.NoiseOf;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.LogMapping;
import org.shotledger.plan.Plan;
import org.shotledger.units.UnitSystem;

/**
 * Faults planted into invented logs by changing the part that has them are found again. The usual build tries a dozen seeds of each kind; {@code
 * -Dcauses.logs=200} tries that many. A share that must be reached is held less two standard deviations of the count, so that a number
 * of seeds decides nothing: {@code n p - 2 sqrt(n p (1 - p))}.
 */
class CausesTest {
    private static final int LOGS = Integer.getInteger("causes.logs", 13);
    private static final Outcome OUTCOME =
            Plan.find(Job.load(Path.of("../../data/whimbrel"))).stated();
    private static final Planted SOUND = Planted.sound(OUTCOME);
    /** Those that this log tells from every other cause. */
    private static final List<Plants> TOLD = List.of(
            Plants.FUEL_JETS,
            Plants.NITROUS_JETS,
            Plants.LAMBDA_SENSOR,
            Plants.REFERENCE,
            Plants.FUEL_PRESSURE,
            Plants.BOTTLE,
            Plants.SUPPLY,
            Plants.BOOST,
            Plants.WORK,
            Plants.MAIN_FUEL,
            Plants.BOTTLE_GAUGE,
            Plants.CONTENT_FOLLOWED,
            Plants.CONTENT_SAME_VOLUME);

    private static Causes causes(Planted planted, long seed) {
        return Causes.of(
                OUTCOME, new PlantedLog(planted).findings(seed, seed % 2 == 0 ? NoiseOf.WHITE : NoiseOf.CORRELATED));
    }

    private static void atLeast(int found, int of, double share, List<String> lost) {
        double least = of * share - 2 * Math.sqrt(of * share * (1 - share));
        assertTrue(found >= least, found + " of " + of + ": " + String.join("\n", lost));
    }

    /**
     * Causes of about the same share are said not to be told apart, and each that is comes with what would tell: a channel that is not
     * logged, or its own measurement.
     */
    private static void says(Causes causes) {
        for (Suspect s : causes.suspects()) {
            for (Cause other : s.alike()) {
                assertTrue(
                        s.tell().stream()
                                .anyMatch(t -> t.equals(other.measurement())
                                        || (t.startsWith("log ") && t.endsWith(": " + other.words()))),
                        s.cause() + " and " + other + ": " + s.tell());
            }
            for (Suspect other : causes.suspects()) {
                boolean companions = s.with().equals(Optional.of(other.cause()))
                        || other.with().equals(Optional.of(s.cause()));
                boolean near = s.cause() != other.cause()
                        && s.share() < 0.5
                        && other.share() <= s.share()
                        && s.share() < 2 * other.share();
                assertTrue(
                        !near || companions || s.alike().contains(other.cause()),
                        s.cause() + " is about as likely as " + other.cause() + ": " + causes);
            }
        }
    }

    @Test
    void a_single_fault_comes_first() {
        int first = 0;
        List<String> lost = new ArrayList<>();
        for (int seed = 0; seed < LOGS; seed++) {
            Plants plant = TOLD.get(seed % TOLD.size());
            Causes causes = causes(plant.plant(SOUND, new Random(seed)), seed);
            says(causes);
            if (causes.first()
                    .map(Suspect::cause)
                    .filter(c -> c == plant.cause())
                    .isPresent()) {
                first++;
            } else {
                lost.add(plant + ", seed " + seed + ": " + causes);
            }
        }
        atLeast(first, LOGS, 0.9, lost);
    }

    @ParameterizedTest
    @EnumSource(names = {"SOLENOID", "FILTER", "FUEL_FILTER"})
    void what_no_channel_tells_apart_is_said_not_to_be_told_apart(Plants plant) {
        Causes causes = causes(plant.plant(SOUND, new Random(5)), 5);
        Suspect first = causes.suspects().get(0);
        assertTrue(first.cause() == plant.cause() || first.alike().contains(plant.cause()), causes.toString());
        assertTrue(
                first.tell().contains(plant.cause().measurement()), first.tell().toString());
        assertTrue(causes.toString().contains("This log does not tell it from"), causes.toString());
    }

    @Test
    void of_two_faults_both_are_among_the_first_three() {
        int pairs = LOGS / 2;
        int both = 0;
        List<String> lost = new ArrayList<>();
        for (int seed = 0; seed < pairs; seed++) {
            Random random = new Random(900 + seed);
            Plants one = TOLD.get(random.nextInt(TOLD.size()));
            Plants other = one;
            while (other.cause() == one.cause()) {
                other = TOLD.get(random.nextInt(TOLD.size()));
            }
            Causes causes = causes(other.plant(one.plant(SOUND, random), random), seed);
            says(causes);
            List<Cause> firsts =
                    causes.suspects().stream().limit(3).map(Suspect::cause).toList();
            if (firsts.contains(one.cause()) && firsts.contains(other.cause())) {
                both++;
            } else {
                lost.add(one + " and " + other + ", seed " + seed + ": " + firsts);
            }
        }
        atLeast(both, pairs, 0.8, lost);
    }

    private enum Among {
        WHITE(NoiseOf.WHITE),
        CORRELATED(NoiseOf.CORRELATED),
        /** Correlated, and everything else somewhere in its band, so that scatter alone says nothing. */
        BANDS(NoiseOf.CORRELATED);

        private final NoiseOf noise;

        Among(NoiseOf noise) {
            this.noise = noise;
        }
    }

    /** Two standard uncertainties of a normal error hold 95 % of true values; the issue of a memory in the noise is that they hold fewer. */
    @ParameterizedTest
    @EnumSource(Among.class)
    void the_bands_of_sizes_hold_the_truth(Among among) {
        int sized = 0;
        int byScatter = 0;
        int byAll = 0;
        List<String> lost = new ArrayList<>();
        for (int seed = 0; seed < LOGS; seed++) {
            Sized drawn = Sized.draw(SOUND, seed);
            Sized fault = among == Among.BANDS ? drawn.amongBands(OUTCOME, seed) : drawn;
            Causes causes = Causes.of(OUTCOME, new PlantedLog(fault.planted()).findings(seed, among.noise));
            Optional<Suspect> found = causes.suspect(fault.cause());
            if (found.isPresent()) {
                sized++;
                double error = Math.abs(found.get().size() - fault.size());
                byScatter += error <= 2 * found.get().scatter() ? 1 : 0;
                byAll += error <= 2 * found.get().standard() ? 1 : 0;
                if (error > 2 * found.get().scatter()) {
                    lost.add(fault.cause() + " " + fault.size() + " found as " + found.get());
                }
            }
        }
        atLeast(byAll, sized, 0.9, lost);
        if (among != Among.BANDS) {
            atLeast(byScatter, sized, 0.9, lost);
            atLeast(sized, LOGS, 0.9, List.of());
        }
    }

    /** Without noise the log lies on the plan to what the fit allows any log to wander by; it is straight between points 300 rpm apart. */
    @Test
    void a_log_without_noise_lies_on_the_plan() {
        Causes causes = Causes.of(OUTCOME, new PlantedLog(SOUND).findings(1, new NoiseOf(0.02, 0)));
        for (Observable what : List.of(Observable.LAMBDA, Observable.WHEEL_POWER)) {
            ChannelTrace trace = causes.trace(what.channel()).orElseThrow();
            for (int i = 0; i < trace.size(); i++) {
                assertEquals(1, trace.logged()[i] / trace.planned()[i], what.floor(), what + " at " + trace.rpm()[i]);
            }
        }
    }

    @Test
    void a_log_as_planned_accuses_nothing() {
        for (int seed = 0; seed < 4; seed++) {
            Causes causes = causes(SOUND, seed);
            assertEquals(Optional.empty(), causes.first(), causes.toString());
            assertTrue(causes.nothing() > 0.3, causes.toString());
            assertTrue(causes.shown().stream().noneMatch(ChannelDeparture::beyondBand), causes.toString());
        }
    }

    @Test
    void without_power_mixture_and_pressures_still_tell() {
        String text = new PlantedLog(Plants.REFERENCE.plant(SOUND, new Random(1))).text(3, NoiseOf.WHITE);
        LogFindings bare = EngineLog.read(
                        new StringReader(text.replaceAll("(?m),[^,\n]*$", "")), "bare.csv", LogMapping.NONE)
                .findings();
        assertTrue(!bare.log().has(LogChannel.WHEEL_POWER));
        Causes causes = Causes.of(OUTCOME, bare);
        assertEquals(Cause.NITROUS_FUEL_REFERENCE, causes.suspects().get(0).cause(), causes.toString());
        assertTrue(causes.missing().contains("wheel power"), causes.missing().toString());
    }

    @Test
    void a_track_log_gives_power_by_acceleration_and_the_cause() {
        Causes sound = Causes.of(OUTCOME, TrackLog.of(SOUND, 1));
        assertTrue(sound.power().contains("acceleration"), sound.power());
        ChannelTrace power = sound.trace(LogChannel.WHEEL_POWER).orElseThrow();
        for (int i = 0; i < power.size(); i++) {
            assertTrue(!power.off(i), "the band holds the true power at " + power.rpm()[i]);
        }
        assertEquals(Optional.empty(), sound.first(), sound.toString());
        Causes less = Causes.of(OUTCOME, TrackLog.of(SOUND.lambda(1.05), 2));
        assertEquals(Cause.LAMBDA_SENSOR, less.suspects().get(0).cause(), less.toString());
    }

    /** Wheel torque referred to engine speed is wheel power over engine speed, in another unit. */
    @Test
    void wheel_torque_serves_as_power() {
        String[] lines = new PlantedLog(Plants.WORK.plant(SOUND, new Random(1)))
                .text(3, NoiseOf.WHITE)
                .split("\n", -1);
        StringBuilder text = new StringBuilder(lines[0].replace("wheel power (kW)", "wheel torque (N m)"));
        for (int i = 1; i < lines.length - 1; i++) {
            String[] cells = lines[i].split(",", -1);
            double rpm = Double.parseDouble(cells[1]);
            double torque = Double.parseDouble(cells[10]) * 1e3 / (rpm * 2 * Math.PI / 60);
            text.append('\n').append(lines[i], 0, lines[i].lastIndexOf(',') + 1).append(torque);
        }
        Causes causes = Causes.of(
                OUTCOME,
                EngineLog.read(new StringReader(text.toString()), "torque.csv", LogMapping.NONE)
                        .findings());
        assertEquals(Cause.ENGINE_WORK, causes.suspects().get(0).cause(), causes.toString());
        assertTrue(causes.power().contains("torque"), causes.power());
    }

    @Test
    void sentences_are_made_from_the_fit() {
        Causes causes = causes(SOUND.lambda(1.04), 2);
        String text = String.join("\n", causes.sentences(UnitSystem.SI));
        Suspect first = causes.suspects().get(0);
        assertTrue(text.contains(first.sizeText(UnitSystem.SI)), text);
        assertTrue(text.contains("lambda with the nitrous off") && text.contains("free air"), text);
    }
}
