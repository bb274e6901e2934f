package org.shotledger.budget;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.build.Build;
import org.shotledger.build.Origin;
import org.shotledger.flow.JetFlow;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Mixture;
import org.shotledger.units.QuantityKind;
import org.shotledger.wetkit.JetPair;

/** Writes down the reasoning of a budget's operating point of most power, inputs first. */
final class LedgerWriter {
    private static final String SHEET = "set in the build, not stated in the sheet";

    private final Build build;
    private final Wish wish;
    private final Evaluator evaluator;
    private final Evaluation peak;
    private final Evaluation off;
    private final BottlePlan bottle;
    private final Map<String, Entry> entries = new LinkedHashMap<>();

    LedgerWriter(Build build, Wish wish, Evaluator evaluator, Evaluation peak, BottlePlan bottle) {
        this.build = build;
        this.wish = wish;
        this.evaluator = evaluator;
        this.peak = peak;
        this.off = evaluator.at(
                peak.conditions(), peak.rpm(), Demand.boost(peak.demand().plenumPressure()));
        this.bottle = bottle;
    }

    Ledger write() {
        wish();
        surroundings();
        engine();
        air();
        nitrous();
        fuel();
        mixture();
        power();
        bottle();
        tradeFigures();
        return Ledger.of(new ArrayList<>(entries.values()));
    }

    private void wish() {
        sheet("wish", "wheel power asked for", "P", QuantityKind.POWER, wish.wheelPower(), "target.wheel-power");
        chosen("engine-speed", "engine speed of most power", "N", QuantityKind.ROTATION, peak.rpm());
        chosen("boost", "boost held", "p_b", QuantityKind.GAUGE_PRESSURE, peak.gaugePressure());
        JetPair jets = peak.demand().jets().orElseThrow();
        chosen("nitrous-jet", "nitrous jet", "d_N", QuantityKind.BORE, jets.nitrousBore());
        chosen("fuel-jet", "fuel jet", "d_F", QuantityKind.BORE, jets.fuelBore());
    }

    private void surroundings() {
        var air = peak.conditions().air();
        String place = "conditions." + wish.conditions() + ".";
        sheet(
                "ambient-temperature",
                "ambient temperature",
                "T_a",
                QuantityKind.TEMPERATURE,
                air.temperature(),
                place + "temperature");
        sheet(
                "humidity",
                "relative humidity",
                "phi",
                QuantityKind.FRACTION,
                air.relativeHumidity(),
                place + "humidity");
        calculated(
                "ambient-pressure",
                "ambient pressure",
                "p_a",
                QuantityKind.ABSOLUTE_PRESSURE,
                air.pressure(),
                Double.NaN,
                "standard atmosphere at the altitude, or the station pressure where it is given",
                "ISO 2533");
        calculated(
                "plenum-pressure",
                "plenum pressure",
                "p_m",
                QuantityKind.ABSOLUTE_PRESSURE,
                peak.demand().plenumPressure(),
                Double.NaN,
                "ambient pressure plus boost",
                "definition",
                "ambient-pressure",
                "boost");
    }

    private void engine() {
        var engine = build.engine();
        sheet("bore", "bore", "B", QuantityKind.LENGTH, engine.bore(), "engine.bore");
        sheet("stroke", "stroke", "S", QuantityKind.LENGTH, engine.stroke(), "engine.stroke");
        sheet("cylinders", "cylinders", "z", QuantityKind.COUNT, engine.cylinders(), "engine.cylinders");
        sheet(
                "compression-ratio",
                "compression ratio",
                "r",
                QuantityKind.RATIO,
                engine.compressionRatio(),
                "engine.compression-ratio");
        sheet(
                "volumetric-efficiency",
                "volumetric efficiency at that speed",
                "eta_v",
                QuantityKind.RATIO,
                engine.volumetricEfficiency().at(peak.rpm()),
                "engine.volumetric-efficiency");
        calculated(
                "displacement",
                "displacement",
                "V_d",
                QuantityKind.VOLUME,
                engine.displacement(),
                Double.NaN,
                "z pi/4 B^2 S",
                "definition",
                "bore",
                "stroke",
                "cylinders");
        sheet(
                "lambda-main",
                "mixture of the main fuel",
                "lambda_0",
                QuantityKind.RATIO,
                build.tune().lambda(),
                "tune.lambda");
    }

