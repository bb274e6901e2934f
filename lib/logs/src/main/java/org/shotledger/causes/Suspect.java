package org.shotledger.causes;

import java.util.List;
import java.util.Optional;
import org.shotledger.units.UnitSystem;

/**
 * A cause that may be what a log differs by.
 *
 * @param cause the cause
 * @param share posterior probability that it is what is wrong, alone or with one other; 0 to 1
 * @param with the other of the set that explains the log best with it, where it takes two
 * @param size how large it is, over all sets that hold it: a share for flows, readings, work and content (-0.05 is 5 % less), what is closed or lost of 1, Pa, K or V
 * @param standard standard uncertainty of that with every band of what else is not known
 * @param scatter standard uncertainty of that from the log's own scatter, wandering included, and from which set it is, everything else
 *     as planned
 * @param band what it may differ by with nothing wrong, one standard deviation; 0 for what never does
 * @param alike causes that explain the log as well in its place, or are about as likely to be there instead
 * @param tell what would tell it from those
 */
public record Suspect(
        Cause cause,
        double share,
        Optional<Cause> with,
        double size,
        double standard,
        double scatter,
        double band,
        List<Cause> alike,
        List<String> tell) {

    public Suspect {
        alike = List.copyOf(alike);
        tell = List.copyOf(tell);
    }

    /**
     * Whether its size lies inside what is stated for it, so that nothing need be broken.
     *
     * @return true within two standard deviations of its band
     */
    public boolean insideBand() {
        return Math.abs(size) <= 2 * band;
    }

    /**
     * Its size in words.
     *
     * @param system the units
     * @return size and two standard uncertainties
     */
    public String sizeText(UnitSystem system) {
        return cause.size(size, 2 * standard, system);
    }
}
