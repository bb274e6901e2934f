package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.Origin;
import org.shotledger.car.SheetPaths;
import org.shotledger.engine.KnockModel;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.NitrousFactor;
import org.shotledger.evaluate.Calibration;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.flow.FlowBand;
import org.shotledger.job.Job;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.FuelJet;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;
import org.shotledger.units.NearestName;

/** Every band that the models, the sheet and the day state for a plan. */
public final class Unknowns {
    /** 90 % band of the air breathed beyond the base pull, which fixes its product with the work: our choice. */
    private static final FlowBand BREATHING = new FlowBand(0.97, 1, 1.03);
    /** 90 % band of the main fuel metered, a wide-band probe with its trim: our choice. */
    private static final FlowBand METERING = new FlowBand(0.98, 1, 1.02);
    /** 90 % band of the absolute exhaust temperature against the base pull's own: our choice, about 35 K. */
    private static final FlowBand EXHAUST = new FlowBand(0.97, 1, 1.03);
    /** 90 % band of the peak pressure, cycle to cycle spread left out as everywhere: our choice. */
    private static final FlowBand PEAK = new FlowBand(0.94, 1, 1.06);
    /** Standard uncertainties of the day: our choice, usual gauges and thermometers. */
    private static final double BOTTLE_DEVIATION = 1.0;

    /** Standard deviation of the day's air temperature against the forecast, K: our choice. */
    private static final double AIR_DEVIATION = 2.0;
    /** Standard deviation of the supply voltage, V: our choice, what an alternator's regulator drifts. */
    private static final double VOLTAGE_DEVIATION = 0.1;
    /**
     * Wires, sensors and their readings, and money: their bands are judged where they stand, and no power or limit follows from them. The
     * errors of flow tests are in the band of the jets they tested, and that of the nitrous work in the engine model.
     */
    private static final Pattern NOT_OF_THE_ANSWER =
            Pattern.compile("(wiring|controller|readings|parts|track|electrical|flow-tests)\\..*|"
                    + Pattern.quote(SheetPaths.NITROUS_WORK));

    private static final String CHOICE = "no source, our choice";

    private Unknowns() {}

    /**
     * All of them; one figure has one band: what the sheet states with {@code +/-} replaces the usual band of the same figure.
     *
     * @param plan the plan
     * @return models first, then the sheet in its order, then the day; each with an effort of 1
     */
    public static List<Unknown> of(Plan plan) {
        List<Unknown> all = new ArrayList<>(models(plan));
        all.addAll(sheet(plan.job()));
        all.addAll(day(plan));
        return List.copyOf(all);
    }

    private static List<Unknown> models(Plan plan) {
        List<Unknown> all = new ArrayList<>();
        Car car = plan.car();
        if (plan.setup().jets().isPresent()) {
            nitrous(plan, all);
        }
        if (Double.isNaN(
                car.origin("base-pull.wheel-power").map(Origin::uncertainty).orElse(Double.NaN))) {
            all.add(Unknown.model(
                    Factor.ENGINE_WORK,
                    FlowBand.around(1, car.basePull().uncertainty()),
                    car.provenance("base-pull.wheel-power"),
                    "uncertainty of the base pull",
                    "repeat the base pull"));
        }
        all.add(breathing());
        all.add(chosen(Factor.MAIN_FUEL, METERING, "log the mixture over the pull"));
        all.add(chosen(Factor.EXHAUST_TEMPERATURE, EXHAUST, "log the exhaust temperature with a small shot"));
        all.add(chosen(Factor.PEAK_PRESSURE, PEAK, "measure cylinder pressure"));
        return all;
    }

