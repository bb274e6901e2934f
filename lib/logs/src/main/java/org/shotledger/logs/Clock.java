package org.shotledger.logs;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads clock times down a column, with or without a date, as seconds since the midnight before the first of them.
 *
 * <p>Read are {@code 14:03:00.020}, {@code 2:03:00 PM}, {@code 03:00.020} (minutes and seconds), and the date and time of ISO 8601
 * ({@code 2026-11-29T14:03:00.020Z}; the zone is taken to be the same all along). Other dates are compared as text: whether day or
 * month stands first does not matter, for another date is the next day. Without a date the clock passes midnight where it falls
 * from the last hour of a day into the first.
 */
final class Clock {
    private static final Pattern TIME =
            Pattern.compile("(?:(\\S+?)(?:T|\\s+))?(\\d{1,4}):(\\d{2})(?::(\\d{2})(?:[.,:](\\d{1,9}))?|[.,](\\d{1,9}))?"
                    + "(?:\\s*([aApP])\\.?[mM]\\.?)?(?:\\s*(?:Z|[+-]\\d{2}(?::?\\d{2})?))?");
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.]?(\\d{2})[-/.]?(\\d{2})");
    private static final Pattern OTHER_DATE = Pattern.compile("\\d{1,2}[-/.]\\d{1,2}[-/.](\\d{2}|\\d{4})");
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    private String date = "";
    private long firstDay = Long.MIN_VALUE;
    private double days;
    private double before = Double.NaN;

    /** Whether a cell has the look of a clock time. */
    static boolean looksLike(String cell) {
        return cell.indexOf(':') > 0 && TIME.matcher(cell).matches();
    }

    /** Seconds; NaN where the cell is no clock time. */
    double read(String cell) {
        Matcher m = TIME.matcher(cell);
        if (!m.matches()) {
            return Double.NaN;
        }
        double within = seconds(m);
        if (Double.isNaN(within) || !passDate(m.group(1) == null ? "" : m.group(1), within)) {
            return Double.NaN;
        }
        before = within;
        return days * DAY + within;
    }

    private static double seconds(Matcher m) {
        boolean half = m.group(7) != null;
        double first = Double.parseDouble(m.group(2));
        double second = Double.parseDouble(m.group(3));
        boolean hours = m.group(4) != null || half;
        double third = m.group(4) == null ? 0 : Double.parseDouble(m.group(4));
        String digits = m.group(5) != null ? m.group(5) : m.group(6);
        double part = digits == null ? 0 : Double.parseDouble("0." + digits);
        if (!hours) {
            return second >= 60 ? Double.NaN : 60 * first + second + part;
        }
        if (first > (half ? 12 : 23) || second >= 60 || third > 60) {
            return Double.NaN;
        }
        double hour = half ? first % 12 + (m.group(7).equalsIgnoreCase("p") ? 12 : 0) : first;
        return HOUR * hour + 60 * second + (third + part);
    }

    /** Counts the days; false when the date is none. */
    private boolean passDate(String written, double within) {
        Matcher iso = ISO.matcher(written);
        if (iso.matches()) {
            try {
                long day = LocalDate.of(number(iso, 1), number(iso, 2), number(iso, 3))
                        .toEpochDay();
                firstDay = firstDay == Long.MIN_VALUE ? day : firstDay;
                days = day - firstDay;
                return true;
            } catch (DateTimeException e) {
                return false;
            }
        }
        if (written.isEmpty()) {
            days += before >= DAY - HOUR && within < HOUR ? 1 : 0;
        } else if (OTHER_DATE.matcher(written).matches()) {
            days += date.isEmpty() || date.equals(written) ? 0 : 1;
            date = written;
        } else {
            return false;
        }
        return true;
    }

    private static int number(Matcher m, int group) {
        return Integer.parseInt(m.group(group));
    }
}
