package org.shotledger.logs;

import org.shotledger.units.UnitName;

/**
 * How the cells of one column become SI values.
 *
 * @param channel the channel
 * @param unit the unit of the cells
 * @param above what is added after conversion, for a gauge pressure the ambient, less what the gauge reads too much, SI
 * @param divisor what the value is divided by, for an air-fuel ratio that at lambda 1, times what the sensor reads of the truth
 * @param comma whether its numbers have a decimal comma
 * @param on the word that means on, where the mapping names one; else empty
 * @param clock reads clock times, for the column of time only
 */
record ColumnUse(
        LogChannel channel, UnitName unit, double above, double divisor, boolean comma, String on, Clock clock) {

    /** The SI value of a cell that does not say that there is none; NaN when it holds no finite number. */
    double si(String cell) {
        if (channel == LogChannel.TIME && cell.indexOf(':') > 0) {
            return clock.read(cell);
        }
        if (!on.isEmpty()) {
            return cell.equalsIgnoreCase(on) ? 1 : 0;
        }
        double number = LogNumber.read(cell, comma);
        if (Double.isNaN(number) && channel == LogChannel.NITROUS_ON) {
            return Flag.read(cell);
        }
        double si = unit.toSi(number) / divisor + above;
        return Double.isFinite(si) ? si : Double.NaN;
    }
}
