package org.shotledger.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.shotledger.boost.SpeedLine;
import org.shotledger.car.BasePull;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.car.Vehicle;
import org.shotledger.curve.Curve;
import org.shotledger.engine.Engine;
import org.shotledger.evaluate.Calibration;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.nitrous.NozzlePosition;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitFactors;
import org.shotledger.units.UnitSystem;

/** Figures of one sheet held against each other. Every bound here is common practice, no source: what cars of all sizes lie within. */
final class CrossChecks {
    /** Bore, m, of a plain hole that passes as much water as a valve of Kv 1 m3/h, by the definition of Kv and a coefficient of 0.65. */
    private static final double HOLE_OF_KV = 6.2e-3;

    private final Job job;
    private final Car car;
    private final BiConsumer<String, String> report;
    private final BasePull.Point pull;
    private final Optional<OperatingPoint> pulled;

    CrossChecks(Job job, BiConsumer<String, String> report) {
        this.job = job;
        this.car = job.car();
        this.report = report;
        this.pull = car.basePull().strongest();
        this.pulled = Calibration.pulled(car, job.setup(), pull.rpm(), pull.gaugePressure());
    }

    void all() {
        engine();
        basePull();
        target();
        mixture();
        fuelSupply();
        turbo();
        nitrous();
        bottle();
        vehicle();
        tables();
    }

    private void engine() {
        Engine e = car.engine();
        within("engine.stroke", "stroke over bore", e.stroke() / e.bore(), 0.55, 1.5);
        within("engine.rod-length", "rod length over stroke", e.rodLength() / e.stroke(), 1.3, 2.6);
        within(
                "engine.red-line",
                "mean piston speed at the red line in m/s",
                e.meanPistonSpeed(e.redLineRpm()),
                12,
                30);
    }

    private void basePull() {
        Engine e = car.engine();
        within("base-pull.rpm", "engine speed of the pull over the red line", pull.rpm() / e.redLineRpm(), 0.4, 1.02);
        within(
                "conditions." + pullPlace() + ".temperature",
                "air of the base pull in degC",
                car.basePull().air().temperature() - UnitFactors.ICE_POINT,
                3,
                42);
        within(
                pullPath(),
                "wheel power of the base pull for each litre in hp",
                pull.wheelPower() / UnitFactors.HORSEPOWER / (e.displacement() * 1e3),
                25,
                420);
        within(
                "base-pull.boost",
                "work of the base pull over what its air and mixture hold by the fuel-air cycle (too little where absolute pressure was"
                        + " typed as gauge pressure)",
                car.model().factor().value(),
                0.62,
                0.97);
    }

    private String pullPlace() {
        return car.origin("base-pull.conditions").map(Origin::text).orElse("");
    }

    private String pullPath() {
        return List.of("wheel-power", "crank-power", "wheel-torque", "crank-torque", "curve").stream()
                .map(key -> "base-pull." + key)
                .filter(path -> car.origin(path).isPresent())
                .findFirst()
                .orElse("base-pull");
    }

    private void target() {
        double red = car.engine().redLineRpm();
        double low = job.target().rpmLow();
        double high = job.target().rpmHigh();
        within(
                "target.wheel-power",
                "power asked for over that of the base pull",
                job.target().wheelPower() / pull.wheelPower(),
                0.75,
                2.5);
        within("target.rpm-high", "highest speed of the target over the red line", high / red, 0.6, 1.0);
        within("target.rpm-low", "lowest speed of the target over the red line", low / red, 0.3, 0.95);
        var arming = job.setup().arming();
        within(
                "nitrous-system.arming.rpm-high",
                "highest speed with nitrous over the red line",
                arming.rpmHigh() / red,
                0.55,
                1.0);
        within(
                "nitrous-system.arming.rpm-low",
                "lowest speed with nitrous over the red line",
                arming.rpmLow() / red,
                0.28,
                0.9);
        car.origin("conditions." + job.target().conditions() + ".temperature")
                .ifPresent(o -> inside(
                        o.path(), "must-hold.temperature", job.stated().air().temperature(), 45));
        inside(
                "fuels.main.ethanol",
                "must-hold.ethanol",
                car.fuels().blend().map(b -> b.ethanol()).orElse(Double.NaN),
                0.6);
        double least = job.cases().stream().mapToDouble(c -> c.voltage()).min().orElse(Double.NaN);
        within(
                "must-hold.voltage",
                "lowest voltage over the usual one",
                least / car.injection().voltage(),
                0.8,
                1.0);
    }

