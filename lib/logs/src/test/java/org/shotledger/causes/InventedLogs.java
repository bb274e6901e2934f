package org.shotledger.causes;

import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import org.shotledger.causes.PlantedLog.NoiseOf;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.LogMapping;
import org.shotledger.setup.Factor;

/** Invented logs for tests of other packages. */
public final class InventedLogs {
    private InventedLogs() {}

    /**
     * A log of a setup.
     *
     * @param outcome what was run
     * @param setup what the log says was run
     * @param fuelFlow factor on the flow of its fuel jets
     * @param lambdaReading what the sensor reads of the truth
     * @return the log
     */
    public static LogFindings of(Outcome outcome, String setup, double fuelFlow, double lambdaReading) {
        Planted planted =
                Planted.sound(outcome).times(Factor.FUEL_JET_FLOW, fuelFlow).lambda(lambdaReading);
        return read(planted, setup);
    }

    /**
     * A log of a setup whose nitrous adds other work than assumed.
     *
     * @param outcome what was run
     * @param setup what the log says was run
     * @param work factor on the work that the nitrous adds
     * @return the log
     */
    public static LogFindings withNitrousWork(Outcome outcome, String setup, double work) {
        return read(Planted.sound(outcome).times(Factor.NITROUS_WORK, work), setup);
    }

    /**
     * The text of a log whose sensors read wrong.
     *
     * @param outcome what was run
     * @param lambdaReading what the lambda sensor reads of the truth
     * @param bottleReading what the bottle gauge reads too much, Pa
     * @return the log's text
     */
    public static String text(Outcome outcome, double lambdaReading, double bottleReading) {
        return new PlantedLog(Planted.sound(outcome).lambda(lambdaReading).bottleGauge(bottleReading))
                .text(11, NoiseOf.WHITE);
    }

    private static LogFindings read(Planted planted, String setup) {
        LogMapping mapping = new LogMapping("", setup, "", Double.NaN, 0, 0, Optional.empty(), List.of());
        return EngineLog.read(
                        new StringReader(new PlantedLog(planted).text(11, NoiseOf.WHITE)), "invented.csv", mapping)
                .findings();
    }
}
