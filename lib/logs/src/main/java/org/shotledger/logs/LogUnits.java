package org.shotledger.logs;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Spellings of units that stand in headings of logs and nowhere else. */
final class LogUnits {
    private static final Pattern PRESSURE = Pattern.compile(
            "(?i)(psi|bar|mbar|kpa|hpa|mpa|pa|inhg|mmhg|kgf/cm2|atm)[\\s(]*(gauge|gage|rel|g|absolute|abs|a)\\)?");
    private static final Map<String, String> USUAL = Map.ofEntries(
            Map.entry("1/min", "rpm"),
            Map.entry("min-1", "rpm"),
            Map.entry("r.p.m.", "rpm"),
            Map.entry("u/min", "rpm"),
            Map.entry("c", "degC"),
            Map.entry("f", "degF"),
            Map.entry("\u00b0c", "degC"),
            Map.entry("\u00b0f", "degF"),
            Map.entry("grad c", "degC"),
            Map.entry("deg.c", "degC"),
            Map.entry("deg.f", "degF"),
            Map.entry("deg_c", "degC"),
            Map.entry("deg_f", "degF"),
            Map.entry("degc", "degC"),
            Map.entry("degf", "degF"),
            Map.entry("celsius", "degC"),
            Map.entry("fahrenheit", "degF"),
            Map.entry("volt", "V"),
            Map.entry("volts", "V"),
            Map.entry("v", "V"),
            Map.entry("msec", "ms"),
            Map.entry("milliseconds", "ms"),
            Map.entry("second", "s"),
            Map.entry("secs", "s"),
            Map.entry("kph", "km/h"),
            Map.entry("kmh", "km/h"),
            Map.entry("kmph", "km/h"),
            Map.entry("prozent", "%"),
            Map.entry("nm", "N m"),
            Map.entry("ftlb", "lbf ft"),
            Map.entry("ft.lb", "lbf ft"),
            Map.entry("ft-lbs", "lbf ft"),
            Map.entry("lb.ft", "lbf ft"),
            Map.entry("kw", "kW"),
            Map.entry("bhp", "hp"),
            Map.entry("whp", "hp"),
            Map.entry("deg", "deg"),
            Map.entry("degrees", "deg"),
            Map.entry("\u00b0", "deg"),
            Map.entry("kpa", "kPa"),
            Map.entry("psi", "psi"),
            Map.entry("mbar", "mbar"),
            Map.entry("bar", "bar"));

    private LogUnits() {}

    /** The unit as the table of units spells it, with the reference of a pressure after it. */
    static String usual(String written) {
        String text = UnitsRow.bare(written).replace('_', ' ').strip();
        Matcher pressure = PRESSURE.matcher(text);
        String reference = "";
        if (pressure.matches()) {
            text = pressure.group(1);
            reference = pressure.group(2).toLowerCase(Locale.ROOT).startsWith("a") ? " abs" : " gauge";
        }
        return USUAL.getOrDefault(text.toLowerCase(Locale.ROOT), text) + reference;
    }
}