    private static void nitrous(Plan plan, List<Unknown> all) {
        Car car = plan.car();
        plan.stated().strongest().ifPresent(point -> {
            boolean tested = point.nitrous().measured();
            add(
                    all,
                    Factor.NITROUS_FLOW,
                    point.nitrous().band(),
                    tested ? Provenance.MEASURED : Provenance.PUBLISHED,
                    tested ? "flow test of the jets" : "band of the jet law for this class of hole",
                    tested ? "another flow test of the nitrous jets" : "flow test of the nitrous jets");
            knock(plan, point)
                    .ifPresent(band -> add(
                            all,
                            Factor.KNOCK,
                            band,
                            Provenance.ESTIMATED,
                            "spread between the favourable and the unsafe knock model; " + KnockModel.STANDING,
                            "knock log with a small shot"));
        });
        FuelJet fuel =
                car.nitrous().suited(plan.setup().jets().orElseThrow()).fuel().jet();
        boolean tested = fuel.measured().isPresent();
        // the flow of the plan stands at the best of the band already
        add(
                all,
                Factor.FUEL_JET_FLOW,
                fuel.factors().times(1 / fuel.factors().best()),
                tested ? Provenance.MEASURED : Provenance.PUBLISHED,
                fuel.source(),
                tested ? "another flow test of the fuel jets" : "flow test of the fuel jets");
        if (assumed(car, SheetPaths.OXIDE_EVAPORATED) && assumed(car, SheetPaths.WALL_HEAT)) {
            all.add(new Unknown(
                    "evaporation of the nitrous oxide and wall heat before the valves",
                    Unknown.Kind.MODEL,
                    Distribution.uniform(-1, 1),
                    World::withWarming,
                    Provenance.ASSUMED,
                    "from everything evaporated without wall heat to three quarters with a quarter of it; " + CHOICE,
                    "a quick charge temperature sensor with the nitrous on",
                    1));
        }
        NitrousFactor work = car.model().nitrous();
        Optional<Origin> stated = car.origin(SheetPaths.NITROUS_WORK);
        if (work.high() > work.low()) {
            all.add(new Unknown(
                    Factor.NITROUS_WORK.words(),
                    Unknown.Kind.MODEL,
                    Distribution.band(new FlowBand(work.low() / work.value(), 1, work.high() / work.value())),
                    World::withNitrousWork,
                    stated.map(o -> Provenance.ofWords(o.provenance())).orElse(Provenance.ESTIMATED),
                    stated.map(Origin::source)
                            .orElse("not measured: from no extra heat loss to the weakest outside figure"),
                    "a pull with a small shot",
                    1));
        }
    }

    private static boolean assumed(Car car, String path) {
        return Double.isNaN(car.origin(path).map(Origin::uncertainty).orElse(Double.NaN));
    }

    private static void add(
            List<Unknown> all, Factor factor, FlowBand band, Provenance provenance, String reason, String measurement) {
        if (band.high() > band.low()) {
            all.add(Unknown.model(factor, band, provenance, reason, measurement));
        }
    }

    private static Unknown chosen(Factor factor, FlowBand band, String measurement) {
        return Unknown.model(factor, band, Provenance.ASSUMED, CHOICE, measurement);
    }

    /** The base pull fixes work times air: who breathes more worked less. */
    private static Unknown breathing() {
        return new Unknown(
                Factor.BREATHING.words(),
                Unknown.Kind.MODEL,
                Distribution.band(BREATHING),
                (world, value) -> world.withCases(at -> at.with(
                                Factor.BREATHING, value * at.factors().of(Factor.BREATHING))
                        .with(Factor.ENGINE_WORK, at.factors().of(Factor.ENGINE_WORK) / value)),
                Provenance.ASSUMED,
                CHOICE + "; the base pull holds its product with the work",
                "log air flow or injector time over the base pull",
                1);
    }

    /** The index with either end of the knock model over that with the best, each calibrated on the same base pull. */
    private static Optional<FlowBand> knock(Plan plan, OperatingPoint point) {
        double best = knock(plan, point, KnockModel.BEST);
        double low = knock(plan, point, KnockModel.LOW) / best;
        double high = knock(plan, point, KnockModel.HIGH) / best;
        return low > 0 && low <= 1 && high >= 1 && Double.isFinite(high)
                ? Optional.of(new FlowBand(low, 1, high))
                : Optional.empty();
    }

