package org.shotledger.logs;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Words by which headings name channels: everyday words and short forms of the trade, English and German. A heading is taken in
 * lower case, its parts divided by single spaces.
 */
final class HeadingWords {
    private static final String NITROUS = "(nitrous|n2o|lachgas)";
    private static final String PRESSURE = "(press|pressure|p|druck)";
    private static final String TEMPERATURE = "(temp|temperature|t|temperatur)";
    private static final Map<LogChannel, HeadingWords> ALL = new EnumMap<>(LogChannel.class);

    static {
        add(
                LogChannel.TIME,
                "time|zeit|time ?stamp|clock|uhrzeit|elapsed|log time",
                "t|sec|seconds",
                "lap|shift|dead|inj|open|pulse");
        add(
                LogChannel.ENGINE_SPEED,
                "rpm|engine rpm|eng(ine)? (speed|spd|revs)|motor ?drehzahl|drehzahl|crank speed|revs",
                "n|n mot",
                "turbo|wheel|shaft|target|limit|pump|fan|ziel|aim|soll");
        add(
                LogChannel.THROTTLE,
                "throttle|throttle pos(ition)?|tps|drosselklappe",
                "pedal|thr|accel pos",
                "target|soll|aim|volt");
        add(
                LogChannel.MANIFOLD_PRESSURE,
                "map|boost|manifold " + PRESSURE + "|manifold|boost " + PRESSURE + "|intake " + PRESSURE + "|plenum "
                        + PRESSURE + "|ladedruck|saugrohr ?druck",
                "inlet " + PRESSURE + "|charge " + PRESSURE,
                "target|aim|control|duty|soll|temp|switch|fuel|map no");
        add(
                LogChannel.LAMBDA,
                "lambda|lambda \\d|afr|afr \\d|air fuel( ratio)?|wideband|o2 lambda",
                "lam|o2|ratio|mixture",
                "target|aim|trim|corr|correction|soll|volt|demand|error|temp|heater");
        add(
                LogChannel.NITROUS_FUEL_PRESSURE,
                NITROUS + " fuel " + PRESSURE + "|fuel " + PRESSURE + " " + NITROUS + "|wet fuel " + PRESSURE,
                NITROUS + " fuel|enrichment fuel " + PRESSURE,
                "temp|target");
        add(
                LogChannel.FUEL_PRESSURE,
                "fuel " + PRESSURE + "|rail " + PRESSURE + "|fuel rail( " + PRESSURE
                        + ")?|kraftstoff ?druck|benzindruck",
                "fp|f press",
                NITROUS + "|wet|target|temp|soll");
        add(
                LogChannel.BOTTLE_PRESSURE,
                "bottle " + PRESSURE + "|" + NITROUS + " " + PRESSURE + "|" + NITROUS + " bottle " + PRESSURE
                        + "|flaschen ?druck|bottle",
                NITROUS + " supply|cylinder " + PRESSURE,
                "fuel|temp|heater");
        add(
                LogChannel.NITROUS_ON,
                NITROUS + " (on|state|active|enable|enabled|solenoid|status|flag|aktiv)|" + NITROUS,
                "solenoid|spray|wet kit",
                "press|pressure|druck|temp|fuel p|fuel press|fuel pressure|flow|duty|arm|armed");
        add(
                LogChannel.CHARGE_TEMPERATURE,
                "iat|mat|act|charge " + TEMPERATURE + "|charge air " + TEMPERATURE + "|intake( air)? " + TEMPERATURE
                        + "|manifold( air)? " + TEMPERATURE + "|ladeluft ?temperatur|ansaugluft ?temperatur|air "
                        + TEMPERATURE,
                "inlet " + TEMPERATURE,
                "ambient|oil|coolant|water|before|turbo");
        add(
                LogChannel.BOTTLE_TEMPERATURE,
                "bottle " + TEMPERATURE + "|" + NITROUS + " " + TEMPERATURE,
                "flaschen " + TEMPERATURE,
                "fuel");
        add(
                LogChannel.BATTERY_VOLTAGE,
                "batt|battery|battery (v|volt|volts|voltage)|batt (v|volt|volts|voltage)|vbat|bordspannung|batteriespannung",
                "supply volts?|voltage|volts|ecu volts?",
                "sensor|o2|tps|ref|throttle");
        add(
                LogChannel.WHEEL_POWER,
                "wheel (power|pwr|hp|kw)|whp|power wheels?|rad ?leistung",
                "power|pwr|leistung|hp",
                "crank|engine|brake|flywheel|corr|steering");
        add(LogChannel.CRANK_POWER, "(crank|engine|brake|flywheel) (power|pwr|hp|kw)|bhp|motor ?leistung", "", "wheel");
        add(
                LogChannel.WHEEL_TORQUE,
                "wheel (torque|tq)|torque wheels?|rad ?drehmoment",
                "torque|tq|drehmoment",
                "crank|engine|brake|flywheel|limit|request");
        add(
                LogChannel.CRANK_TORQUE,
                "(crank|engine|brake|flywheel) (torque|tq)|motor ?drehmoment",
                "",
                "wheel|limit|request");
        add(
                LogChannel.INJECTOR_DUTY,
                "inj(ector)? (duty|dc|dty)( cycle)?|injector \\d duty|idc|einspritz tastverh\u00e4ltnis",
                "duty|duty cycle",
                "boost|wastegate|pump|fan|" + NITROUS);
        add(
                LogChannel.SPARK,
                "spark|ign(ition)? (timing|adv|advance|angle)|spark (timing|adv|advance|angle)|timing|z\u00fcnd ?winkel|advance",
                "ign|ignition",
                "retard|trim|knock|corr|target");
        add(
                LogChannel.VEHICLE_SPEED,
                "vehicle (speed|spd)|veh (speed|spd)|ground speed|gps speed|road speed|vss|fahr ?geschwindigkeit|geschwindigkeit",
                "speed|spd",
                "engine|eng|turbo|driven|crank|shaft|target|limit|wind|rear|fan");
        add(LogChannel.GEAR, "gear|gear (pos|position|no|number)|gang", "", "temp|oil|ratio|target|shift");
    }