    /** A stated value lies among those over which the plan must hold. */
    private void inside(String path, String range, double value, double widest) {
        double[] ends = car.origins().values().stream()
                .filter(o -> o.path().startsWith(range + "["))
                .mapToDouble(Origin::value)
                .toArray();
        if (ends.length == 2 && ends[1] - ends[0] > widest) {
            report.accept(
                    range + "[0]",
                    "The range of \"" + range + "\" from " + text(range + "[0]") + " to " + text(range + "[1]")
                            + " is unusually wide");
        }
        if (ends.length == 2 && (value < ends[0] - 1e-9 || value > ends[1] + 1e-9)) {
            report.accept(
                    path, "\"" + path + "\" is " + text(path) + ", which lies outside the range of \"" + range + "\"");
        }
    }

    private void mixture() {
        double lambda = job.setup().mixture();
        within(
                "base-pull.lambda",
                "mixture of the base pull over that of the tune",
                car.basePull().lambda() / lambda,
                0.85,
                1.18);
        within(
                "tune.lambda",
                "mixture of the tune over the leanest allowed",
                lambda / car.limits().lambdaHigh(),
                0.78,
                1.12);
        if (job.target().mixture().kind() == MixtureGoal.Kind.TOTAL_LAMBDA) {
            within(
                    "tune.nitrous-lambda",
                    "mixture with nitrous over that without",
                    job.target().mixture().value() / lambda,
                    0.85,
                    1.12);
        }
        double retard = job.setup().retard();
        if (retard > 0) {
            within("tune.nitrous-retard", "spark later with nitrous in degrees", retard, 1, 20);
        }
        within(
                "fuels.main-evaporated",
                "share of the main fuel that evaporates over that of the nitrous fuel",
                car.fuels().mainEvaporated() / car.fuels().nitrousEvaporated(),
                0.6,
                8);
        double own = car.origin("fuels.main.ethanol").map(Origin::value).orElse(Double.NaN);
        double then = car.origin("base-pull.fuel.ethanol").map(Origin::value).orElse(own);
        within(
                "fuels.main.ethanol",
                "ethanol in the tank less that of the base pull in per cent of volume",
                100 * (own - then),
                -35,
                35);
    }

    private void fuelSupply() {
        double sum = car.injection().count() * car.injection().injector().staticFlow();
        PumpGroup pumps = car.injection().pumps();
        double base = job.setup().mainRegulator().basePressure();
        flowAgainst(
                "injection.pumps.curve",
                "flow of the main pumps over that of all injectors held open",
                pumps,
                base,
                sum,
                0.35,
                4.5);
        pulled.ifPresent(p -> {
            within(
                    "injection.injector.flow",
                    "duty that the base pull asks of the injectors",
                    p.main().duty(),
                    0.18,
                    1.05);
            within(
                    "injection.pumps.curve",
                    "flow of the main pumps over what the base pull needs",
                    p.main().pumpCapacity() / p.main().massFlow(),
                    1.0,
                    5);
        });
        if (car.injection().count() % car.engine().cylinders() != 0) {
            report.accept(
                    "injection.count",
                    "\"injection.count\" is " + car.injection().count() + " where the engine has "
                            + car.engine().cylinders() + " cylinders");
        }
        reference(
                "injection.regulator.boost-reference",
                job.setup().mainRegulator().boostReference());
        job.setup()
                .ownRegulator()
                .ifPresent(own -> reference("nitrous-system.fuel.regulator.boost-reference", own.boostReference()));
        wires("injection.pumps.wiring-resistance", pumps, base);
        car.nitrous()
                .fuel()
                .cell()
                .ifPresent(cell -> wires(
                        "nitrous-system.fuel.pumps.wiring-resistance",
                        cell.pumps(),
                        job.setup().nitrousRegulator().basePressure()));
    }

