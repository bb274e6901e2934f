package org.shotledger.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.bottle.Bottle;
import org.shotledger.bottle.Charge;
import org.shotledger.bottle.FillingCheck;
import org.shotledger.bottle.HeatInput;
import org.shotledger.bottle.HeatedRest;
import org.shotledger.bottle.HeaterTime;
import org.shotledger.bottle.Pass;
import org.shotledger.bottle.PassTask;
import org.shotledger.bottle.Passes;
import org.shotledger.bottle.Passes.ScaleRow;
import org.shotledger.bottle.Refill;
import org.shotledger.car.BottleSheet;
import org.shotledger.car.Car;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.setup.Case;
import org.shotledger.setup.DaySheet;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/**
 * A day with the bottles: passes with waits as long as they are, refills, and what a scale tells.
 *
 * <p>Each bottle begins as charged, at its start temperature; after a pass it stands in the air for the wait, with its heater, and
 * the next pass begins as warm as it has become. {@link PassOutcome}, which the limits are held against, brings it back however long
 * that takes; here it shows whether the wait is long enough for that.
 *
 * @param runs the passes of every bottle, in order
 * @param refills the car's bottle filled again and again from the mother bottle until that does not suffice; empty without one
 * @param scale passes left by charge, each begun at the start temperature, from the full charge down
 * @param heating the full bottle warmed from the temperature of the air to its start; empty without a heater or in warmer air
 */
public record DayOutcome(List<Run> runs, List<Filled> refills, List<ScaleRow> scale, Optional<HeaterTime> heating) {
    /** Passes of one bottle after which the count ends: our choice. */
    private static final int MOST_PASSES = 50;
    /** Refills after which the count ends: our choice. */
    private static final int MOST_REFILLS = 20;

    /** A heater that takes longer is too weak for the day, s: our choice. */
    private static final double LONGEST_HEATING = 6 * 3600;
    /** Warmer there is no vapour pressure that a switch could be set to, K. */
    private static final double WARMEST = NitrousOxide.CRITICAL_TEMPERATURE - 0.1;
    /** Rows of the scale table at most: what one sheet of paper holds. */
    private static final int MOST_ROWS = 40;

    public DayOutcome {
        runs = List.copyOf(runs);
        refills = List.copyOf(refills);
        scale = List.copyOf(scale);
    }

    /**
     * One pass and the wait before it.
     *
     * @param number pass of the day, from 1
     * @param bottle which bottle, from 1
     * @param pass what the bottle did
     * @param before the wait before it; empty before the first pass of a bottle
     */
    public record Run(int number, int bottle, Pass pass, Optional<HeatedRest> before) {}

    /**
     * One refill.
     *
     * @param unchilled what would go over if the car's bottle were filled as warm as its last pass leaves it, kg
     * @param before the car's bottle as it is filled
     * @param mother the mother bottle before
     * @param refill what went over, and both bottles afterwards
     * @param warmest warmest the car's bottle may be so that the charge goes over, K; NaN when chilling does not help
     * @param heating what it takes to bring the filled bottle to its start; empty without a heater or when it is warmer
     */
    public record Filled(
            double unchilled,
            Charge before,
            Charge mother,
            Refill refill,
            double warmest,
            Optional<HeaterTime> heating) {}

    /**
     * Runs a day.
     *
     * @param car what is built
     * @param setup what is set, with jets
     * @param day what is done with the bottles
     * @param at what the world is
     * @return the day; empty without nitrous
     */
    public static Optional<DayOutcome> of(Car car, Setup setup, DaySheet day, Case at) {
        return setup.jets().map(jets -> new Planner(car, setup, day, at).plan());
    }

    /**
     * Whole passes of the day from the bottles as they are taken along, without a refill.
     *
     * @return the number
     */
    public int wholePasses() {
        return (int) runs.stream().filter(run -> run.pass().whole()).count();
    }

    /**
     * Charge the heater takes from the battery in all waits.
     *
     * @return A h
     */
    public double ampereHours() {
        return runs.stream()
                .flatMap(run -> run.before().stream())
                .mapToDouble(HeatedRest::ampereHours)
                .sum();
    }

    /**
     * The first wait after which the bottle is not yet as warm as planned.
     *
     * @return the pass that begins after it; empty when every wait is long enough
     */
    public Optional<Run> tooShort() {
        return runs.stream()
                .filter(run -> run.before().filter(wait -> !wait.enough()).isPresent())
                .findFirst();
    }

