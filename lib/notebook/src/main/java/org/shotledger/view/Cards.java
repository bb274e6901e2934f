package org.shotledger.view;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shotledger.commission.JobItem;
import org.shotledger.commission.JobList;
import org.shotledger.commission.StartLine;
import org.shotledger.commission.StartList;
import org.shotledger.document.Cautions;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Reference;
import org.shotledger.document.Section;
import org.shotledger.plan.Plan;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.track.TrackCard;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.wiring.Cable;
import org.shotledger.wiring.SafetyFinding;
import org.shotledger.wiring.Wiring;
import org.shotledger.workshop.ListedPart;

/** One page each for who enters, who builds and who runs: what is set, what is checked, what to mind. */
final class Cards {
    /** Rows that leave a card on its page; the rest stands in the pages behind. */
    private static final int LOADS = 12;

    private static final int CHECKS = 5;
    private static final int WEIGHTS = 8;

    private Cards() {}

    static void write(DocumentContent.Builder builder, Evidence found, UnitSystem units) {
        tuner(builder, found);
        mechanic(builder, found, units);
        track(builder, found);
    }

    private static void tuner(DocumentContent.Builder builder, Evidence found) {
        Plan plan = found.plan();
        SetupTables.across(plan.setup()).forEach(table -> builder.inBoth(Section.TUNER, table));
        builder.inBoth(Section.TUNER, SetupTables.entered(plan.setup()));
        builder.inBoth(Section.TUNER, SetupTables.fitted(plan.setup()));
        found.faults().ifPresent(faults -> builder.rows(Section.TUNER, RiskTables.of(faults.arming())));
        found.stepUp().ifPresent(steps -> builder.rows(Section.TUNER, StepUpTables.of(steps)));
        builder.say(
                Section.TUNER,
                "What to read after each step and when to stop: " + Reference.to(Section.STEP_UP)
                        + ". Why it stands so: " + Reference.to(Section.SETUP) + ".");
        builder.points(Section.TUNER, Cautions.TUNER);
    }

    private static void mechanic(DocumentContent.Builder builder, Evidence found, UnitSystem units) {
        Plan plan = found.plan();
        builder.inBoth(Section.MECHANIC, SetupTables.fitted(plan.setup()));
        builder.rows(Section.MECHANIC, lines(found.jobs()));
        plan.car().wiring().ifPresent(wiring -> wiring(builder, wiring, units));
        builder.rows(Section.MECHANIC, checks(plan));
        builder.say(Section.MECHANIC, besides(found.jobs()) + CommissionTables.costs(found.jobs()));
        builder.points(Section.MECHANIC, Cautions.MECHANIC);
    }

    /** Holes and hoses of both circuits with their sizes; what has none follows in a sentence. */
    private static Listing lines(JobList jobs) {
        Listing.Builder rows = Listing.titled("Lines and parts of both circuits")
                .words("What")
                .mixed("Size")
                .words("Amount")
                .words("Fitted");
        circuits(jobs)
                .filter(item -> !Double.isNaN(item.size()))
                .forEach(item -> rows.row(
                        item.what(),
                        new Cell.Figure(item.size(), item.sizeKind()),
                        CommissionTables.amount(item),
                        fitted(item)));
        return rows.build();
    }

    private static String besides(JobList jobs) {
        String parts = circuits(jobs)
                .filter(item -> Double.isNaN(item.size()))
                .map(item -> item.what() + " (" + CommissionTables.amount(item) + (item.fitted() ? ", fitted)" : ")"))
                .collect(Collectors.joining(", "));
        return parts.isEmpty() ? "" : "Besides: " + parts + ". ";
    }

    private static Stream<JobItem> circuits(JobList jobs) {
        return jobs.items().stream()
                .filter(item ->
                        item.circuit() == ListedPart.Circuit.NITROUS || item.circuit() == ListedPart.Circuit.FUEL)
                .filter(item -> !item.key().contains("jets") && !item.key().endsWith("for-the-day"));
    }

    private static String fitted(JobItem item) {
        return item.fitted() ? "yes" : "no";
    }

    private static void wiring(DocumentContent.Builder builder, Wiring wiring, UnitSystem units) {
        Listing.Builder rows = Listing.titled("Fuse, wire and length one way; all of it in the section on wiring")
                .words("Load")
                .figures("Fuse", QuantityKind.CURRENT)
                .words("Wire")
                .words("Length")
                .words("Switched");
        for (Cable cable : wiring.cables().stream().limit(LOADS).toList()) {
            rows.row(
                    cable.load().name(),
                    cable.fuse().rating(),
                    cable.wire().words(),
                    QuantityKind.ALTITUDE.text(cable.load().length(), units),
                    cable.load().phase().words());
        }
        builder.rows(Section.MECHANIC, rows.build());
        String broken = wiring.safety()
                .map(chain -> chain.findings().stream()
                        .filter(finding -> !finding.holds())
                        .map(SafetyFinding::rule)
                        .collect(Collectors.joining("; ")))
                .orElse("");
        builder.say(
                Section.MECHANIC,
                (broken.isEmpty()
                                ? ""
                                : "Mend the safety chain before anything else; it does not hold: " + broken + ". ")
                        + "Pins, sensors and their check values: " + Reference.to(Section.WIRING) + ".");
    }

    /** Leaks and flow, on both sides: what is looked for before the first shot. */
    private static Listing checks(Plan plan) {
        Listing.Builder rows = Listing.titled("Checks before the first shot, in this order")
                .words("Do")
                .words("Must be seen");
        StartList.of(plan).lines().stream()
                .filter(line -> !line.expected().isEmpty() && !line.action().startsWith("Read "))
                .filter(line -> line.stage() == StartLine.Stage.PRIME
                        || line.stage() == StartLine.Stage.NITROUS
                        || line.stage() == StartLine.Stage.FLOW)
                .limit(CHECKS)
                .forEach(line -> rows.row(line.action(), CommissionTables.expected(line)));
        return rows.build();
    }

    private static void track(DocumentContent.Builder builder, Evidence found) {
        Plan plan = found.plan();
        builder.inBoth(Section.TRACK, SetupTables.filled(plan.setup()));
        found.day().ifPresent(card -> weather(builder, card));
        plan.day().ifPresent(day -> {
            builder.rows(Section.TRACK, DayViews.scale(day, WEIGHTS));
            builder.say(Section.TRACK, String.join(" ", DayViews.sentences(day)));
        });
        found.stepUp()
                .flatMap(steps -> steps.shots().stream().reduce((first, last) -> last))
                .ifPresent(shot -> builder.rows(Section.TRACK, StepUpTables.brief(shot)));
        builder.say(
                Section.TRACK,
                "The day pass by pass, refills and the filling rules: " + Reference.to(Section.PASS) + ".");
        builder.points(Section.TRACK, List.of(Cautions.BOTTLE));
        builder.points(Section.TRACK, Cautions.TRACK);
    }

    private static void weather(DocumentContent.Builder builder, TrackCard card) {
        builder.rows(Section.TRACK, TrackTables.weather(card));
        builder.say(Section.TRACK, TrackTables.hotter(card));
    }
}
