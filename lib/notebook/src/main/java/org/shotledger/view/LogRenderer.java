package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.causes.Causes;
import org.shotledger.display.Displayable;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogFindings;
import org.shotledger.reconcile.ComparedChannel;
import org.shotledger.reconcile.NitrousShare;
import org.shotledger.reconcile.Overlay;
import org.shotledger.reconcile.Reconciliation;
import org.shotledger.revision.NextStep;
import org.shotledger.revision.SheetRevision;
import org.shotledger.table.Shown;

/** Shows logs and what they say of a plan in the units of the session; one nested class a type. */
public final class LogRenderer {
    private LogRenderer() {}

    /** Shows a log by what is to be said of it. */
    public static final class OfLog extends ResultRenderer<EngineLog> {
        /** Made by the service loader. */
        public OfLog() {
            super(
                    EngineLog.class,
                    (log, shown) -> View.of(
                            new Sentence(log + "."),
                            LogTables.of(log.findings()).in(shown)));
        }
    }

    /** Shows findings. */
    public static final class OfFindings extends ResultRenderer<LogFindings> {
        /** Made by the service loader. */
        public OfFindings() {
            super(
                    LogFindings.class,
                    (findings, shown) -> View.of(
                            new Sentence(findings.summary()),
                            LogTables.of(findings).in(shown)));
        }
    }

    /** Shows one figure over the plan. */
    public static final class OfOverlay extends ResultRenderer<Overlay> {
        /** Made by the service loader. */
        public OfOverlay() {
            super(
                    Overlay.class,
                    (overlay, shown) -> View.of(pieces(overlay, shown).toArray(Displayable[]::new)));
        }
    }

    /** Shows a comparison: its sentences, its table, power and mixture over the plan. */
    public static final class OfReconciliation extends ResultRenderer<Reconciliation> {
        /** Made by the service loader. */
        public OfReconciliation() {
            super(Reconciliation.class, LogRenderer::laid);
        }
    }

    /** Shows what the nitrous adds. */
    public static final class OfShare extends ResultRenderer<NitrousShare> {
        /** Made by the service loader. */
        public OfShare() {
            super(
                    NitrousShare.class,
                    (share, shown) -> View.of(
                            new Sentence(share.summary(shown.first())),
                            LogCharts.of(share, shown.first()),
                            LogTables.of(share).in(shown)));
        }
    }

    /** Shows causes: every channel in one picture, the sentences, the table. */
    public static final class OfCauses extends ResultRenderer<Causes> {
        /** Made by the service loader. */
        public OfCauses() {
            super(Causes.class, (causes, shown) -> {
                List<Displayable> pieces = new ArrayList<>();
                pieces.add(LogCharts.of(causes, shown.first()));
                causes.sentences(shown.first()).forEach(sentence -> pieces.add(new Sentence(sentence)));
                if (!causes.suspects().isEmpty()) {
                    pieces.add(LogTables.of(causes, shown.first()).in(shown));
                }
                return View.of(pieces.toArray(Displayable[]::new));
            });
        }
    }

    /** Shows the call after a step: its sentence and its checkpoints. */
    public static final class OfNextStep extends ResultRenderer<NextStep> {
        /** Made by the service loader. */
        public OfNextStep() {
            super(
                    NextStep.class,
                    (next, shown) -> View.of(
                            new Sentence(next.sentence(shown.first())),
                            new Sentence(next.run().sentence()),
                            LogTables.of(next).in(shown)));
        }
    }

    /** Shows a revision: what would change, and what no sheet holds. */
    public static final class OfRevision extends ResultRenderer<SheetRevision> {
        /** Made by the service loader. */
        public OfRevision() {
            super(SheetRevision.class, (revision, shown) -> {
                List<Displayable> pieces = new ArrayList<>();
                if (revision.differences().isEmpty()) {
                    pieces.add(new Sentence("Nothing of the sheet is changed."));
                } else {
                    pieces.add(LogTables.of(revision).in(shown));
                }
                revision.notes().forEach(note -> pieces.add(new Sentence(note)));
                return View.of(pieces.toArray(Displayable[]::new));
            });
        }
    }

    private static List<Displayable> pieces(Overlay overlay, Shown shown) {
        List<Displayable> pieces = new ArrayList<>();
        pieces.add(LogCharts.of(overlay, shown.first()));
        overlay.parts().forEach(part -> pieces.add(new Sentence(overlay.sentence(part, shown.first()))));
        return pieces;
    }

    private static Displayable laid(Reconciliation laid, Shown shown) {
        List<Displayable> pieces = new ArrayList<>();
        laid.sentences(shown.first()).forEach(sentence -> pieces.add(new Sentence(sentence)));
        pieces.add(LogTables.of(laid).in(shown));
        laid.overlays().stream()
                .filter(o -> o.what() == ComparedChannel.WHEEL_POWER || o.what() == ComparedChannel.LAMBDA)
                .forEach(o -> pieces.add(LogCharts.of(o, shown.first())));
        return View.of(pieces.toArray(Displayable[]::new));
    }
}