    private void flowAgainst(
            String path, String what, PumpGroup pumps, double rise, double needed, double low, double high) {
        try {
            within(path, what, pumps.flow(rise, car.injection().voltage()) / needed, low, high);
        } catch (IllegalArgumentException outside) {
            report.accept(
                    path,
                    "The curve of \"" + path
                            + "\" does not hold the pressure of its regulator and the voltage of the car");
        }
    }

    private void reference(String path, double reference) {
        if (reference > 0 && (reference < 0.5 || reference > 2)) {
            report.accept(
                    path,
                    "\"" + path + "\" is " + text(path)
                            + ", where regulators follow the boost once, in part of a fixed ratio,"
                            + " or not at all: 0, or 0.5 to 2");
        }
    }

    private void wires(String path, PumpGroup pumps, double rise) {
        double drop;
        try {
            Pump pump = pumps.pumps().get(0);
            drop = car.injection().voltage()
                    - pumps.terminalVoltage(pump, rise, car.injection().voltage());
        } catch (IllegalArgumentException outside) {
            return; // said of the curve already
        }
        within(path, "voltage lost in the pump's wires in V", drop, -1, 2);
    }

    private void turbo() {
        var turbo = car.turbo();
        double fastest = turbo.map().lines().stream()
                .mapToDouble(SpeedLine::correctedRpm)
                .max()
                .orElse(Double.NaN);
        within(
                "turbo.compressor.max-speed",
                "highest speed allowed over the fastest line of the map",
                turbo.map().maximumRpm() / fastest,
                0.7,
                1.25);
        within(
                "turbo.boost-ceiling",
                "boost ceiling over the boost of the base pull",
                turbo.boostCeiling() / pull.gaugePressure(),
                0.6,
                2.6);
        pulled.ifPresent(p -> {
            double total = p.charge().mixture().totalFlow();
            double air = p.compressor().flow();
            within(
                    "turbo.turbine.effective-area",
                    "share of the base pull's exhaust that the wastegate lets by",
                    1 - p.shaft().turbineFlow() / total,
                    -0.1,
                    0.6);
            within(
                    "turbo.turbine.effective-area",
                    "back pressure over plenum pressure on the base pull",
                    p.shaft().exhaustPressure() / p.plenumPressure(),
                    0.55,
                    2.3);
            loss("turbo.inlet-loss", turbo.inlet().loss(air, 1.15), 1e2, 0.12e5);
            loss(
                    "turbo.charge-cooler.loss",
                    turbo.cooler().loss().loss(air, turbo.cooler().loss().referenceDensity()),
                    0.005e5,
                    0.6e5);
            loss(
                    "turbo.turbine.exhaust-loss",
                    turbo.turbine()
                            .exhaustLoss()
                            .loss(total, turbo.turbine().exhaustLoss().referenceDensity()),
                    0.003e5,
                    0.9e5);
        });
        double limit = car.limits().exhaustTemperature();
        if (Double.isFinite(limit)) {
            within(
                    "limits.exhaust-temperature",
                    "hottest exhaust allowed less that of the base pull in K",
                    limit - turbo.exhaustTemperature(),
                    -20,
                    300);
        }
    }

    private void loss(String section, double pascals, double low, double high) {
        within(
                section + ".at-flow",
                "pressure loss of \"" + section + "\" at the base pull in mbar",
                pascals / 100,
                low / 100,
                high / 100);
    }

