package org.shotledger.revision;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.shotledger.causes.Cause;
import org.shotledger.causes.Suspect;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogColumn;

/**
 * What the mapping of a log is to say of a sensor that was found to read wrong. The finding is what the sensor still reads wrong after
 * what the mapping corrects, so that the new words hold both: factors multiply, offsets add.
 *
 * @param log the log's file
 * @param channel the channel that the sensor serves
 * @param cause the sensor
 * @param words what is to stand behind the column
 * @param before what stands there; empty for nothing
 */
record SensorCorrection(String log, LogChannel channel, Cause cause, String words, String before) {
    private static final double BAR = 1e5;

    /** Empty where the cause is no sensor, and where its channel is no column of the log, as power from acceleration is. */
    static Optional<SensorCorrection> of(EngineLog log, Suspect s) {
        return channel(log, s.cause()).map(channel -> {
            Optional<LogColumn> column = log.column(channel);
            if (factor(s.cause())) {
                double known = column.map(LogColumn::reads).orElse(1.0);
                return new SensorCorrection(
                        log.file(), channel, s.cause(), reads(known * (1 + s.size())), known == 1 ? "" : reads(known));
            }
            double known = column.map(LogColumn::offset).orElse(0.0);
            return new SensorCorrection(
                    log.file(), channel, s.cause(), offset(known + s.size()), known == 0 ? "" : offset(known));
        });
    }

    private static boolean factor(Cause cause) {
        return cause == Cause.LAMBDA_SENSOR || cause == Cause.POWER_READING;
    }

    private static String reads(double factor) {
        return String.format(Locale.ROOT, "reads: %.3f", factor);
    }

    private static String offset(double pascals) {
        return String.format(Locale.ROOT, "offset: %.3f bar", pascals / BAR);
    }

    private static Optional<LogChannel> channel(EngineLog log, Cause cause) {
        return (switch (cause) {
                    case LAMBDA_SENSOR -> Stream.of(LogChannel.LAMBDA);
                    case POWER_READING ->
                        Stream.of(
                                LogChannel.WHEEL_POWER,
                                LogChannel.WHEEL_TORQUE,
                                LogChannel.CRANK_POWER,
                                LogChannel.CRANK_TORQUE);
                    case BOTTLE_GAUGE -> Stream.of(LogChannel.BOTTLE_PRESSURE);
                    case MANIFOLD_GAUGE -> Stream.of(LogChannel.MANIFOLD_PRESSURE);
                    case RAIL_GAUGE -> Stream.of(LogChannel.FUEL_PRESSURE);
                    case NITROUS_FUEL_GAUGE -> Stream.of(LogChannel.NITROUS_FUEL_PRESSURE);
                    default -> Stream.<LogChannel>empty();
                })
                .filter(log::has)
                .findFirst();
    }

    String sentence() {
        return "It is a sensor and not the car: write \"" + words + "\" behind the column of " + channel.words()
                + " in the mapping of the log"
                + (before.isEmpty() ? "" : " in place of \"" + before + "\", which it already allows for")
                + " (measured, log of " + log + "), or mend the sensor"
                + (before.isEmpty() ? "" : " and take the correction out")
                + ". First " + cause.measurement() + ".";
    }
}
