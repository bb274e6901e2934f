package org.shotledger.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.engine.MoistAir;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.setup.Case;
import org.shotledger.setup.DaySheet;
import org.shotledger.setup.Setup;
import org.shotledger.setup.Target;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;
import org.shotledger.workshop.Workshop;

/**
 * One job as its sheet describes it: the car, what is asked, what is set, and the cases in which it must hold.
 *
 * @param car what is built, calibrated on its base pull
 * @param target what the customer asks for
 * @param setup what is set; with the boost ceiling and no jets where the sheet has no section {@code setup}
 * @param day what is done with the bottles over a day
 * @param cases the cases in which a plan must hold, that of the target first
 * @param places weathers and places by name
 * @param workshop what the workshop writes down besides: track, readings of the sensors, parts
 * @param source the text of the sheet and its tables, which {@link #save} and {@link #with} use
 */
public record Job(
        Car car,
        Target target,
        Setup setup,
        DaySheet day,
        List<Case> cases,
        Map<String, MoistAir> places,
        Workshop workshop,
        JobSource source) {

    public Job {
        cases = List.copyOf(cases);
        places = Map.copyOf(places);
    }

    /**
     * Reads a job sheet.
     *
     * @param file the sheet, or a folder that holds a {@code job.yaml}
     * @return the job
     * @throws SheetException with every problem found in the sheet and its tables
     */
    public static Job load(Path file) {
        return JobReader.load(file);
    }

    /**
     * Reads a job sheet.
     *
     * @param file the sheet, or a folder that holds a {@code job.yaml}
     * @return the job
     * @throws SheetException with every problem found in the sheet and its tables
     */
    public static Job load(String file) {
        return load(Path.of(file));
    }

    /**
     * Reads a job sheet from its text.
     *
     * @param text the YAML text
     * @param folder the folder in which its tables lie
     * @return the job
     * @throws SheetException with every problem found in the sheet and its tables
     */
    public static Job read(String text, Path folder) {
        return JobReader.read(text, JobReader.USUAL_NAME, folder, Optional.empty());
    }

    /**
     * Name of the job.
     *
     * @return that of its car
     */
    public String name() {
        return car.name();
    }

    /**
     * The flow tests of the sheet and what each told of the jets.
     *
     * @return in the order of the sheet; none where nobody has tested the jets
     */
    public List<FlowTested> flowTests() {
        return car.nitrous().tests();
    }

    /**
     * The case of the target itself.
     *
     * @return the first case
     */
    public Case stated() {
        return cases.get(0);
    }

    /**
     * A case in a place of the sheet.
     *
     * @param name name of a must-hold case, or of conditions in the sheet, for example {@code "event"}
     * @return the case; for conditions with the sheet's fuel and voltage and the bottle as charged
     * @throws IllegalArgumentException when there is neither; the message lists those there are
     */
    public Case caseNamed(String name) {
        return cases.stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseGet(() -> Case.of(name, air(name), car.injection().voltage()));
    }

    /**
     * The same job with another target.
     *
     * @param other what is asked
     * @return the changed job; its setup has the passes of the target
     */
    public Job with(Target other) {
        return new Job(
                car,
                other,
                setup.withPasses(new org.shotledger.setup.PassPlan(other.passes(), other.passSeconds())),
                day,
                cases,
                places,
                workshop,
                source);
    }

    /**
     * The same job with another car.
     *
     * @param other what is built
     * @return the changed job
     */
    public Job with(Car other) {
        return new Job(other, target, setup, day, cases, places, workshop, source);
    }

    /**
     * The same job with another setup.
     *
     * @param other what is set
     * @return the changed job
     */
    public Job with(Setup other) {
        return new Job(car, target, other, day, cases, places, workshop, source);
    }

    /**
     * The same job with another day.
     *
     * @param other what is done with the bottles
     * @return the changed job
     */
    public Job with(DaySheet other) {
        return new Job(car, target, setup, other, cases, places, workshop, source);
    }

    /**
     * The same job with other notes of the workshop.
     *
     * @param other track, readings and parts
     * @return the changed job
     */
    public Job with(Workshop other) {
        return new Job(car, target, setup, day, cases, places, other, source);
    }

    /**
     * The same job with other cases.
     *
     * @param other the cases in which a plan must hold, that of the target first
     * @return the changed job
     */
    public Job withCases(List<Case> other) {
        return new Job(car, target, setup, day, other, places, workshop, source);
    }

    /**
     * The same job with one value written anew. Everything else, comments included, stays as it is; a figure that is no longer the
     * same is from then on assumed, and says what it was instead of the old one's reason.
     *
     * @param path the value's place in the sheet, for example {@code "nitrous-system.fuel.regulator.boost-reference"}
     * @param text the new value as it would be written, for example {@code "1"} or {@code "84.5 mm"}
     * @return the changed job
     * @throws IllegalArgumentException when no such value stands in the sheet
     * @throws SheetException when the changed sheet cannot be used
     */
    public Job with(String path, String text) {
        return read(source.with(
                path,
                text,
                changed(path, text)
                        .map(was -> new Rewrite.Reason("assumed", "changed from " + was + ", " + Rewrite.NO_REASON))));
    }

    /**
     * The same job with one value written anew and the reason of the change, which the ledger then shows.
     *
     * @param path the value's place in the sheet
     * @param text the new value as it would be written
     * @param provenance how it is known, as a sheet says it: {@code measured}, {@code published}, {@code calculated},
     *     {@code common practice}, {@code estimated} or {@code assumed}
     * @param reason why, for example {@code "measured anew after the pull of 4 July"}
     * @return the changed job
     * @throws IllegalArgumentException when no such value stands in the sheet
     * @throws SheetException when the changed sheet cannot be used
     */
    public Job with(String path, String text, String provenance, String reason) {
        return read(source.with(path, text, changed(path, text).map(was -> new Rewrite.Reason(provenance, reason))));
    }

    /**
     * The same job with one value stated, whether or not it stood in the sheet before: added as the first of its section where it did
     * not.
     *
     * @param path the value's place in the sheet; its section stands there
     * @param text the value as it would be written
     * @param provenance how it is known, as in {@link #with(String, String, String, String)}
     * @param reason why
     * @return the changed job
     * @throws IllegalArgumentException when its section does not stand in the sheet
     * @throws SheetException when the changed sheet cannot be used
     */
    public Job stating(String path, String text, String provenance, String reason) {
        return read(source.stating(path, text, new Rewrite.Reason(provenance, reason)));
    }

    /**
     * The same job with a section its sheet does not have yet, for example the flow tests that were made since.
     *
     * @param section the section as it would be written at the end of the sheet, for example
     *     {@code "flow-tests:\n  first:\n    kind: nitrous\n ..."}
     * @return the changed job
     * @throws SheetException when the sheet has the section already, or the changed sheet cannot be used
     */
    public Job adding(String section) {
        return read(source.adding(section));
    }

    /** Another text of the same sheet: its cycles are mostly those of this engine and fuels. */
    private Job read(String changed) {
        return JobReader.read(
                changed, source.file(), source.folder(), Optional.of(car.model().cycles()));
    }

    /** The figure that stands at a place, when another one is to stand there; words and tables have no reason of their own. */
    private Optional<String> changed(String path, String text) {
        return car.origin(path)
                .filter(old -> old.kind() != null && old.line() > 0 && !old.means(text))
                .map(Origin::text);
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
     * What was renamed or converted because the sheet is of an older format, and flow tests that do not go with what was known before.
     *
     * @return the notices with their lines; empty when there is nothing to say
     */
    public List<Problem> notices() {
        return source.notices();
    }

    /**
     * What the sheet states that can be, but seldom is: figures outside their usual range, and figures that do not go together.
     *
     * @return one sentence each with its line; empty when there is nothing of the kind, or the sheet says that it is meant
     */
    public List<Problem> unusual() {
        return Unusual.of(this);
    }

    /**
     * What differs between two jobs, in physical terms: {@code 84.5 mm} and {@code 3.3268 in} do not.
     *
     * @param other the job to compare with
     * @return the differences in the order of this sheet
     */
    public List<SheetDifference> differences(Job other) {
        return SheetDifference.between(this, other);
    }

    /**
     * The air at a named place.
     *
     * @param named name of the conditions in the sheet
     * @return pressure, temperature and humidity
     * @throws IllegalArgumentException when the sheet has no conditions of that name; the message lists those it has
     */
    public MoistAir air(String named) {
        MoistAir air = places.get(named);
        if (air == null) {
            throw new IllegalArgumentException("The sheet of " + name() + " has no conditions named '" + named
                    + "'; it has " + places.keySet().stream().sorted().toList() + ".");
        }
        return air;
    }

    /** The job in one line, and a line for each notice. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(name()).append(car.invented() ? ", an invented job: " : ": ");
        text.append(car.origins().size()).append(" values from ").append(source.file());
        notices().forEach(notice -> text.append("\n").append(notice));
        return text.toString();
    }
}
