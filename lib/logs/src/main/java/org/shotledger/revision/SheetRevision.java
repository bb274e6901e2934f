package org.shotledger.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.shotledger.car.Car;
import org.shotledger.car.SheetPaths;
import org.shotledger.causes.Cause;
import org.shotledger.causes.Causes;
import org.shotledger.causes.Suspect;
import org.shotledger.curve.Bracket;
import org.shotledger.flow.FlowBand;
import org.shotledger.job.Job;
import org.shotledger.job.SheetDifference;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.Setup;

/**
 * Findings of a log that a person has accepted, as a revision of the job's sheet. Nothing is written: {@link #differences()} shows what
 * would change, {@link #after()} is the changed job to plan anew and, when it is right, to save.
 *
 * @param log the log
 * @param before the job as it was
 * @param after the job with the accepted findings, each "measured, log of ..."
 * @param notes what of the findings no sheet can hold, and what to do with it
 */
public record SheetRevision(String log, Job before, Job after, List<String> notes) {
    /** What a sheet takes as a factor on jets. */
    private static final double LEAST_FACTOR = 0.3;

    /** Largest factor on a flow that a log may put into a sheet: our choice; beyond it something else is wrong. */
    private static final double MOST_FACTOR = 2;

    private static final double ROOT3 = Math.sqrt(3);

    public SheetRevision {
        notes = List.copyOf(notes);
    }

    /**
     * Takes findings over.
     *
     * @param job the job
     * @param run the setup that was run
     * @param causes what its log differs by
     * @param accepted the causes a person has accepted; each must be among the suspects
     * @return the revision; equal to the job where nothing is accepted
     * @throws IllegalArgumentException when a cause is not among the suspects of the log
     */
    public static SheetRevision of(Job job, RunSetup run, Causes causes, List<Cause> accepted) {
        Job after = job;
        List<String> notes = new ArrayList<>();
        for (Cause cause : accepted) {
            Suspect suspect = causes.suspect(cause)
                    .orElseThrow(() -> new IllegalArgumentException("The log " + causes.file() + " does not show \""
                            + cause.words() + "\"; accept one of: "
                            + causes.suspects().stream()
                                    .map(s -> s.cause().words())
                                    .collect(Collectors.joining(", "))
                            + "."));
            Optional<Value> value = value(after, run, suspect);
            if (value.isPresent()) {
                after = after.stating(
                        value.get().path(),
                        value.get().text(),
                        "measured",
                        "log of " + causes.file() + ", " + run.name());
            } else {
                notes.add(SensorCorrection.of(causes.log(), suspect)
                        .map(SensorCorrection::sentence)
                        .orElse("No value of the sheet holds \"" + cause.words()
                                + "\": it is to be put right on the car, not written down. First "
                                + cause.measurement() + "."));
            }
        }
        return new SheetRevision(causes.file(), job, after, notes);
    }

    /** A value of the sheet. */
    private record Value(String path, String text) {}

    private static Optional<Value> value(Job job, RunSetup run, Suspect s) {
        Car car = job.car();
        Setup setup = run.outcome().setup();
        return switch (s.cause()) {
            case FUEL_JETS -> Optional.of(fuel(car, run, s));
            case NITROUS_JETS -> Optional.of(nitrous(car, run, s));
            case NITROUS_FUEL_PRESSURE ->
                Optional.of(bar(
                        SheetPaths.NITROUS_FUEL_PRESSURE,
                        setup.nitrousRegulator().basePressure() + s.size(),
                        s));
            case NITROUS_FUEL_REFERENCE ->
                Optional.of(number(
                        SheetPaths.NITROUS_FUEL_REFERENCE,
                        setup.nitrousRegulator().boostReference() * (1 - s.size())));
            case MAIN_FUEL_PRESSURE ->
                Optional.of(bar(SheetPaths.MAIN_PRESSURE, setup.mainRegulator().basePressure() + s.size(), s));
            case MAIN_FUEL_REFERENCE ->
                Optional.of(
                        number(SheetPaths.MAIN_REFERENCE, setup.mainRegulator().boostReference() * (1 - s.size())));
            case ENGINE_WORK ->
                car.origin(SheetPaths.BASE_POWER)
                        .map(o -> new Value(
                                SheetPaths.BASE_POWER,
                                String.format(
                                        Locale.ROOT,
                                        "%.1f kW +/- %.1f kW",
                                        o.value() * (1 + s.size()) / 1e3,
                                        ROOT3 * o.value() * s.standard() / 1e3)));
            case NITROUS_WORK -> Optional.of(nitrousWork(car, s));
            case FUEL_CONTENT ->
                car.fuels()
                        .blend()
                        .map(b -> new Value(
                                SheetPaths.ETHANOL,
                                String.format(
                                        Locale.ROOT,
                                        "%.1f %% +/- %.1f %%",
                                        100 * (run.outcome().at().ethanol().orElse(b.ethanol()) + s.size()),
                                        100 * ROOT3 * s.standard())));
            case SUPPLY_VOLTAGE ->
                Optional.of(new Value(
                        SheetPaths.VOLTAGE,
                        String.format(Locale.ROOT, "%.2f V", run.outcome().at().voltage() + s.size())));
            default -> Optional.empty();
        };
    }

