package org.shotledger.commission;

import static org.shotledger.commission.StartLine.Stage.BEFORE_POWER;
import static org.shotledger.commission.StartLine.Stage.FIRST_SHOT;
import static org.shotledger.commission.StartLine.Stage.FIRST_START;
import static org.shotledger.commission.StartLine.Stage.FLOW;
import static org.shotledger.commission.StartLine.Stage.KEY_ON;
import static org.shotledger.commission.StartLine.Stage.NITROUS;
import static org.shotledger.commission.StartLine.Stage.PRIME;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.car.BasePull;
import org.shotledger.commission.StartLine.Expected;
import org.shotledger.commission.StartLine.Stage;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;
import org.shotledger.supply.Regulator;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.Cable;
import org.shotledger.wiring.CheckValue;
import org.shotledger.wiring.PinPlacement;
import org.shotledger.wiring.SafetyFinding;
import org.shotledger.wiring.SensorInput;

/**
 * The ordered list of a first start and a first shot, made from a plan: what is done, what must be seen, what stops it.
 *
 * @param lines in the order in which they are done
 */
public record StartList(List<StartLine> lines) {
    private static final String CLOSED = "Bottle valve closed, bottle hose off the bottle.";
    private static final String FUEL = "Fire extinguisher at hand, no flame, no bare lamp; fuel burns without a sign.";
    private static final String COLD =
            "Gloves and goggles: what escapes freezes skin. Doors open: it displaces air and feeds any fire. Never a flame near the bottle.";
    /** Loss of pressure in a closed line that a valve seat may show, Pa in {@link #LEAK_TIME}: common practice, no source. */
    private static final double LEAK = 2e5;

    /** How long a closed line is watched, s: common practice, no source. */
    private static final double LEAK_TIME = 600;
    /** Time of a flow test of the fuel, s: common practice, no source. */
    private static final double TEST_TIME = 10;
    /** How near a flow test must come, share: common practice, no source. */
    private static final double TEST_BAND = 0.05;

    public StartList {
        lines = List.copyOf(lines);
    }

    /**
     * The list of a plan.
     *
     * @param plan the plan
     * @return the list; without the lines on nitrous where the plan uses none
     */
    public static StartList of(Plan plan) {
        List<StartLine> lines = new ArrayList<>();
        SensorChecks checks = SensorChecks.of(plan.job(), plan.setup());
        beforePower(plan, lines);
        keyOn(checks, lines);
        prime(plan, checks, lines);
        firstStart(plan, checks, lines);
        plan.setup().jets().ifPresent(jets -> {
            nitrous(plan, checks, lines);
            flow(plan, jets, lines);
            StepUp.of(plan).shots().stream().findFirst().ifPresent(shot -> firstShot(shot, lines));
        });
        return new StartList(lines);
    }

    private static void beforePower(Plan plan, List<StartLine> lines) {
        plan.car().wiring().ifPresent(wiring -> {
            for (PinPlacement missing : wiring.pins().missing()) {
                lines.add(new StartLine(
                        BEFORE_POWER,
                        "Give " + missing.signal().name() + " a pin",
                        List.of(),
                        "It has none (" + missing.why() + "): the nitrous stays off the car until it has one.",
                        CLOSED));
            }
            wiring.safety()
                    .ifPresent(chain -> chain.findings().stream()
                            .filter(finding -> !finding.holds())
                            .forEach(finding -> lines.add(gap(finding))));
            for (Cable cable : wiring.cables()) {
                lines.add(new StartLine(
                        BEFORE_POWER,
                        "Fuse and wire of " + cable.load().name() + ": "
                                + cable.wire().words() + ", pulled at both ends, no bare strand",
                        List.of(new Expected("fuse", cable.fuse().rating(), Double.NaN, QuantityKind.CURRENT)),
                        "Another fuse, a thinner wire, a wire that moves in its terminal.",
                        "Battery off while wires are worked on."));
            }
        });
        lines.add(new StartLine(
                BEFORE_POWER,
                "Relief disc, vent line to the outside, bottle brackets and the bottle's test date looked at",
                List.of(new Expected(
                        "service pressure of the marking",
                        plan.car().bottle().servicePressure(),
                        Double.NaN,
                        QuantityKind.ABSOLUTE_PRESSURE)),
                "A missing vent, a loose bracket, a test date that has passed: to a licensed filling station with it.",
                CLOSED));
    }

