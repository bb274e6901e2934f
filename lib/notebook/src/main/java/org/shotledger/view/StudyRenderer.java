package org.shotledger.view;

import org.shotledger.confidence.Confidence;
import org.shotledger.confidence.RobustChoice;
import org.shotledger.study.Objective;
import org.shotledger.study.SweepResult;

/** Shows sweeps and confidence in the units of the session; one nested class a type. */
public final class StudyRenderer {
    private StudyRenderer() {}

    /** Shows a sweep. */
    public static final class OfSweep extends ResultRenderer<SweepResult> {
        /** Made by the service loader. */
        public OfSweep() {
            super(
                    SweepResult.class,
                    (swept, shown) -> View.of(
                            new Sentence(swept.summary()),
                            StudyCharts.front(swept, Objective.POWER, Objective.MARGIN, shown.first()),
                            StudyTables.of(swept).in(shown),
                            StudyTables.brokeFirst(swept).in(shown)));
        }
    }

    /** Shows how sure a plan is. */
    public static final class OfConfidence extends ResultRenderer<Confidence> {
        /** Made by the service loader. */
        public OfConfidence() {
            super(
                    Confidence.class,
                    (confidence, shown) -> View.of(
                            new Sentence(confidence.summary()),
                            StudyTables.of(confidence).in(shown),
                            StudyCharts.tornado(confidence, shown.first()),
                            StudyTables.influences(confidence).in(shown)));
        }
    }

    /** Shows a robust choice. */
    public static final class OfRobustChoice extends ResultRenderer<RobustChoice> {
        /** Made by the service loader. */
        public OfRobustChoice() {
            super(
                    RobustChoice.class,
                    (choice, shown) -> View.of(
                            new Sentence(choice.summary()),
                            StudyTables.of(choice).in(shown)));
        }
    }
}
