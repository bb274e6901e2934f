package org.shotledger.logs;

import java.util.Locale;
import java.util.Optional;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;

/**
 * The unit of a column for a channel, from what the file says and from the values.
 *
 * @param unit the unit as a mapping writes it
 * @param stoichiometric for an air-fuel ratio that at lambda 1, else NaN
 * @param confidence how sure it is
 * @param reason why
 */
record UnitGuess(String unit, double stoichiometric, Certainty confidence, String reason) {
    /** Below this an absolute pressure is no running engine's; a gauge pressure in the manifold goes below zero. */
    private static final double LEAST_ABSOLUTE = 0.15e5;

    private static final double AMBIENT = 1e5;

    /** Petrol at lambda 1, by which most displays of an air-fuel ratio are scaled; common practice, no source. */
    private static final double PETROL = 14.7;

    /** The best guess; empty when the values cannot be this channel. */
    static Optional<UnitGuess> of(LogChannel channel, ColumnSurvey column) {
        String written = column.heading().unit();
        if (channel == LogChannel.TIME) {
            return time(column, written);
        }
        if (channel == LogChannel.NITROUS_ON) {
            return column.isFlag()
                    ? Optional.of(new UnitGuess("", Double.NaN, Certainty.SURE, "its cells are on and off"))
                    : Optional.empty();
        }
        if (!column.isNumbers()) {
            return Optional.empty();
        }
        if (channel == LogChannel.LAMBDA) {
            return lambda(column, written);
        }
        return channel.kind() == QuantityKind.ABSOLUTE_PRESSURE
                ? pressure(channel, column, written)
                : plain(channel, column, written);
    }

    private static Optional<UnitGuess> time(ColumnSurvey column, String written) {
        if (column.isClock()) {
            return Optional.of(new UnitGuess("clock", Double.NaN, Certainty.SURE, "its cells are clock times"));
        }
        if (!column.isNumbers()) {
            return Optional.empty();
        }
        if (fits(written, QuantityKind.TIME)) {
            return Optional.of(new UnitGuess(
                    LogUnits.usual(written), Double.NaN, Certainty.SURE, "the file says " + LogUnits.usual(written)));
        }
        if (!written.isEmpty() || !column.rises()) {
            return Optional.empty();
        }
        boolean millis = column.meanStep() >= 2;
        return Optional.of(new UnitGuess(
                millis ? "ms" : "s",
                Double.NaN,
                Certainty.LIKELY,
                String.format(Locale.ROOT, "it rises by %.4g from row to row", column.meanStep())));
    }

    private static Optional<UnitGuess> lambda(ColumnSurvey column, String written) {
        if (!written.isEmpty() && !fits(written, QuantityKind.RATIO)) {
            return Optional.empty();
        }
        if (column.low() >= 0.3 && column.high() <= 3) {
            return Optional.of(new UnitGuess("", Double.NaN, Certainty.SURE, range(column) + " is lambda"));
        }
        if (column.low() >= 3 && column.high() <= 40) {
            return Optional.of(new UnitGuess(
                    "",
                    PETROL,
                    Certainty.DOUBTFUL,
                    range(column)
                            + " is an air-fuel ratio, and the file does not say that at lambda 1; most displays are scaled"
                            + " by 14.7"));
        }
        return Optional.empty();
    }

    private static Optional<UnitGuess> pressure(LogChannel channel, ColumnSurvey column, String written) {
        String unit = LogUnits.usual(written);
        if (fits(unit, QuantityKind.ABSOLUTE_PRESSURE) || fits(unit, QuantityKind.GAUGE_PRESSURE)) {
            return inRange(channel, column, unit, Certainty.SURE, "the file says " + unit);
        }
        if (!written.isEmpty() && !fits(unit, QuantityKind.PRESSURE_DIFFERENCE)) {
            return Optional.empty();
        }
        if (unit.isEmpty()) {
            unit = pressureUnit(channel, column.high());
        }
        double low = si(unit, QuantityKind.PRESSURE_DIFFERENCE, column.low());
        String told = written.isEmpty() ? range(column) + " fits " + unit : "the file says " + unit;
        Certainty by = written.isEmpty() ? Certainty.LIKELY : Certainty.SURE;
        if (channel != LogChannel.MANIFOLD_PRESSURE) {
            return inRange(
                    channel,
                    column,
                    unit + " gauge",
                    Certainty.LIKELY,
                    told + ", above ambient as such gauges read (common practice)");
        }
        if (low < LEAST_ABSOLUTE) {
            return inRange(
                    channel,
                    column,
                    unit + " gauge",
                    by.and(Certainty.LIKELY),
                    told + ", and it goes down to ambient or below");
        }
        Certainty open = low < 0.9 * AMBIENT ? Certainty.LIKELY : Certainty.DOUBTFUL;
        return inRange(
                channel,
                column,
                unit + " abs",
                by.and(open),
                told
                        + (open == Certainty.LIKELY
                                ? ", and its least value is that of an engine that draws against its throttle"
                                : ", and it never shows the engine at part load, so that absolute or gauge stays open"));
    }