    private static StartLine gap(SafetyFinding finding) {
        return new StartLine(
                BEFORE_POWER,
                "Mend the safety chain: " + finding.rule(),
                List.of(),
                "It does not hold (" + finding.because() + ").",
                "What cuts the nitrous must not need the controller to be in its right mind.");
    }

    private static void keyOn(SensorChecks checks, List<StartLine> lines) {
        lines.add(new StartLine(
                KEY_ON,
                "Key on, engine off, everything unarmed; each added fuse felt after a minute",
                List.of(),
                "A fuse that opens or warms, a relay that clicks by itself, a valve that clicks: key off, find it.",
                CLOSED));
        state(checks, CheckValue.State.ENGINE_OFF, KEY_ON, CLOSED, lines);
        state(checks, CheckValue.State.PEDAL_DOWN, KEY_ON, CLOSED, lines);
    }

    private static void state(
            SensorChecks checks, CheckValue.State state, Stage stage, String caution, List<StartLine> lines) {
        for (CheckValue value : checks.values()) {
            if (value.state() == state) {
                SensorInput input = checks.input(value.sensor());
                lines.add(new StartLine(
                        stage,
                        "Read " + value.sensor() + " (" + state.words() + ")",
                        List.of(new Expected(
                                value.sensor(),
                                value.expected(),
                                value.halfWidth(),
                                input.sensor().kind())),
                        "A reading outside its band: " + value.why() + ".",
                        caution));
            }
        }
    }

    private static void prime(Plan plan, SensorChecks checks, List<StartLine> lines) {
        lines.add(new StartLine(
                PRIME,
                "Prime the main fuel alone; every joint wiped and watched for five minutes with paper",
                List.of(pressure("rail pressure", plan.setup().mainRegulator())),
                "A drop on the paper, a smell, a pressure that falls quickly with the pump off.",
                FUEL));
        if (plan.setup().jets().isPresent() && plan.setup().ownRegulator().isEmpty()) {
            lines.add(new StartLine(
                    PRIME,
                    "The same rail up to the fuel valve of the nitrous system, its valve closed; every joint as before",
                    List.of(pressure("pressure before its valve", plan.setup().mainRegulator())),
                    "A drop on the paper; fuel at a nozzle, which means its valve leaks.",
                    FUEL + " Fuel in the intake before a start: let it dry, take the plugs out."));
        } else if (plan.setup().jets().isPresent()) {
            lines.add(new StartLine(
                    PRIME,
                    "Prime the nitrous system's fuel alone, its valve closed; every joint as before",
                    List.of(pressure("pressure before its valve", plan.setup().nitrousRegulator())),
                    "A drop on the paper; fuel at a nozzle, which means its valve leaks.",
                    FUEL + " Fuel in the intake before a start: let it dry, take the plugs out."));
        }
        state(checks, CheckValue.State.PRIME, PRIME, FUEL, lines);
    }

    private static Expected pressure(String what, Regulator regulator) {
        return new Expected(
                what, regulator.basePressure(), 0.03 * regulator.basePressure(), QuantityKind.GAUGE_PRESSURE);
    }

