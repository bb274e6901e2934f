package org.shotledger.build;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.Engine;
import org.shotledger.engine.FrictionModel;
import org.shotledger.engine.MoistAir;
import org.shotledger.nitrous.WetKit;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;
import org.shotledger.wiring.Wiring;

/**
 * One car as its build sheet describes it.
 *
 * @param name what the build is called
 * @param invented true when the figures are made up for a demonstration
 * @param conditions places and weathers by name
 * @param target what the customer asks for
 * @param engine the engine
 * @param fuels the two fuel streams
 * @param tune how the engine is run
 * @param basePull a measured pull without nitrous, on which the model is calibrated
 * @param injection main fuel supply
 * @param turbo turbocharger and charge cooling
 * @param wetKit the wet kit without its jets
 * @param bottle bottle, charge and heater
 * @param driveline driveline
 * @param limits what the builder allows
 * @param friction friction of the engine
 * @param vehicle the car, empty when the sheet does not describe it
 * @param electrical electrical supply, empty when the sheet does not describe it
 * @param controller controller channels, empty when the sheet does not describe them
 * @param wiring loads, signals and sensors, empty when the sheet does not describe them
 * @param origins where each figure comes from, by its path in the sheet, for example {@code "engine.bore"}
 * @param source the text of the sheet and its tables, which {@link #save} and {@link #with} use
 */
public record Build(
        String name,
        boolean invented,
        Map<String, MoistAir> conditions,
        Target target,
        Engine engine,
        FuelStreams fuels,
        Tune tune,
        BasePullSheet basePull,
        Injection injection,
        Turbo turbo,
        WetKit wetKit,
        BottleSheet bottle,
        Driveline driveline,
        BuilderLimits limits,
        FrictionModel friction,
        Optional<Vehicle> vehicle,
        Optional<Electrical> electrical,
        Optional<Controller> controller,
        Optional<Wiring> wiring,
        Map<String, Origin> origins,
        BuildSource source) {

    /** Copies the maps. */
    public Build {
        conditions = Map.copyOf(conditions);
        origins = Collections.unmodifiableMap(new LinkedHashMap<>(origins));
    }

    /**
     * Reads a build sheet.
     *
     * @param file the sheet, or a folder that holds a {@code build.yaml}
     * @return the build
     * @throws SheetException with every problem found in the sheet and its tables
     */
    public static Build load(Path file) {
        return BuildReader.load(file);
    }

    /**
     * Reads a build sheet.
     *
     * @param file the sheet, or a folder that holds a {@code build.yaml}
     * @return the build
     * @throws SheetException with every problem found in the sheet and its tables
     */
    public static Build load(String file) {
        return load(Path.of(file));
    }

    /**
     * Reads a build sheet from its text.
     *
     * @param text the YAML text
     * @param folder the folder in which its tables lie
     * @return the build
     * @throws SheetException with every problem found in the sheet and its tables
     */
    public static Build read(String text, Path folder) {
        return BuildReader.read(text, "build.yaml", folder);
    }

    /**
     * The same build with one value written anew. Everything else, comments included, stays as it is; a figure that is no longer the
     * same is from then on assumed, and says what it was instead of the old one's reason.
     *
     * @param path the value's place in the sheet, for example {@code "wet-kit.fuel.regulator.boost-reference"}
     * @param text the new value as it would be written, for example {@code "1"} or {@code "84.5 mm"}
     * @return the changed build
     * @throws IllegalArgumentException when no such value stands in the sheet
     * @throws SheetException when the changed sheet cannot be used
     */
    public Build with(String path, String text) {
        return source.with(
                path,
                text,
                changed(path, text)
                        .map(was -> new Rewrite.Reason("assumed", "changed from " + was + ", no reason given")));
    }

    /**
     * The same build with one value written anew and the reason of the change, which the ledger then shows.
     *
     * @param path the value's place in the sheet
     * @param text the new value as it would be written
     * @param standing how it is known, as a sheet says it: {@code measured}, {@code published}, {@code calculated},
     *     {@code common practice} or {@code assumed}
     * @param reason why, for example {@code "measured anew after the pull of 4 July"}
     * @return the changed build
     * @throws IllegalArgumentException when no such value stands in the sheet
     * @throws SheetException when the changed sheet cannot be used
     */
    public Build with(String path, String text, String standing, String reason) {
        return source.with(path, text, changed(path, text).map(was -> new Rewrite.Reason(standing, reason)));
    }

    /** The figure that stands at a place, when another one is to stand there; words and tables have no reason of their own. */
    private Optional<String> changed(String path, String text) {
        return origin(path)
                .filter(old -> old.kind() != null && old.line() > 0 && !old.means(text))
                .map(Origin::text);
    }

    /**
     * The same car with parts that are not as the sheet says, for a question the sheet cannot ask. The text of the sheet and the
     * origins stay those of the sound car.
     *
     * @param fuels the fuels
     * @param tune the tune
     * @param wetKit the wet kit
     * @return the changed build
     */
    public Build withParts(FuelStreams fuels, Tune tune, WetKit wetKit) {
        return new Build(
                name,
                invented,
                conditions,
                target,
                engine,
                fuels,
                tune,
                basePull,
                injection,
                turbo,
                wetKit,
                bottle,
                driveline,
                limits,
                friction,
                vehicle,
                electrical,
                controller,
                wiring,
                origins,
                source);
    }

    /**
     * Writes the sheet and its tables, each file whole or not at all. Comments, reasons and digits stay as they were
     * read.
     *
     * @param file the sheet to write; its tables go into the same folder
     */
    public void save(Path file) {
        source.save(file);
    }

    /**
     * What was renamed or converted because the sheet is of an older format.
     *
     * @return the notices with their lines; empty for a sheet of the current format
     */
    public List<Problem> notices() {
        return source.notices();
    }

    /**
     * What differs between two builds, in physical terms: {@code 84.5 mm} and {@code 3.3268 in} do not.
     *
     * @param other the build to compare with
     * @return the differences in the order of this sheet
     */
    public List<Difference> differences(Build other) {
        return Difference.between(this, other);
    }

    /**
     * The air at a named place.
     *
     * @param named name of the conditions in the sheet
     * @return pressure, temperature and humidity
     * @throws IllegalArgumentException when the sheet has no conditions of that name; the message lists those it has
     */
    public MoistAir air(String named) {
        MoistAir air = conditions.get(named);
        if (air == null) {
            throw new IllegalArgumentException("The build sheet of " + name + " has no conditions named '" + named
                    + "'; it has " + conditions.keySet().stream().sorted().toList() + ".");
        }
        return air;
    }

    /**
     * Where a figure comes from.
     *
     * @param path its place in the sheet, for example {@code "engine.bore"}
     * @return the origin, or empty when the sheet does not state the figure
     */
    public Optional<Origin> origin(String path) {
        return Optional.ofNullable(origins.get(path));
    }

    /** The build in one line, and a line for each notice. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(name).append(invented ? ", an invented build: " : ": ");
        text.append(origins.size()).append(" values from ").append(source.file());
        notices().forEach(notice -> text.append("\n").append(notice));
        return text.toString();
    }
}
