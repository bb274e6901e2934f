package org.shotledger.plan;

import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * One case as a search sees it: operating points by boost and shot. The nitrous flow of a shot is scaled from one feed path solved
 * beforehand, so that no path is solved in the search; the setup found is worked out in full afterwards.
 */
final class CaseModel {
    private final PointModel model;
    private final double ambient;
    private final FeedFlow reference;
    private final double scale;

    private CaseModel(PointModel model, double ambient, FeedFlow reference, double scale) {
        this.model = model;
        this.ambient = ambient;
        this.reference = reference;
        this.scale = scale;
    }

    /** The model of a case; flows are counted as those of the target's own case. */
    static CaseModel of(Car car, Setup setup, JetPair pair, Case at, double statedFlow) {
        PointModel model = Evaluate.model(car, setup.withJets(pair), at);
        double highest = at.air().pressure() + setup.boost().armed().highest();
        FeedFlow feed = model.feed(highest);
        return new CaseModel(
                model, at.air().pressure(), feed, Double.isNaN(statedFlow) ? 1 / feed.massFlow() : 1 / statedFlow);
    }

    double ambient() {
        return ambient;
    }

    PointModel model() {
        return model;
    }

    double referenceFlow() {
        return reference.massFlow();
    }

    /** The engine on boost alone. */
    Optional<OperatingPoint> off(double rpm, double gauge) {
        try {
            return Optional.of(model.at(rpm, ambient + gauge, Mode.BOOST_ALONE));
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }

    /**
     * The engine with nitrous.
     *
     * @throws NoAnswerException where the models have none
     */
    OperatingPoint point(double rpm, double gauge, Shot shot) {
        double plenum = ambient + gauge;
        return model.at(
                rpm, plenum, Mode.NITROUS, feed(shot.nitrousFlow()), model.nitrousFuel(plenum, shot.fuelBore()));
    }

    /** The same; empty where the models have no answer. */
    Optional<OperatingPoint> on(double rpm, double gauge, Shot shot) {
        try {
            return Optional.of(point(rpm, gauge, shot));
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }

    FeedFlow feed(double statedFlow) {
        return reference.times(statedFlow * scale);
    }
}
