package org.shotledger.reconcile;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One figure of a log over what the plan expected, at round engine speeds of a pull.
 *
 * @param what the figure
 * @param rpm engine speeds, rev/min, rising
 * @param time when each was passed, s
 * @param measured the log, smoothed, SI; NaN where it is not to be trusted
 * @param expected the plan, SI; NaN where it has no answer
 * @param parts the differences with the nitrous off and on
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record Overlay(
        ComparedChannel what, double[] rpm, double[] time, double[] measured, double[] expected, List<Part> parts) {

    public Overlay {
        parts = List.copyOf(parts);
    }

    /** What a difference may come from. */
    public enum Judgement {
        /** Smaller than two standard uncertainties of what parts may differ, or of all the plan states. */
        WITHIN("inside"),
        /** Larger than what parts may differ, inside what the plan's models do not know. */
        BEYOND_TOLERANCE("beyond the tolerance of parts"),
        /** Larger than everything the plan states. */
        BEYOND("beyond"),
        /** The plan states no uncertainty. */
        UNSTATED("no uncertainty stated"),
        /** Too few values to be trusted. */
        NOT_COMPARED("not compared");

        private final String words;

        Judgement(String words) {
            this.words = words;
        }

        /**
         * In words.
         *
         * @return for example {@code "beyond"}
         */
        public String words() {
            return words;
        }
    }

    /**
     * The differences with the nitrous off, or on.
     *
     * @param nitrousOn which of the two
     * @param rpmLow lowest engine speed compared, rev/min; NaN when there is none
     * @param rpmHigh highest engine speed compared, rev/min; NaN likewise
     * @param points how many engine speeds were compared
     * @param left how many were left out because the log is not to be trusted there
     * @param mean mean of log less plan, SI; NaN when too few points could be compared
     * @param greatest log less plan where it is greatest in size, SI; NaN likewise
     * @param greatestAt engine speed there, rev/min; NaN likewise
     * @param uncertainty standard uncertainties of the plan there
     * @param judgement whether the mean lies inside them
     */
    public record Part(
            boolean nitrousOn,
            double rpmLow,
            double rpmHigh,
            int points,
            int left,
            double mean,
            double greatest,
            double greatestAt,
            Uncertainty uncertainty,
            Judgement judgement) {

        /**
         * Which part, in words.
         *
         * @return {@code "nitrous on"} or {@code "nitrous off"}
         */
        public String words() {
            return nitrousOn ? "nitrous on" : "nitrous off";
        }
    }

    /**
     * The part with the nitrous on, or off.
     *
     * @param nitrousOn which
     * @return the part, or empty when the pull has none
     */
    public Optional<Part> part(boolean nitrousOn) {
        return parts.stream().filter(p -> p.nitrousOn() == nitrousOn).findFirst();
    }

    /**
     * A part in one sentence.
     *
     * @param part a part of this overlay
     * @param system the units
     * @return how far the log lies off, where most, and what explains it
     */
    public String sentence(Part part, UnitSystem system) {
        String begin = String.format(Locale.ROOT, "With the %s ", part.words());
        if (part.judgement() == Judgement.NOT_COMPARED) {
            return begin + what.words() + " cannot be compared: only " + part.points()
                    + " engine speeds have values to be trusted.";
        }
        String left = part.left() == 0
                ? ""
                : String.format(
                        Locale.ROOT, " (%d engine speeds left out, the log is not to be trusted there)", part.left());
        return String.format(
                Locale.ROOT,
                "%sfrom %.0f to %.0f rpm%s %s was %s on average, at most %s at %.0f rpm; %s.",
                begin,
                part.rpmLow(),
                part.rpmHigh(),
                left,
                what.words(),
                difference(part.mean(), system, " than expected"),
                difference(part.greatest(), system, ""),
                part.greatestAt(),
                judged(part, system));
    }

    private String judged(Part part, UnitSystem system) {
        Uncertainty uncertainty = part.uncertainty();
        return switch (part.judgement()) {
            case WITHIN ->
                Double.isNaN(uncertainty.tolerance()) || Math.abs(part.mean()) > 2 * uncertainty.tolerance()
                        ? "that is inside what " + uncertainty.allWords() + " explain" + plural(uncertainty.allWords())
                                + two(uncertainty.all(), system)
                        : "that is inside what " + uncertainty.toleranceWords() + " explains"
                                + two(uncertainty.tolerance(), system);
            case BEYOND_TOLERANCE ->
                "that is beyond what " + uncertainty.toleranceWords() + " explains"
                        + two(uncertainty.tolerance(), system)
                        + ", inside what " + uncertainty.allWords() + " may hide" + two(uncertainty.all(), system)
                        + "; find out which before the next step";
            case BEYOND ->
                "that is beyond what " + uncertainty.allWords() + " explain" + plural(uncertainty.allWords())
                        + two(uncertainty.all(), system) + "; something differs from the plan";
            default -> "the plan states no uncertainty for it";
        };
    }

    private String difference(double off, UnitSystem system, String than) {
        String size = size(off, system);
        return size.equals(size(0, system)) ? "as expected" : size + " " + what.direction(off) + than;
    }

    private static String plural(String words) {
        return words.contains(" and ") ? "" : "s";
    }

    private String two(double standard, UnitSystem system) {
        return " (" + size(2 * standard, system) + ", two standard uncertainties)";
    }

    private String size(double difference, UnitSystem system) {
        QuantityKind kind = what.difference();
        return kind.text(Math.abs(difference), system);
    }
}
