package org.shotledger.view;

import org.shotledger.confidence.FlowTestAdvice;
import org.shotledger.document.Cautions;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.stepup.StepUp;
import org.shotledger.units.UnitSystem;

/** Writes the step-up plan into the customer document: the ladder, the spark, the figures to go on or to stop, the checks. */
final class StepUpSection {
    private StepUpSection() {}

    /** Before the first shot: the flow tests that would tell most, with their cautions. */
    static void flowTests(DocumentContent.Builder builder, FlowTestAdvice advice) {
        if (advice.tests().isEmpty()) {
            return;
        }
        builder.say(Section.STEP_UP, "Before the first shot. " + FlowTables.said(advice));
        builder.rows(Section.STEP_UP, FlowTables.of(advice));
        builder.points(Section.STEP_UP, Cautions.flowTest());
    }

    static void write(DocumentContent.Builder builder, StepUp plan, UnitSystem charts) {
        builder.rows(Section.STEP_UP, StepUpTables.of(plan));
        builder.rows(Section.STEP_UP, StepUpTables.sparks(plan));
        builder.picture(Section.STEP_UP, DeliveryCharts.of(plan, charts));
        plan.shots().stream().limit(1).forEach(shot -> builder.rows(Section.STEP_UP, StepUpTables.of(shot)));
        if (plan.shots().size() > 1) {
            builder.rows(Section.STEP_UP, StepUpTables.changes(plan, charts));
            builder.points(Section.STEP_UP, StepUpTables.otherwise(plan));
        }
        builder.say(Section.STEP_UP, Cautions.SHORT);
        builder.points(Section.STEP_UP, StepUp.CHECKS);
    }
}