    private void nitrous() {
        var kit = car.nitrous();
        var side = kit.nitrous();
        double seat = side.solenoid().bore();
        within(
                "nitrous-system.nitrous.solenoid.bore",
                "hole of the nitrous solenoid over that of its hose",
                seat / side.hoseBore(),
                0.17,
                0.95);
        within(
                "nitrous-system.nitrous.valve-kv",
                "hole that passes as much as the valve over that of the hose",
                HOLE_OF_KV * Math.sqrt(side.valve()) / side.hoseBore(),
                0.4,
                1.7);
        within(
                "nitrous-system.nitrous.line-bore",
                "lines behind the solenoid over its hole",
                side.lineBore() / seat,
                0.5,
                4.5);
        within(
                "nitrous-system.fuel.solenoid.bore",
                "hole of the fuel solenoid over that of the nitrous solenoid",
                kit.fuel().solenoid().bore() / seat,
                0.4,
                1.6);
        kit.passages().ifPresent(passages -> {
            within(
                    "nitrous-system.nozzle.nitrous-passage",
                    "drillings of all nozzles over the nitrous solenoid, as areas",
                    kit.nozzles() * square(passages.nitrousBore() / seat),
                    0.4,
                    9);
            within(
                    "nitrous-system.nozzle.fuel-passage",
                    "drilling for fuel over that for nitrous",
                    passages.fuelBore() / passages.nitrousBore(),
                    0.35,
                    1.3);
        });
        int cylinders = car.engine().cylinders();
        if (kit.position() == NozzlePosition.RUNNER ? kit.nozzles() != cylinders : kit.nozzles() > 4) {
            report.accept(
                    "nitrous-system.nozzles",
                    "\"nitrous-system.nozzles\" is " + kit.nozzles() + " where the nozzles spray "
                            + kit.position().words() + " of " + cylinders + " cylinders");
        }
        double shot = Math.max(0.2 * pull.wheelPower(), job.target().wheelPower() - pull.wheelPower());
        // the trade's 0.8 lb in 10 s for each 100 hp, and a fifth of that in fuel
        double fuel = shot * FirstSheet.NITROUS_PER_POWER / 5 / 770;
        kit.fuel().cell().ifPresent(cell -> {
            flowAgainst(
                    "nitrous-system.fuel.pumps.curve",
                    "flow of the nitrous fuel pump over what the shot may need",
                    cell.pumps(),
                    job.setup().nitrousRegulator().basePressure(),
                    fuel,
                    0.8,
                    30);
            double passes = cell.volume()
                    / (fuel * job.target().passSeconds() * job.target().passes());
            within("nitrous-system.fuel.cell-volume", "fuel cell over what the passes may need", passes, 0.7, 60);
        });
        double gas = shot
                * FirstSheet.NITROUS_PER_POWER
                * job.target().passSeconds()
                * job.target().passes();
        within(
                "bottle.charge",
                "charge over what the passes may need",
                job.setup().bottle().charge() / gas,
                0.35,
                12);
    }

    private static double square(double value) {
        return value * value;
    }

    private void bottle() {
        var vessel = car.bottle().vessel();
        double charge = job.setup().bottle().charge();
        within(
                "bottle.charge",
                "charge over water capacity in kg for each litre",
                charge / (vessel.waterCapacity() * 1e3),
                0.3,
                0.7);
        within(
                "bottle.shell-mass",
                "mass of the shell over water capacity in kg for each litre",
                vessel.wallMass() / (vessel.waterCapacity() * 1e3),
                0.5,
                2.8);
        within(
                "limits.bottle-pressure-high",
                "highest bottle pressure allowed over the lowest",
                car.limits().bottlePressureHigh() / car.limits().bottlePressureLow(),
                1.05,
                2.3);
    }