    private void air() {
        calculated(
                "compressor-outlet",
                "temperature after the compressor",
                "T_2",
                QuantityKind.TEMPERATURE,
                peak.compressor().outletTemperature(),
                Double.NaN,
                "T_1 (1 + (PR^((g-1)/g) - 1) / eta), efficiency from the map",
                "first law; the build's compressor map",
                "ambient-temperature",
                "ambient-pressure",
                "plenum-pressure");
        calculated(
                "air-temperature",
                "air temperature after the cooler",
                "T_3",
                QuantityKind.TEMPERATURE,
                peak.airAfterCooler(),
                Double.NaN,
                "T_2 - eps (T_2 - T_a)",
                "definition of effectiveness",
                "compressor-outlet",
                "ambient-temperature");
    }

    private void nitrous() {
        sheet(
                "bottle-temperature",
                "bottle temperature",
                "T_b",
                QuantityKind.TEMPERATURE,
                peak.conditions().bottleLiquid().temperature(),
                "bottle.start-temperature");
        calculated(
                "bottle-pressure",
                "bottle pressure",
                "p_b0",
                QuantityKind.ABSOLUTE_PRESSURE,
                peak.conditions().bottleLiquid().pressure(),
                Double.NaN,
                "saturation pressure at the bottle temperature",
                "Lemmon and Span, J. Chem. Eng. Data 51 (2006) 785-850",
                "bottle-temperature");
        sheet(
                "nitrous-solenoid",
                "hole of the nitrous solenoid",
                "d_S",
                QuantityKind.BORE,
                build.wetKit().nitrous().solenoid().bore(),
                "wet-kit.nitrous.solenoid.bore");
        calculated(
                "jet-inlet-pressure",
                "pressure before the nitrous jet",
                "p_j",
                QuantityKind.ABSOLUTE_PRESSURE,
                peak.nitrous().jetInlet().pressure(),
                Double.NaN,
                "two-phase pressure loss along the feed path at constant stagnation enthalpy",
                "homogeneous model; Churchill (1977) friction, McAdams (1942) viscosity",
                "bottle-pressure",
                "nitrous-solenoid",
                "nitrous-jet");
        double flow = peak.nitrous().massFlow();
        calculated(
                "nitrous-flow",
                "nitrous oxide flow",
                "m_N",
                QuantityKind.MASS_FLOW,
                flow,
                flow * nitrousError(),
                "feed path and jets: " + jetModel() + "; limited by " + limiting(),
                "see the flow model's own sources",
                "jet-inlet-pressure",
                "nitrous-jet");
    }

    private double nitrousError() {
        return peak.nitrous().jets().stream()
                .mapToDouble(JetFlow::expectedError)
                .max()
                .orElse(Double.NaN);
    }

    private String jetModel() {
        return peak.nitrous().jets().stream().map(JetFlow::model).findFirst().orElse("none");
    }

    private String limiting() {
        return peak.nitrous().choked() ? peak.nitrous().chokingElement() + " (choked)" : "no choking part";
    }