    private static void firstStart(Plan plan, SensorChecks checks, List<StartLine> lines) {
        lines.add(new StartLine(
                FIRST_START,
                "First start on the base tune, nitrous unarmed; oil pressure within seconds, then warm up without boost",
                List.of(),
                "No oil pressure after five seconds, a knock, a leak, a mixture that nobody asked for.",
                CLOSED + " " + FUEL));
        state(checks, CheckValue.State.WARM_IDLE, FIRST_START, CLOSED, lines);
        lines.add(new StartLine(
                FIRST_START,
                "A pull on boost alone at the base pull's boost, log read before anything else",
                List.of(
                        new Expected("boost, at most", baseBoost(plan), Double.NaN, QuantityKind.GAUGE_PRESSURE),
                        new Expected("lambda", plan.setup().mixture(), 0.02, QuantityKind.RATIO)),
                "Leaner or richer than the band, knock, a fuel pressure that does not follow.",
                "Closed course or dynamometer only."));
    }

    private static double baseBoost(Plan plan) {
        return plan.car().basePull().points().stream()
                .mapToDouble(BasePull.Point::gaugePressure)
                .max()
                .orElse(Double.NaN);
    }

    private static void nitrous(Plan plan, SensorChecks checks, List<StartLine> lines) {
        Setup setup = plan.setup();
        double now = Math.min(checks.air(), NitrousOxide.CRITICAL_TEMPERATURE - 1);
        lines.add(new StartLine(
                NITROUS,
                "Weigh the bottle, full and tare",
                List.of(new Expected(
                        "nitrous oxide by the scale", setup.bottle().charge(), 0.1, QuantityKind.MASS)),
                "More than that: an overfilled bottle bursts its disc as it warms; have it corrected where it was filled.",
                COLD));
        lines.add(new StartLine(
                NITROUS,
                "Engine off, key off: open the bottle slowly, soap every joint up to the solenoid",
                List.of(new Expected(
                        "pressure at the temperature of the air",
                        NitrousOxide.saturationPressure(now),
                        1.5e5,
                        QuantityKind.ABSOLUTE_PRESSURE)),
                "A bubble that grows, a hiss, frost on a joint. Close, let off to the outside, mend, begin anew.",
                COLD));
        lines.add(new StartLine(
                NITROUS,
                "Close the bottle with the line full, wait ten minutes: leak-down",
                List.of(new Expected(
                        "fall of pressure in " + Math.round(LEAK_TIME / 60) + " minutes, at most",
                        LEAK,
                        Double.NaN,
                        QuantityKind.PRESSURE_DIFFERENCE)),
                "More: the solenoid or a joint leaks. A leaking solenoid fills the intake while the car stands: it blows the manifold at the next start.",
                COLD + " Let the line off before the engine is cranked."));
    }

    private static void flow(Plan plan, JetPair jets, List<StartLine> lines) {
        Solenoid nitrous = plan.car().nitrous().nitrous().solenoid();
        Solenoid fuel = plan.car().nitrous().fuel().solenoid();
        lines.add(new StartLine(
                FLOW,
                "Bottle closed, line empty: each valve switched alone, listened to and logged",
                List.of(
                        new Expected("nitrous valve opens in", nitrous.openingDelay(), Double.NaN, QuantityKind.TIME),
                        new Expected("fuel valve opens in", fuel.openingDelay(), Double.NaN, QuantityKind.TIME)),
                "A valve that does not click, both that click where one was asked for, one that stays open.",
                CLOSED));
        lines.add(new StartLine(
                FLOW,
                "Each cut tried for itself with the valves clicking: master switch, arming switch, throttle, fuel pressure",
                List.of(),
                "A cut after which a valve still clicks.",
                CLOSED));
        OperatingPoint at = plan.stated().strongest().orElseThrow();
        double cold = plan.car()
                .nitrous()
                .fuelFlow(
                        fuelDensity(plan),
                        jets,
                        new org.shotledger.nitrous.FuelCircuit.Pressures(
                                at.air().pressure(),
                                at.air().pressure(),
                                at.air().pressure()),
                        plan.setup().nitrousRegulator(),
                        plan.stated().at().voltage())
                .massFlow();
        int nozzles = plan.car().nitrous().nozzles();
        lines.add(new StartLine(
                FLOW,
                "Fuel flow test: nozzles out of the engine, each into its own glass for " + Math.round(TEST_TIME)
                        + " s at running voltage",
                List.of(
                        new Expected(
                                "fuel from all nozzles",
                                cold * TEST_TIME,
                                TEST_BAND * cold * TEST_TIME,
                                QuantityKind.MASS),
                        new Expected(
                                "fuel from each",
                                cold * TEST_TIME / nozzles,
                                TEST_BAND * cold * TEST_TIME / nozzles,
                                QuantityKind.MASS)),
                "A total outside the band, or one glass that differs from the others by more than a twentieth: a jet is foul or another size.",
                FUEL + " Coils and ignition off."));
        lines.add(new StartLine(
                FLOW,
                "Jets read once more by pin gauge: nitrous and fuel side of every nozzle",
                List.of(
                        new Expected("nitrous jet", jets.nitrousBore(), Double.NaN, QuantityKind.BORE),
                        new Expected("fuel jet", jets.fuelBore(), Double.NaN, QuantityKind.BORE)),
                "Sides exchanged: a lean engine, pistons lost within seconds.",
                CLOSED));
        lines.add(new StartLine(
                FLOW,
                "Purge to the outside, engine idling, away from people and from the intake",
                List.of(),
                "No white plume (vapour, not liquid: siphon or bottle the wrong way up), or one that does not stop.",
                COLD));
    }