    private static final class Planner {
        private final BottleSheet sheet;
        private final Setup setup;
        private final DaySheet day;
        private final double air;
        private final PassTask task;
        private final double start;

        Planner(Car car, Setup setup, DaySheet day, Case at) {
            this.sheet = car.bottle();
            this.setup = setup;
            this.day = day;
            this.air = at.air().temperature();
            this.start = Math.min(sheet.reheated(setup.bottle().startTemperature()), WARMEST);
            this.task = Day.task(
                    car,
                    setup,
                    Draw.of(car, setup, at.air().pressure()).outflow(),
                    air,
                    at.factors().of(Factor.NITROUS_FLOW));
        }

        DayOutcome plan() {
            List<Run> runs = new ArrayList<>();
            for (int bottle = 1; bottle <= day.bottles(); bottle++) {
                runs.addAll(emptied(bottle, runs.size()));
            }
            Charge left = runs.stream()
                    .filter(run -> run.bottle() == 1)
                    .reduce((a, b) -> b)
                    .orElseThrow()
                    .pass()
                    .history()
                    .left();
            return new DayOutcome(
                    runs, day.mother().map(m -> refills(m, left)).orElse(List.of()), scale(), heated(cold()));
        }

        private Charge full() {
            return sheet.vessel()
                    .charged(setup.bottle().charge(), setup.bottle().startTemperature());
        }

        private Charge cold() {
            return sheet.vessel().charged(setup.bottle().charge(), Math.min(air, start));
        }

        /** The passes of one bottle, until one is cut short. */
        private List<Run> emptied(int bottle, int before) {
            List<Run> runs = new ArrayList<>();
            Charge now = full();
            Optional<HeatedRest> wait = Optional.empty();
            while (runs.size() < MOST_PASSES) {
                Pass pass = task.run(now);
                runs.add(new Run(before + runs.size() + 1, bottle, pass, wait));
                if (!pass.whole()) {
                    break;
                }
                HeatedRest rest = HeatedRest.of(
                        pass.history().left(), day.rest(), air, sheet.heaterPower(), start, day.voltage());
                wait = Optional.of(rest);
                now = rest.after();
            }
            return runs;
        }

        private List<Filled> refills(DaySheet.Mother given, Charge left) {
            List<Filled> all = new ArrayList<>();
            Charge mother = new Bottle(given.waterCapacity(), 0, 0).charged(given.charge(), given.temperature());
            double legal = 1000 * FillingCheck.LARGEST_DENSITY * sheet.vessel().waterCapacity();
            double wanted = Math.min(setup.bottle().charge(), legal);
            while (all.size() < MOST_REFILLS) {
                double warmest = Refill.chillTo(mother, left, wanted);
                Charge own = sheet.vessel().charged(left.mass(), filledAt(all, left, warmest));
                Refill refill = Refill.of(mother, own, wanted);
                Charge filled =
                        sheet.vessel().charged(refill.own().mass(), refill.own().temperature());
                double unchilled = Refill.of(mother, left, wanted).transferred();
                all.add(new Filled(unchilled, own, mother, refill, warmest, heated(filled)));
                if (!refill.reached()) {
                    break;
                }
                // until the next refill the mother bottle has the air's warmth back
                mother = mother.bottle().charged(refill.mother().mass(), given.temperature());
            }
            return all;
        }

        /** As the sheet says, else as cold as it must be; where that does not help, as cold as the last time. */
        private double filledAt(List<Filled> before, Charge left, double warmest) {
            if (day.chilledTo().isPresent()) {
                return day.chilledTo().getAsDouble();
            }
            double last = before.isEmpty()
                    ? left.temperature()
                    : before.get(before.size() - 1).before().temperature();
            return Double.isNaN(warmest) ? last : warmest;
        }

        private Optional<HeaterTime> heated(Charge from) {
            if (sheet.heaterPower() <= 0 || from.temperature() >= start) {
                return Optional.empty();
            }
            return Optional.of(HeaterTime.to(
                    from,
                    HeatInput.surroundings(air),
                    sheet.heaterPower(),
                    NitrousOxide.saturationPressure(start),
                    day.voltage(),
                    LONGEST_HEATING));
        }

        private List<ScaleRow> scale() {
            double charge = setup.bottle().charge();
            double step = Math.max(day.scaleStep(), charge / MOST_ROWS);
            return Passes.byScale(sheet.vessel(), start, task, charge, step, MOST_PASSES);
        }
    }
}