    private void fuel() {
        var kit = build.wetKit().fuel();
        sheet(
                "fuel-pressure",
                "set pressure of the nitrous fuel",
                "p_F",
                QuantityKind.PRESSURE_DIFFERENCE,
                kit.regulator().basePressure(),
                "wet-kit.fuel.regulator.base-pressure");
        sheet(
                "boost-reference",
                "boost reference of its regulator",
                "k_b",
                QuantityKind.RATIO,
                kit.regulator().boostReference(),
                "wet-kit.fuel.regulator.boost-reference");
        calculated(
                "fuel-rail",
                "pressure at the nitrous fuel rail",
                "p_r",
                QuantityKind.ABSOLUTE_PRESSURE,
                peak.nitrousFuel().railPressure(),
                Double.NaN,
                "p_a + p_F + k_b (p_m - p_a)",
                "definition",
                "ambient-pressure",
                "fuel-pressure",
                "boost-reference",
                "plenum-pressure");
        fuelProperties("nitrous-fuel", "nitrous fuel", build.fuels().nitrous());
        fuelProperties("main-fuel", "main fuel", build.fuels().main());
        calculated(
                "nitrous-fuel-flow",
                "nitrous fuel flow",
                "m_F",
                QuantityKind.MASS_FLOW,
                peak.nitrousFuel().massFlow(),
                Double.NaN,
                "sqrt(2 rho (p_r - p_m)) over solenoid and jets in series",
                "Bernoulli with discharge coefficients",
                "fuel-rail",
                "plenum-pressure",
                "fuel-jet",
                "nitrous-fuel-density");
    }

    private void fuelProperties(String key, String name, Fuel fuel) {
        published(
                key + "-density",
                "density of the " + name + ", " + fuel.name(),
                "rho",
                QuantityKind.DENSITY,
                fuel.density(build.fuels().temperature()),
                fuel.source());
        published(
                key + "-oxygen",
                "oxygen demand of the " + name + ", kg per kg",
                "s",
                QuantityKind.RATIO,
                fuel.oxygenDemand(),
                "atom balance; " + fuel.source());
        published(
                key + "-heat",
                "lower heating value of the " + name,
                "H",
                QuantityKind.SPECIFIC_ENERGY,
                fuel.lowerHeatingValue(),
                fuel.source());
    }

    private void mixture() {
        Mixture mixture = peak.charge().mixture();
        calculated(
                "charge-temperature",
                "temperature of the mixed charge",
                "T_m",
                QuantityKind.TEMPERATURE,
                peak.charge().temperature(),
                Double.NaN,
                "energy balance of air, nitrous oxide and both fuels",
                "first law; real-fluid enthalpy of nitrous oxide",
                "air-temperature",
                "nitrous-flow",
                "nitrous-fuel-flow");
        calculated(
                "air-flow",
                "dry air flow",
                "m_A",
                QuantityKind.MASS_FLOW,
                mixture.dryAir(),
                Double.NaN,
                "speed-density: eta_v V_d N/2 p_m/(R T_m), less the room of nitrous oxide and fuel vapour",
                "Heywood, Internal Combustion Engine Fundamentals, section 6.2",
                "volumetric-efficiency",
                "displacement",
                "engine-speed",
                "plenum-pressure",
                "charge-temperature");
        calculated(
                "main-fuel-flow",
                "main fuel flow",
                "m_M",
                QuantityKind.MASS_FLOW,
                mixture.mainFlow(),
                Double.NaN,
                "0.2314 m_A / (lambda_0 s)",
                "oxygen balance",
                "air-flow",
                "lambda-main",
                "main-fuel-oxygen");
        calculated(
                "lambda",
                "mixture of all streams",
                "lambda",
                QuantityKind.RATIO,
                mixture.lambda(),
                Double.NaN,
                "(0.2314 m_A + 0.3635 m_N) / (s_M m_M + s_F m_F)",
                "oxygen balance",
                "air-flow",
                "nitrous-flow",
                "main-fuel-flow",
                "nitrous-fuel-flow",
                "nitrous-fuel-oxygen",
                "main-fuel-oxygen");
        calculated(
                "circuit-ratio",
                "nitrous oxide over nitrous fuel, by mass",
                "r_N",
                QuantityKind.RATIO,
                mixture.nitrousOxidiserFuel(),
                Double.NaN,
                "m_N / m_F",
                "definition",
                "nitrous-flow",
                "nitrous-fuel-flow");
    }