    private void vehicle() {
        pulled.ifPresent(p -> {
            within(
                    "limits.crank-torque",
                    "torque allowed over that of the base pull",
                    car.limits().crankTorque() / p.crankTorque(),
                    0.95,
                    2.8);
            within(
                    "limits.peak-pressure",
                    "peak pressure allowed over that of the base pull",
                    car.limits().peakPressure() / p.cylinder().peakPressure(),
                    0.95,
                    2.6);
        });
        if (car.vehicle().isEmpty()) {
            return;
        }
        Vehicle v = car.vehicle().get();
        within(
                "target.pass-time",
                "speed in m/s that half of the power asked for gives the car's mass in the time of a pass",
                Math.sqrt(job.target().wheelPower() * job.target().passSeconds() / v.mass()),
                15,
                130);
        within(
                "vehicle.mass",
                "power asked for over mass in hp for each tonne",
                job.target().wheelPower() / UnitFactors.HORSEPOWER / (v.mass() / 1000),
                70,
                1400);
        List<Double> gears = v.gears();
        for (int i = 1; i < gears.size(); i++) {
            if (!(gears.get(i) < gears.get(i - 1))) {
                report.accept(
                        "vehicle.gears[" + i + "]",
                        "\"vehicle.gears\" does not fall from gear to gear: " + text("vehicle.gears[" + i + "]")
                                + " stands behind " + text("vehicle.gears[" + (i - 1) + "]"));
                return;
            }
            within(
                    "vehicle.gears[" + i + "]",
                    "ratio of a gear over that of the next",
                    gears.get(i - 1) / gears.get(i),
                    1.03,
                    2.4);
        }
    }

    private void tables() {
        flat("engine.volumetric-efficiency", car.engine().volumetricEfficiency(), 0.002);
        double best = Arrays.stream(car.engine().volumetricEfficiency().ordinates())
                .max()
                .orElse(Double.NaN);
        within("engine.volumetric-efficiency", "highest volumetric efficiency", best, 0.7, 1.3);
        for (SpeedLine line : car.turbo().map().lines()) {
            if (line.points().size() > 2
                    && line.points().stream()
                                    .mapToDouble(SpeedLine.Point::pressureRatio)
                                    .distinct()
                                    .count()
                            == 1) {
                report.accept(
                        "turbo.compressor.map",
                        "The compressor map's line of " + rpm(line) + " has one pressure ratio at every flow");
            }
        }
        pump("injection.pumps.curve", car.injection().pumps());
        car.nitrous().fuel().cell().ifPresent(cell -> pump("nitrous-system.fuel.pumps.curve", cell.pumps()));
    }

    private static String rpm(SpeedLine line) {
        return QuantityKind.ROTATION.text(line.correctedRpm(), UnitSystem.SI);
    }

    private void pump(String path, PumpGroup pumps) {
        for (Pump.Line line : pumps.pumps().get(0).lines()) {
            flat(path, line.flow(), 0.01);
        }
    }

    private void flat(String path, Curve curve, double least) {
        double[] y = curve.ordinates();
        double high = Arrays.stream(y).max().orElse(0);
        if (y.length > 2 && high - Arrays.stream(y).min().orElse(0) < least * high) {
            report.accept(path, "The table \"" + text(path) + "\" has the same value everywhere: " + curve.name());
        }
    }

    private void within(String path, String what, double value, double low, double high) {
        if (value < low || value > high) {
            report.accept(
                    path,
                    "\"" + path + "\"" + (text(path).isEmpty() ? "" : ", " + text(path) + ",")
                            + " does not go with the rest: " + what + " is " + number(value) + "; usual is "
                            + number(low) + " to " + number(high) + " (common practice, no source)");
        }
    }

    private static String number(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(value)
                        .round(new MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString()
                : "infinite";
    }

    private String text(String path) {
        return car.origin(path).map(Origin::text).orElse("");
    }
}
