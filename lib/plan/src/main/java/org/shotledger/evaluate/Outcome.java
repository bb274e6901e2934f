package org.shotledger.evaluate;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shotledger.car.Car;
import org.shotledger.limits.Limits;
import org.shotledger.nitrous.JetSide;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;

/**
 * What happens when a setup is run in a case.
 *
 * @param car what is built
 * @param setup what is set
 * @param at what the world is
 * @param off operating points on boost alone, by engine speed, ascending
 * @param armed operating points with the nitrous armed, by engine speed, ascending: open within the arming conditions, closed outside
 * @param changeover the moments at which the nitrous opens and closes
 * @param pass the bottle and the engine over the seconds of the pass that the case speaks of; empty without nitrous
 * @param limits every limit, each where it is closest
 */
public record Outcome(
        Car car,
        Setup setup,
        Case at,
        List<OperatingPoint> off,
        List<OperatingPoint> armed,
        List<OperatingPoint> changeover,
        Optional<PassOutcome> pass,
        Limits limits) {

    public Outcome {
        off = List.copyOf(off);
        armed = List.copyOf(armed);
        changeover = List.copyOf(changeover);
    }

    /**
     * The points with the nitrous open.
     *
     * @return by engine speed, ascending; empty where the nitrous is not used or nowhere has an answer
     */
    public List<OperatingPoint> withNitrous() {
        return armed.stream().filter(point -> point.mode() == Mode.NITROUS).toList();
    }

    /**
     * The point of most power at the wheels within the arming conditions, or, without nitrous, over all speeds.
     *
     * @return the point; empty where nowhere has an answer
     */
    public Optional<OperatingPoint> strongest() {
        List<OperatingPoint> on = withNitrous();
        return (on.isEmpty() ? off : on).stream().max(Comparator.comparingDouble(OperatingPoint::wheelPower));
    }

    /**
     * The most power at the wheels.
     *
     * @return W; 0 where nowhere has an answer
     */
    public double power() {
        return strongest().map(OperatingPoint::wheelPower).orElse(0.0);
    }

    /**
     * What of the jets of one side, and of what stands before them, lies outside what was measured, so that its flow is an
     * extrapolation.
     *
     * @param side which jets
     * @return sentences, each once; none when everything lies inside
     */
    public List<String> outside(JetSide side) {
        if (setup.jets().isEmpty()) {
            return List.of();
        }
        Stream<String> jets = side == JetSide.NITROUS
                ? withNitrous().stream().flatMap(point -> point.nitrous().outside().stream())
                : Stream.of(car.nitrous().fuel().jet().outside()).filter(sentence -> !sentence.isEmpty());
        double bore = side == JetSide.NITROUS
                ? setup.jets().get().nitrousBore()
                : setup.jets().get().fuelBore();
        Stream<String> tests = car.nitrous().lastTest(side).filter(test -> test.isFarFrom(bore)).stream()
                .map(test -> "The flow test \"" + test.name() + "\" was made with " + side.words() + " of "
                        + BothUnits.text(QuantityKind.BORE, test.bore()) + ", these are of "
                        + BothUnits.text(QuantityKind.BORE, bore) + "; test again with these.");
        return Stream.concat(jets, tests).distinct().toList();
    }

    /**
     * The engine at one speed, armed.
     *
     * @param rpm engine speed, rev/min
     * @return the point; empty where the models have no answer
     */
    public Optional<OperatingPoint> at(double rpm) {
        return Evaluate.at(car, setup, at, rpm);
    }

    /**
     * The armed engine over engine speed.
     *
     * @return {@link #armed}
     */
    public List<OperatingPoint> overRpm() {
        return armed;
    }

    /**
     * The bottle and the engine over the seconds of a pass.
     *
     * @return one a moment, in time order; empty without nitrous
     */
    public List<PassOutcome.Moment> overPass() {
        return pass.map(PassOutcome::moments).orElse(List.of());
    }
}
