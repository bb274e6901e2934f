package org.shotledger.view;

import org.shotledger.confidence.Confidence;
import org.shotledger.confidence.RobustChoice;
import org.shotledger.study.SideBySide;
import org.shotledger.study.Study;

/** Shows studies and confidence in the units of the session; one nested class a type. */
public final class StudyRenderer {
    private StudyRenderer() {}

    /** Shows a study of many setups. */
    public static final class OfStudy extends ResultRenderer<Study> {
        /** Made by the service loader. */
        public OfStudy() {
            super(
                    Study.class,
                    (study, shown) -> View.of(
                            new Sentence(study.summary(shown.first())),
                            StudyCharts.front(study, shown.first()),
                            StudyTables.best(study, shown.first()).in(shown),
                            StudyTables.front(study, shown.first()).in(shown),
                            StudyTables.refused(study).in(shown)));
        }
    }

    /** Shows setups beside each other. */
    public static final class OfSideBySide extends ResultRenderer<SideBySide> {
        /** Made by the service loader. */
        public OfSideBySide() {
            super(
                    SideBySide.class,
                    (compared, shown) -> View.of(SideBySideTable.of(compared).in(shown)));
        }
    }

    /** Shows how sure a plan is. */
    public static final class OfConfidence extends ResultRenderer<Confidence> {
        /** Made by the service loader. */
        public OfConfidence() {
            super(
                    Confidence.class,
                    (confidence, shown) -> confidence.influences().isEmpty()
                            ? View.of(
                                    new Sentence(confidence.summary()),
                                    ConfidenceTables.chances(confidence).in(shown))
                            : View.of(
                                    new Sentence(confidence.summary()),
                                    ConfidenceTables.chances(confidence).in(shown),
                                    StudyCharts.tornado(confidence, shown.first()),
                                    ConfidenceTables.influences(confidence).in(shown)));
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
                            ConfidenceTables.of(choice).in(shown)));
        }
    }
}