    private static double fuelDensity(Plan plan) {
        return plan.car().fuels().nitrous().density(plan.car().fuels().temperature());
    }

    private static void firstShot(Shot shot, List<StartLine> lines) {
        JetPair jets = shot.setup().jets().orElseThrow();
        lines.add(new StartLine(
                FIRST_SHOT,
                "Jets of the lowest step into every nozzle; the large ones stay in the drawer",
                List.of(
                        new Expected("nitrous jet", jets.nitrousBore(), Double.NaN, QuantityKind.BORE),
                        new Expected("fuel jet", jets.fuelBore(), Double.NaN, QuantityKind.BORE)),
                "Any other pair.",
                COLD));
        lines.add(new StartLine(
                FIRST_SHOT,
                "Bottle to its temperature, by a heater with its own switch",
                List.of(
                        new Expected(
                                "bottle temperature",
                                shot.setup().bottle().startTemperature(),
                                2,
                                QuantityKind.TEMPERATURE),
                        new Expected(
                                "bottle pressure",
                                NitrousOxide.saturationPressure(
                                        shot.setup().bottle().startTemperature()),
                                3e5,
                                QuantityKind.ABSOLUTE_PRESSURE)),
                "Pressure above what the temperature says: the bottle is full of liquid. Cool it, let the filler correct it.",
                COLD));
        lines.add(new StartLine(
                FIRST_SHOT,
                "Spark retarded while the nitrous flows, arming conditions entered and read back, a log of every channel running",
                List.of(
                        new Expected("retard", shot.setup().retard(), Double.NaN, QuantityKind.CRANK_ANGLE),
                        new Expected("opens from", shot.setup().arming().rpmLow(), Double.NaN, QuantityKind.ROTATION),
                        new Expected("closes at", shot.setup().arming().rpmHigh(), Double.NaN, QuantityKind.ROTATION)),
                "A channel that is not in the log.",
                "Closed course or dynamometer only."));
        double middle = (shot.lowPower() + shot.highPower()) / 2;
        lines.add(new StartLine(
                FIRST_SHOT,
                "First shot: one second, throttle fully open, then closed; log read before the next",
                List.of(
                        new Expected(
                                "wheel power", middle, (shot.highPower() - shot.lowPower()) / 2, QuantityKind.POWER),
                        new Expected("lambda", shot.point().lambda(), 0.03, QuantityKind.RATIO),
                        new Expected(
                                "boost",
                                shot.point().gaugePressure(),
                                shot.setup().boost().tolerance(),
                                QuantityKind.GAUGE_PRESSURE)),
                "Any figure outside its band, a cylinder that differs, knock, a fuel pressure that falls: stop, find it, begin anew.",
                "An estimate, to be proven in small steps. " + COLD));
    }
}
