package org.shotledger.view;

import org.shotledger.delivery.PulseCheck;
import org.shotledger.delivery.Ramp;
import org.shotledger.document.Cautions;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;

/** How a notebook shows what comes after a plan; the nested classes are what the service loader finds. */
public final class StepRenderer {
    private StepRenderer() {}

    /** Shows a step-up plan: its ladder, the picture and the spark. */
    public static final class OfStepUp extends ResultRenderer<StepUp> {
        /** Made by the service loader. */
        public OfStepUp() {
            super(
                    StepUp.class,
                    (plan, shown) -> View.of(
                            StepUpTables.of(plan).in(shown),
                            DeliveryCharts.of(plan, shown.first()),
                            StepUpTables.sparks(plan).in(shown),
                            new Sentence(Cautions.SHORT)));
        }
    }

    /** Shows the checkpoints of a shot. */
    public static final class OfShot extends ResultRenderer<Shot> {
        /** Made by the service loader. */
        public OfShot() {
            super(Shot.class, (shot, shown) -> View.of(StepUpTables.of(shot).in(shown), new Sentence(Cautions.SHORT)));
        }
    }

    /** Shows a pulsed shot. */
    public static final class OfPulse extends ResultRenderer<PulseCheck> {
        /** Made by the service loader. */
        public OfPulse() {
            super(
                    PulseCheck.class,
                    (check, shown) -> View.of(
                            DeliveryCharts.of(check, shown.first()),
                            DeliveryTables.of(check).in(shown)));
        }
    }

    /** Shows a ramp. */
    public static final class OfRamp extends ResultRenderer<Ramp> {
        /** Made by the service loader. */
        public OfRamp() {
            super(Ramp.class, (ramp, shown) -> DeliveryTables.of(ramp).in(shown));
        }
    }
}
