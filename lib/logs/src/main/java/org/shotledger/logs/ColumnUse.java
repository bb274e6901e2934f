package org.shotledger.logs;

import java.util.Locale;
import java.util.Map;
import org.shotledger.sheet.CsvNumber;
import org.shotledger.units.UnitName;

/**
 * How the cells of one column become SI values.
 *
 * @param channel the channel
 * @param unit the unit of the cells
 * @param above what is added after conversion, for a gauge pressure the ambient, Pa
 * @param divisor what the value is divided by, for an air-fuel ratio that at lambda 1
 */
record ColumnUse(LogChannel channel, UnitName unit, double above, double divisor) {
    private static final Map<String, Double> WORDS = Map.of("on", 1.0, "off", 0.0, "true", 1.0, "false", 0.0);
    private static final java.util.Set<String> NOTHING =
            java.util.Set.of("", "-", "--", "---", "nan", "n/a", "na", "null");

    /** Whether a cell says that there is no value. */
    static boolean saysNothing(String cell) {
        return cell.length() <= 4 && NOTHING.contains(cell.toLowerCase(Locale.ROOT));
    }

    /** The SI value of a cell; NaN when it holds no finite number. */
    double si(String cell, boolean decimalComma) {
        double number = CsvNumber.read(cell, decimalComma);
        if (Double.isNaN(number) && channel == LogChannel.NITROUS_ON) {
            return WORDS.getOrDefault(cell.toLowerCase(Locale.ROOT), Double.NaN);
        }
        double si = unit.toSi(number) / divisor + above;
        return Double.isFinite(si) ? si : Double.NaN;
    }
}