    private static String pressureUnit(LogChannel channel, double high) {
        boolean bottle = channel == LogChannel.BOTTLE_PRESSURE;
        double bars = bottle ? 160 : channel == LogChannel.MANIFOLD_PRESSURE ? 6 : 15;
        double psis = bottle ? 2400 : channel == LogChannel.MANIFOLD_PRESSURE ? 70 : 160;
        return high <= bars ? "bar" : high <= psis ? "psi" : "kPa";
    }

    private static Optional<UnitGuess> plain(LogChannel channel, ColumnSurvey column, String written) {
        QuantityKind kind = channel.kind();
        String unit = LogUnits.usual(written);
        if (!written.isEmpty()) {
            return fits(unit, kind)
                    ? inRange(channel, column, unit, Certainty.SURE, "the file says " + unit)
                    : Optional.empty();
        }
        boolean percent = column.high() > 2;
        return switch (kind) {
            case ROTATION -> inRange(channel, column, "rpm", Certainty.LIKELY, range(column) + " fits rpm");
            case FRACTION, RATIO ->
                inRange(
                        channel,
                        column,
                        percent ? "%" : "",
                        Certainty.LIKELY,
                        range(column) + (percent ? " fits %" : " fits a fraction"));
            case COUNT -> inRange(channel, column, "", Certainty.LIKELY, range(column));
            case VOLTAGE -> inRange(channel, column, "V", Certainty.LIKELY, range(column) + " fits V");
            case CRANK_ANGLE -> inRange(channel, column, "deg", Certainty.LIKELY, range(column) + " fits degrees");
            case TEMPERATURE ->
                inRange(channel, column, column.low() > 200 ? "K" : "degC", Certainty.DOUBTFUL, open(column));
            case POWER -> inRange(channel, column, "kW", Certainty.DOUBTFUL, open(column));
            case TORQUE -> inRange(channel, column, "N m", Certainty.DOUBTFUL, open(column));
            case SPEED -> inRange(channel, column, "km/h", Certainty.DOUBTFUL, open(column));
            default -> Optional.empty();
        };
    }

    private static String open(ColumnSurvey column) {
        return "the file names no unit, and " + range(column) + " does not tell it";
    }

    /** The guess where the values are plausible; a doubtful one where a few are not; none where most cannot be. */
    private static Optional<UnitGuess> inRange(
            LogChannel channel, ColumnSurvey column, String unit, Certainty confidence, String reason) {
        boolean gauge = FigureText.saysGauge(unit);
        QuantityKind kind = gauge ? QuantityKind.GAUGE_PRESSURE : channel.kind();
        double above = gauge ? AMBIENT : 0;
        boolean low = channel.plausible(si(unit, kind, column.low()) + above);
        boolean high = channel.plausible(si(unit, kind, column.high()) + above);
        if (!low && !high) {
            return Optional.empty();
        }
        return Optional.of(
                low && high
                        ? new UnitGuess(unit, Double.NaN, confidence, reason)
                        : new UnitGuess(
                                unit,
                                Double.NaN,
                                Certainty.DOUBTFUL,
                                reason + ", but " + range(column) + " leaves what is plausible, " + channel.range()));
    }

    private static String range(ColumnSurvey column) {
        return String.format(Locale.ROOT, "%.4g to %.4g", column.low(), column.high());
    }

    private static boolean fits(String unit, QuantityKind kind) {
        try {
            FigureText.unit(unit, kind);
            return true;
        } catch (UnitException e) {
            return false;
        }
    }

    private static double si(String unit, QuantityKind kind, double number) {
        return FigureText.unit(unit, kind).toSi(number);
    }
}