    private void power() {
        sheet(
                "base-power",
                "wheel power of the base pull",
                "P_0",
                QuantityKind.POWER,
                build.basePull().wheelPower(),
                "base-pull.wheel-power");
        calculated(
                "cycle-share",
                "share of the constant-volume cycle",
                "f",
                QuantityKind.RATIO,
                evaluator.model().efficiency().fraction(),
                Double.NaN,
                "solved so that the model gives the base pull's wheel power",
                "calibration on the build's own pull",
                "base-power",
                "volumetric-efficiency",
                "displacement",
                "lambda-main");
        calculated(
                "heat",
                "heat released",
                "Q",
                QuantityKind.POWER,
                peak.heat().total(),
                Double.NaN,
                evaluator.model().combustion().basis() + ", plus 1.864 MJ per kg of nitrous oxide decomposed",
                "Heywood section 4.9; formation enthalpy of nitrous oxide 82.05 kJ/mol",
                "lambda",
                "air-flow",
                "nitrous-flow",
                "main-fuel-flow",
                "nitrous-fuel-flow",
                "main-fuel-heat",
                "nitrous-fuel-heat");
        add(new Entry(
                "nitrous-effectiveness",
                "share of the nitrous heat that works as well as the engine's own",
                "k",
                QuantityKind.RATIO,
                evaluator.model().nitrousEffectiveness(),
                0.1,
                "chosen so that the model meets the trade's 0.8 lb in 10 s per 100 hp; to be replaced by this engine's own pulls",
                "common practice, no source",
                List.of(),
                Standing.COMMON_PRACTICE));
        calculated(
                "indicated",
                "indicated power",
                "P_i",
                QuantityKind.POWER,
                peak.power().indicated(),
                Double.NaN,
                "f (1 - r^(1-g)) (Q_own + k Q_nitrous), less the loss by spark retard",
                "Heywood chapter 5, calibrated",
                "nitrous-effectiveness",
                "heat",
                "cycle-share",
                "compression-ratio");
        calculated(
                "friction",
                "friction power",
                "P_f",
                QuantityKind.POWER,
                peak.power().friction(),
                Double.NaN,
                evaluator.model().friction().basis(),
                evaluator.model().friction().basis(),
                "engine-speed",
                "displacement");
        calculated(
                "exhaust-pressure",
                "pressure before the turbine",
                "p_e",
                QuantityKind.ABSOLUTE_PRESSURE,
                peak.shaft().exhaustPressure(),
                Double.NaN,
                "turbine power equals compressor power",
                "Watson and Janota, Turbocharging the Internal Combustion Engine",
                "air-flow",
                "compressor-outlet");
        calculated(
                "pumping",
                "pumping power",
                "P_p",
                QuantityKind.POWER,
                peak.power().pumping(),
                Double.NaN,
                "(p_e - p_m) V_d N/2",
                "Heywood section 5.4",
                "exhaust-pressure",
                "plenum-pressure",
                "displacement",
                "engine-speed");
        calculated(
                "brake",
                "power at the crankshaft",
                "P_b",
                QuantityKind.POWER,
                peak.power().brake(),
                Double.NaN,
                "P_i - P_f - P_p",
                "definition",
                "indicated",
                "friction",
                "pumping");
        sheet(
                "driveline-loss",
                "driveline loss, proportional part",
                "k",
                QuantityKind.FRACTION,
                build.driveline().proportionalLoss(),
                "driveline.loss");
        calculated(
                "wheel-power",
                "power at the wheels",
                "P_w",
                QuantityKind.POWER,
                peak.wheelPower(),
                wheelUncertainty(),
                "(P_b - drag) (1 - k)",
                "definition",
                "brake",
                "driveline-loss");
        calculated(
                "nitrous-power",
                "of that, from nitrous",
                "",
                QuantityKind.POWER,
                peak.wheelPower() - off.wheelPower(),
                Double.NaN,
                "difference of the same point with the nitrous on and off",
                "definition",
                "wheel-power");
        calculated(
                "peak-pressure",
                "peak cylinder pressure",
                "p_max",
                QuantityKind.ABSOLUTE_PRESSURE,
                peak.cylinder().peakPressure(),
                Double.NaN,
                "closed cycle of one zone: slider-crank, Wiebe burning, heat to the walls",
                "Heywood chapters 9 and 12; Woschni, SAE 670931; burn timing common practice",
                "heat",
                "compression-ratio",
                "plenum-pressure",
                "charge-temperature");
    }