    private static Value nitrousWork(Car car, Suspect s) {
        double share = car.model().nitrous().value();
        return new Value(
                SheetPaths.NITROUS_WORK,
                String.format(
                        Locale.ROOT,
                        "%.1f %% +/- %.1f %%",
                        100 * share * (1 + s.size()),
                        100 * ROOT3 * share * s.standard()));
    }

    private static Value number(String path, double value) {
        return new Value(path, String.format(Locale.ROOT, "%.3f", Math.max(0, value)));
    }

    private static Value bar(String path, double pascals, Suspect s) {
        return new Value(
                path, String.format(Locale.ROOT, "%.3f bar +/- %.3f bar", pascals / 1e5, ROOT3 * s.standard() / 1e5));
    }

    private static Value factor(String path, double factor, Suspect s) {
        return new Value(
                path,
                String.format(Locale.ROOT, "%.4f +/- %.4f", factor, ROOT3 * factor * s.standard() / (1 + s.size())));
    }

    /** The factor on the jets with which the whole circuit, its solenoid and passages included, flows as the log shows. */
    private static Value fuel(Car car, RunSetup run, Suspect s) {
        FuelCircuit circuit = car.nitrous().fuel();
        JetPair jets = run.outcome().setup().jets().orElseThrow();
        double wanted = (1 + s.size()) * flow(car, run, circuit, jets);
        double factor = factorFor(
                f -> flow(car, run, circuit.withJet(circuit.jet().withMeasured(FlowBand.EXACT.times(f))), jets),
                wanted);
        return factor("nitrous-system.fuel.jet-flow-factor", factor, s);
    }

    private static double flow(Car car, RunSetup run, FuelCircuit circuit, JetPair jets) {
        double ambient = run.outcome().at().air().pressure();
        double plenum = ambient
                + run.outcome()
                        .setup()
                        .boost()
                        .armed()
                        .at(run.outcome().setup().arming().rpmHigh());
        return car.nitrous()
                .withFuel(circuit)
                .fuelFlow(
                        car.fuels().nitrous().density(car.fuels().temperature()),
                        jets,
                        new FuelCircuit.Pressures(ambient, plenum, plenum),
                        run.outcome().setup().nitrousRegulator(),
                        run.outcome().at().voltage())
                .massFlow();
    }

    private static Value nitrous(Car car, RunSetup run, Suspect s) {
        JetPair jets = run.outcome().setup().jets().orElseThrow();
        var bottle = run.outcome().strongest().orElseThrow().bottle();
        double plenum = run.outcome().strongest().orElseThrow().plenumPressure();
        double wanted = (1 + s.size()) * car.nitrous().nitrousPath(jets).massFlow(bottle, plenum);
        var flow = car.nitrous().nitrousFlowOfFactor(jets.nitrousBore(), bottle, plenum);
        return factor("nitrous-system.nitrous.jet-flow-factor", factorFor(flow, wanted), s);
    }

    /** The factor at which a flow that rises with it is the wanted one. */
    private static double factorFor(DoubleUnaryOperator flow, double wanted) {
        if (!(flow.applyAsDouble(LEAST_FACTOR) <= wanted && wanted <= flow.applyAsDouble(MOST_FACTOR))) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "No factor on the jets from %.1f to %.1f gives the flow that the log shows: the jets are not what differs; accept"
                            + " another cause.",
                    LEAST_FACTOR,
                    MOST_FACTOR));
        }
        return Bracket.root(f -> flow.applyAsDouble(f) - wanted, LEAST_FACTOR, MOST_FACTOR, 1e-9);
    }

    /**
     * What the revision changes.
     *
     * @return the differences of the two sheets, with the reason of each; empty when nothing changes
     */
    public List<SheetDifference> differences() {
        return before.differences(after);
    }

    @Override
    public String toString() {
        List<String> lines = new ArrayList<>();
        differences().forEach(d -> lines.add(d.toString()));
        lines.addAll(notes);
        return lines.isEmpty() ? "Nothing is changed." : String.join("\n", lines);
    }
}
