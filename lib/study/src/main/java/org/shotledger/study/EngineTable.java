package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.shotledger.budget.Course;

/** The tables of one engine side over the speeds of the band. */
final class EngineTable {
    final Course course;
    final SpeedTable[] speeds;
    /** Keys of the margins, in the order of the outputs after {@link Probe#MARGINS}. */
    final List<String> keys;

    /** Margin of the limit that the speed alone decides, at the speed where it is least. */
    final double speedMargin;
    /** Margin of the charge's temperature below which a combination gets no figures. */
    final double farCold;

    final int torque;
    final int peak;

    EngineTable(Course course, Reach reach) {
        this.course = course;
        double[] rpm = course.speeds();
        Probe[] probes = new Probe[rpm.length];
        speeds = new SpeedTable[rpm.length];
        IntStream.range(0, rpm.length).parallel().forEach(r -> {
            double plenum = Math.min(course.plenumPressure(rpm[r], reach.gaugeHigh()), Probe.modest(course));
            probes[r] = new Probe(course, rpm[r], plenum);
            speeds[r] = new SpeedTable(course, probes[r], rpm[r], reach);
        });
        keys = probes[0].keys();
        speedMargin =
                Arrays.stream(probes).mapToDouble(Probe::speedMargin).min().orElseThrow();
        farCold = probes[0].farCold();
        torque = Probe.MARGINS + keys.indexOf("crank-torque");
        peak = Probe.MARGINS + keys.indexOf("peak-pressure");
    }

    double powerError() {
        return IntStream.range(0, speeds.length)
                .mapToDouble(r -> speeds[r].powerError)
                .max()
                .orElse(0);
    }

    double lambdaError() {
        return IntStream.range(0, speeds.length)
                .mapToDouble(r -> speeds[r].lambdaError)
                .max()
                .orElse(0);
    }
}
