package org.shotledger.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.shotledger.boost.MapEdge;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;

/**
 * Engine speeds of an outcome that have no operating point. No limit can be held against what is not there, so that a boost beyond the
 * compressor map would look safe. Below the slowest line of the map and left of its surge line, with the nitrous closed, the
 * turbocharger is not up to speed: that is no fault.
 */
final class Unanswered {
    private final PointModel model;
    private final List<String> missing = new ArrayList<>();
    private String reason = "every engine speed has an answer";

    Unanswered(PointModel model) {
        this.model = model;
    }

    /** Looks for the speeds of a line that have no point. */
    void look(double[] speeds, List<OperatingPoint> points, ToDoubleFunction<Double> plenum, Mode mode) {
        Speeds.missing(speeds, points).forEach(rpm -> ask(rpm, plenum.applyAsDouble(rpm), mode));
    }

    private void ask(double rpm, double plenum, Mode mode) {
        try {
            model.at(rpm, plenum, mode);
            if (!mode.nitrousFlows()) {
                return; // there is an answer, but no boost yet
            }
            miss(rpm, mode, "no boost at which it could run");
        } catch (NoAnswerException none) {
            if (mode.nitrousFlows() || !notUpToSpeed(none)) {
                miss(rpm, mode, none.getMessage());
            }
        }
    }

    private static boolean notUpToSpeed(NoAnswerException none) {
        return none.getCause() instanceof OutsideMapException outside
                && (outside.edge() == MapEdge.SLOWEST || outside.edge() == MapEdge.SURGE);
    }

    private void miss(double rpm, Mode mode, String why) {
        if (missing.isEmpty()) {
            reason = "no answer: " + why;
        }
        missing.add(String.format(Locale.ROOT, "%,.0f rpm, %s", rpm, mode.words()));
    }

    Limit limit(String caseName) {
        return new Limit(
                "answered",
                "engine speeds without an answer",
                QuantityKind.COUNT,
                missing.size(),
                0,
                Side.AT_MOST,
                false,
                "the models do not cover it: nothing here tells what happens there",
                Provenance.CALCULATED,
                reason,
                missing.isEmpty() ? "all engine speeds" : missing.get(0),
                caseName,
                0);
    }
}
