package org.shotledger.risk;

import org.shotledger.budget.Standing;
import org.shotledger.units.QuantityKind;

/**
 * One condition under which the nitrous may be on. It closes outside low and high, and opens again only inside both by the
 * hysteresis.
 *
 * @param key stable name, for example {@code "bottle-pressure"}
 * @param name in the words of the trade
 * @param kind what it measures
 * @param low closes below, SI; NaN when there is no lower end
 * @param high closes above, SI; NaN when there is no upper end
 * @param hysteresis how far inside low and high it must come back before it opens, SI, 0 or more
 * @param planned the value of the plan; NaN where the plan has none
 * @param lowReason why not lower
 * @param highReason why not higher
 * @param standing how the gate is known
 */
public record Gate(
        String key,
        String name,
        QuantityKind kind,
        double low,
        double high,
        double hysteresis,
        double planned,
        String lowReason,
        String highReason,
        Standing standing) {

    /**
     * Tells whether a value closes the nitrous.
     *
     * @param value the value read, SI
     * @return true outside low and high; false for a value that is not a number
     */
    public boolean closesAt(double value) {
        return value < low || value > high;
    }

    /**
     * Tells whether a value lets closed nitrous open.
     *
     * @param value the value read, SI
     * @return true inside low and high by the hysteresis
     */
    public boolean opensAt(double value) {
        return !(value < low + hysteresis) && !(value > high - hysteresis);
    }
}