    private static double knock(Plan plan, OperatingPoint point, KnockModel knock) {
        EngineModel m = plan.car().model();
        EngineModel other = new EngineModel(
                m.factor(),
                m.nitrous(),
                m.friction(),
                m.cylinder(),
                m.phasing(),
                m.probe(),
                knock,
                m.baseKnock(),
                m.backPressure(),
                m.cycles());
        try {
            Car car = Calibration.of(plan.car().with(other), plan.setup());
            return Evaluate.model(car, plan.setup(), plan.stated().at())
                    .at(point.rpm(), point.plenumPressure(), point.mode())
                    .cylinder()
                    .knock();
        } catch (NoAnswerException none) {
            return Double.NaN;
        }
    }

    /**
     * Everything the sheet states with {@code +/-}, each as a rectangular distribution of that half-width (JCGM 100:2008, 4.3.7).
     *
     * @param job the job
     * @return the unknowns in the order of the sheet
     */
    public static List<Unknown> sheet(Job job) {
        return job.car().origins().values().stream()
                .filter(o -> o.uncertainty() > 0)
                .filter(o -> !NOT_OF_THE_ANSWER.matcher(o.path()).matches())
                .map(o -> sheet(o, uniform(o)))
                .toList();
    }

    private static Distribution uniform(Origin origin) {
        return Distribution.uniform(origin.value() - origin.halfWidth(), origin.value() + origin.halfWidth());
    }

    /**
     * A figure of the sheet with any distribution.
     *
     * @param job the job
     * @param path the figure, for example {@code "bottle.start-temperature"}
     * @param distribution distribution of its SI value
     * @return the unknown
     * @throws IllegalArgumentException when the sheet has no such figure; the nearest name is offered
     */
    public static Unknown figure(Job job, String path, Distribution distribution) {
        Origin origin = job.car()
                .origin(path)
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + path + "\" is not a figure of the sheet of " + job.name() + "."
                                + NearestName.of(path, job.car().origins().keySet())
                                        .map(n -> " Did you mean \"" + n + "\"?")
                                        .orElse(" Name a figure as it stands in the sheet.")));
        return sheet(origin, distribution);
    }

    private static Unknown sheet(Origin origin, Distribution distribution) {
        origin.written(origin.value()); // refuses what is no number with a unit
        return new Unknown(
                origin.path(),
                Unknown.Kind.SHEET,
                distribution,
                (world, value) -> value == origin.value() ? world : world.with(origin.path(), origin.written(value)),
                Provenance.ofWords(origin.provenance()),
                origin.source(),
                "measure it with a better instrument",
                1);
    }

    private static List<Unknown> day(Plan plan) {
        List<Unknown> all = new ArrayList<>();
        Car car = plan.car();
        if (plan.setup().jets().isPresent() && exact(car, "bottle.start-temperature")) {
            all.add(day(
                    "bottle temperature at the start",
                    BOTTLE_DEVIATION,
                    (world, value) -> world.with(warmer(world.setup(), value)),
                    "a probe on the bottle instead of a gauge"));
        }
        all.add(day(
                "air temperature in every case",
                AIR_DEVIATION,
                (world, value) -> world.withCases(at -> warmer(at, value)),
                "read the thermometer before the pass"));
        if (exact(car, "injection.voltage")) {
            all.add(day(
                    "supply voltage in every case",
                    VOLTAGE_DEVIATION,
                    (world, value) -> world.withCases(at -> at.withVoltage(at.voltage() + value)),
                    "log the voltage at full load"));
        }
        return all;
    }

    private static boolean exact(Car car, String path) {
        return car.origin(path).map(o -> !(o.uncertainty() > 0)).orElse(true);
    }

    private static Unknown day(String name, double deviation, Unknown.Effect effect, String measurement) {
        return new Unknown(
                name,
                Unknown.Kind.DAY,
                Distribution.normal(0, deviation),
                effect,
                Provenance.ASSUMED,
                CHOICE,
                measurement,
                1);
    }

    private static Setup warmer(Setup setup, double by) {
        return setup.withBottle(
                new BottleFill(setup.bottle().charge(), setup.bottle().startTemperature() + by));
    }

    private static Case warmer(Case at, double by) {
        MoistAir air = at.air();
        return at.withAir(new MoistAir(air.pressure(), air.temperature() + by, air.relativeHumidity()));
    }
}