    /** The base pull carries the power without nitrous, the flow model what nitrous adds; the two are independent. */
    private double wheelUncertainty() {
        double base = build.basePull().uncertainty() / build.basePull().wheelPower() * off.wheelPower();
        double added = nitrousError() * (peak.wheelPower() - off.wheelPower());
        return Math.hypot(base, added);
    }

    private void bottle() {
        sheet("charge", "nitrous oxide in the full bottle", "M", QuantityKind.MASS, bottle.charge(), "bottle.charge");
        calculated(
                "bottle-seconds",
                "time under full nitrous from one bottle",
                "t",
                QuantityKind.TIME,
                bottle.seconds(),
                Double.NaN,
                "dU = -m h_out dt with liquid and vapour in equilibrium, until the pressure band or the liquid ends",
                "equilibrium emptying; Zimmerman et al., AIAA 2013-4045, for its known error",
                "charge",
                "bottle-temperature",
                "nitrous-flow");
    }

    private void tradeFigures() {
        double perSecond = peak.nitrous().massFlow() / ((peak.wheelPower() - off.wheelPower()) / 74569.987);
        add(new Entry(
                "trade-nitrous",
                "nitrous oxide in 10 s for each 100 hp at the wheels",
                "",
                QuantityKind.MASS,
                10 * perSecond,
                Double.NaN,
                "m_N over the power it adds; the trade speaks of 0.8 to 1.0 lb at the crankshaft",
                "common practice, no source",
                List.of("nitrous-flow", "nitrous-power"),
                Standing.COMMON_PRACTICE));
    }

    private void sheet(String key, String name, String symbol, QuantityKind kind, double value, String path) {
        Origin origin = build.origin(path).orElse(null);
        if (origin == null) {
            add(new Entry(key, name, symbol, kind, value, Double.NaN, "input", SHEET, List.of(), Standing.ASSUMED));
            return;
        }
        String source =
                origin.file() + " line " + origin.line() + (origin.from().isEmpty() ? "" : ": " + origin.from());
        add(new Entry(
                key,
                name,
                symbol,
                kind,
                value,
                origin.uncertainty(),
                "input, '" + origin.text() + "'",
                source,
                List.of(),
                Standing.ofWords(origin.standing())));
    }

    private void chosen(String key, String name, String symbol, QuantityKind kind, double value) {
        add(new Entry(
                key,
                name,
                symbol,
                kind,
                value,
                Double.NaN,
                "chosen: the split whose closest limit is furthest away",
                "this budget",
                List.of(),
                Standing.CALCULATED));
    }

    private void published(String key, String name, String symbol, QuantityKind kind, double value, String source) {
        add(new Entry(key, name, symbol, kind, value, Double.NaN, "property", source, List.of(), Standing.PUBLISHED));
    }

    private void calculated(
            String key,
            String name,
            String symbol,
            QuantityKind kind,
            double value,
            double uncertainty,
            String basis,
            String source,
            String... inputs) {
        add(new Entry(
                key, name, symbol, kind, value, uncertainty, basis, source, List.of(inputs), Standing.CALCULATED));
    }

    private void add(Entry entry) {
        entries.put(entry.key(), entry);
    }
}
