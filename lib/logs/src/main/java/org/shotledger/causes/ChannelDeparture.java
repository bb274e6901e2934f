package org.shotledger.causes;

import java.util.Locale;
import org.shotledger.logs.LogChannel;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * What one channel shows with the nitrous off or on: logged less planned.
 *
 * @param channel the channel
 * @param nitrousOn whether the nitrous was on
 * @param difference mean difference, SI
 * @param standard standard uncertainty of that from the log's scatter and wandering, SI
 * @param band standard uncertainty of the planned value by every stated band, SI
 * @param left what is left of it with the likeliest causes, SI
 * @param planned mean of the planned values, SI
 */
public record ChannelDeparture(
        LogChannel channel,
        boolean nitrousOn,
        double difference,
        double standard,
        double band,
        double left,
        double planned) {
    /** Standard uncertainties beyond which a difference counts: our choice, once in 370 by chance. */
    private static final double CLEAR = 3;

    /**
     * Whether the log differs clearly.
     *
     * @return true beyond three standard uncertainties
     */
    public boolean clear() {
        return Math.abs(difference) > CLEAR * standard;
    }

    /**
     * Whether the log differs by more than what is stated for the plan explains.
     *
     * @return true where it is clear and lies beyond two standard uncertainties of the band
     */
    public boolean beyondBand() {
        return clear() && Math.abs(difference) > 2 * Math.hypot(band, standard);
    }

    /**
     * Whether the likeliest causes leave a clear part that no band explains.
     *
     * @return true beyond three standard uncertainties of scatter and band
     */
    public boolean unexplained() {
        return Math.abs(left) > CLEAR * Math.hypot(standard, band);
    }

    /**
     * In a few words.
     *
     * @param system the units
     * @return for example {@code "lambda with the nitrous on 0.031 above plan (9 standard uncertainties of the log)"}
     */
    public String text(UnitSystem system) {
        String where = channel.words() + " with the nitrous " + (nitrousOn ? "on " : "off ");
        if (!clear()) {
            return where + "agrees";
        }
        return String.format(
                Locale.ROOT,
                "%s%s %s plan (%.0f standard uncertainties of the log)",
                where,
                kind().text(Math.abs(difference), system),
                difference > 0 ? "above" : "below",
                Math.abs(difference) / standard);
    }

    private QuantityKind kind() {
        return switch (channel.kind()) {
            case ABSOLUTE_PRESSURE, GAUGE_PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE;
            case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            default -> channel.kind();
        };
    }
}
