package org.shotledger.view;

import java.util.Arrays;
import org.shotledger.causes.Cause;
import org.shotledger.causes.Causes;
import org.shotledger.causes.Suspect;
import org.shotledger.job.SheetDifference;
import org.shotledger.logs.Finding;
import org.shotledger.logs.LogFindings;
import org.shotledger.reconcile.NitrousShare;
import org.shotledger.reconcile.Overlay;
import org.shotledger.reconcile.Reconciliation;
import org.shotledger.revision.CheckpointReading;
import org.shotledger.revision.NextStep;
import org.shotledger.revision.SheetRevision;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Logs and what they say of a plan, as tables. */
public final class LogTables {
    private LogTables() {}

    /**
     * What is wrong with a log.
     *
     * @param findings the findings
     * @return one row a finding
     */
    public static Listing of(LogFindings findings) {
        Listing.Builder rows = Listing.titled(
                        "What is to be said of " + findings.log().file())
                .words("Finding")
                .words("Channel")
                .figures("From", QuantityKind.TIME)
                .figures("to", QuantityKind.TIME)
                .figures("Count", QuantityKind.COUNT)
                .words("In words");
        for (Finding finding : findings.all()) {
            rows.row(
                    finding.kind().words(),
                    finding.channel(),
                    finding.from(),
                    finding.to(),
                    (double) finding.count(),
                    finding.sentence());
        }
        return rows.build();
    }

    /**
     * How far a log lies off a plan.
     *
     * @param laid the comparison
     * @return one row a figure and state of the nitrous
     */
    public static Listing of(Reconciliation laid) {
        Listing.Builder rows = Listing.titled("The log " + laid.file() + " less the plan")
                .words("Figure")
                .words("Nitrous")
                .figures("From", QuantityKind.ROTATION)
                .figures("to", QuantityKind.ROTATION)
                .mixed("Mean difference")
                .mixed("Greatest")
                .figures("at", QuantityKind.ROTATION)
                .mixed("Plan +/- (two standard uncertainties)")
                .words("Judged");
        for (Overlay overlay : laid.overlays()) {
            QuantityKind kind = overlay.what().difference();
            for (Overlay.Part part : overlay.parts()) {
                rows.row(
                        overlay.what().words(),
                        part.nitrousOn() ? "on" : "off",
                        part.rpmLow(),
                        part.rpmHigh(),
                        change(part.mean(), kind),
                        change(part.greatest(), kind),
                        part.greatestAt(),
                        new Cell.Figure(2 * part.uncertainty().all(), kind),
                        part.judgement().words());
            }
        }
        return rows.build();
    }

    /**
     * What a log's differences may come from.
     *
     * @param causes the causes
     * @param system the units of the sizes
     * @return one row a cause, the likeliest first
     */
    public static Listing of(Causes causes, UnitSystem system) {
        Listing.Builder rows = Listing.titled("What " + causes.file() + " may differ by")
                .words("Cause")
                .figures("Share", QuantityKind.FRACTION)
                .words("Size, two standard uncertainties")
                .words("Against what is stated")
                .words("Explains it together with")
                .words("To know");
        for (Suspect s : causes.suspects()) {
            rows.row(
                    s.cause().words(),
                    s.share(),
                    s.sizeText(system),
                    s.band() == 0 ? "none stated" : s.insideBand() ? "inside" : "beyond",
                    s.with().map(Cause::words).orElse(""),
                    String.join("; ", s.tell()));
        }
        return rows.build();
    }

    /**
     * The checkpoints of the step that was run, against its log.
     *
     * @param next what to do
     * @return one row a checkpoint
     */
    public static Listing of(NextStep next) {
        Listing.Builder rows = Listing.titled("Checkpoints of " + next.run().name())
                .words("Figure")
                .mixed("Expected")
                .mixed("At least")
                .mixed("At most")
                .mixed("Read")
                .words("Call")
                .words("Why");
        for (CheckpointReading r : next.readings()) {
            QuantityKind kind = r.checkpoint().kind();
            rows.row(
                    r.checkpoint().what(),
                    new Cell.Figure(r.checkpoint().expected(), kind),
                    new Cell.Figure(finite(r.checkpoint().low()), kind),
                    new Cell.Figure(finite(r.checkpoint().high()), kind),
                    new Cell.Figure(r.read(), kind),
                    r.call().word(),
                    r.reason());
        }
        return rows.build();
    }

    private static double finite(double bound) {
        return Double.isFinite(bound) ? bound : Double.NaN;
    }

    /**
     * What a revision changes.
     *
     * @param revision the revision
     * @return one row a value
     */
    public static Listing of(SheetRevision revision) {
        Listing.Builder rows = Listing.titled("What the log of " + revision.log() + " would change in the sheet")
                .words("Value")
                .words("Stands")
                .words("Would stand")
                .words("Because");
        for (SheetDifference d : revision.differences()) {
            rows.row(d.path(), d.before().isEmpty() ? "(not stated)" : d.before(), d.after(), d.reasonAfter());
        }
        return rows.build();
    }

    /** A difference too small for the digits the trade reads is none: more digits would promise what no log holds. */
    private static Cell change(double difference, QuantityKind kind) {
        boolean none = Arrays.stream(UnitSystem.values())
                .anyMatch(system -> kind.number(Math.abs(difference), system).equals(kind.number(0, system)));
        return new Cell.Figure(none ? 0 : difference, kind, true);
    }

    /**
     * What the nitrous added.
     *
     * @param share the share
     * @return one row an engine speed
     */
    public static Listing of(NitrousShare share) {
        Listing.Builder rows = Listing.titled("What the nitrous added at the wheels")
                .words("Engine speed")
                .figures("Two pulls", QuantityKind.POWER)
                .figures("+/- (two standard uncertainties)", QuantityKind.POWER)
                .figures("Plan", QuantityKind.POWER);
        for (NitrousShare.Point point : share.points()) {
            rows.row(Math.round(point.rpm()) + " rpm", point.measured(), 2 * point.uncertainty(), point.expected());
        }
        return rows.build();
    }
}