    private final Pattern strong;
    private final Pattern weak;
    private final Pattern other;

    private HeadingWords(String strong, String weak, String other) {
        this.strong = Pattern.compile(strong);
        this.weak = Pattern.compile(weak);
        this.other = Pattern.compile(".*\\b(" + other + ")\\b.*");
    }

    private static void add(LogChannel channel, String strong, String weak, String other) {
        ALL.put(channel, new HeadingWords(strong, weak, other));
    }

    /** How well a heading names a channel: 3 when it says nothing else, 2 when its words are in it, 1 when it might, 0. */
    static int names(LogChannel channel, String heading) {
        String words = plain(heading);
        if (words.equals(channel.words())) {
            return 3;
        }
        HeadingWords of = ALL.get(channel);
        if (of.other.matcher(words).matches()) {
            return 0;
        }
        if (of.strong.matcher(words).matches()) {
            return 3;
        }
        if (within(of.strong, words)) {
            return 2;
        }
        return of.weak.matcher(words).matches() || (words.length() > 3 && within(of.weak, words)) ? 1 : 0;
    }

    private static boolean within(Pattern pattern, String words) {
        var matcher = pattern.matcher(words);
        while (matcher.find()) {
            boolean begins = matcher.start() == 0 || words.charAt(matcher.start() - 1) == ' ';
            boolean ends = matcher.end() == words.length() || words.charAt(matcher.end()) == ' ';
            if (begins && ends && matcher.end() > matcher.start()) {
                return true;
            }
        }
        return false;
    }

    static String plain(String heading) {
        return heading.replaceAll("(\\p{Ll})(\\p{Lu})", "$1 $2")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\d]+", " ")
                .strip();
    }
}
