package org.shotledger.logs;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * One and the same run, written down in a shape that a seed chooses: order of columns, units and where they stand, marks between cells
 * and in numbers, form of time, rate of each channel, lost rows, signs for no value, coding, lines above the headings.
 */
final class LogShape {
    static final double AMBIENT = 0.98e5;
    static final double STEP = 0.02;
    static final int ROWS = 200;

    /** A unit: how the file writes it, its factor and zero, and the digits written. */
    private record Unit(String name, double factor, double zero, int digits) {}

    private static final Map<LogChannel, List<Unit>> UNITS = new EnumMap<>(Map.of(
            LogChannel.ENGINE_SPEED, List.of(new Unit("rpm", 1, 0, 0), new Unit("1/min", 1, 0, 1)),
            LogChannel.MANIFOLD_PRESSURE,
                    List.of(
                            new Unit("kPa abs", 1e3, 0, 2),
                            new Unit("psi gauge", 6894.757293168, AMBIENT, 2),
                            new Unit("bar abs", 1e5, 0, 4),
                            new Unit("mbar abs", 100, 0, 0)),
            LogChannel.LAMBDA, List.of(new Unit("", 1, 0, 3), new Unit("", 1, 0, 4)),
            LogChannel.BOTTLE_PRESSURE,
                    List.of(
                            new Unit("psi gauge", 6894.757293168, AMBIENT, 0),
                            new Unit("bar gauge", 1e5, AMBIENT, 2),
                            new Unit("kPa abs", 1e3, 0, 1)),
            LogChannel.CHARGE_TEMPERATURE,
                    List.of(new Unit("\u00b0C", 1, 273.15, 1), new Unit("\u00b0F", 1 / 1.8, 459.67 / 1.8, 1)),
            LogChannel.WHEEL_POWER, List.of(new Unit("kW", 1e3, 0, 1), new Unit("hp", 745.69987158227022, 0, 1)),
            LogChannel.VEHICLE_SPEED, List.of(new Unit("km/h", 1 / 3.6, 0, 2), new Unit("mph", 0.44704, 0, 2)),
            LogChannel.NITROUS_ON, List.of(new Unit("", 1, 0, 0))));
    private static final String[] NOTHING = {"", "----", "NaN", "n/a", "-"};
    private static final String[][] FLAGS = {{"off", "on"}, {"0", "1"}, {"FALSE", "TRUE"}, {"AUS", "EIN"}, {"no", "yes"}
    };

    private final Random random;
    private final char delimiter;
    private final boolean comma;
    private final boolean thousands;
    private final boolean foreign;
    private final int unitPlace;
    private final int timeForm;
    private final LocalDateTime start;
    private final String nothing;
    private final String[] flags;
    private final List<LogChannel> order = new ArrayList<>(UNITS.keySet());
    private final Map<LogChannel, Unit> units = new EnumMap<>(LogChannel.class);
    private final Map<LogChannel, Integer> every = new EnumMap<>(LogChannel.class);
    private final Map<LogChannel, TreeMap<Double, Double>> expected = new EnumMap<>(LogChannel.class);

    LogShape(long seed) {
        random = new Random(seed);
        delimiter = ",;\t".charAt(random.nextInt(3));
        comma = random.nextBoolean();
        thousands = random.nextInt(3) == 0;
        foreign = random.nextBoolean();
        unitPlace = random.nextInt(foreign ? 4 : 3);
        timeForm = random.nextInt(5);
        start = LocalDateTime.of(2026, 11, 29, random.nextInt(24), random.nextInt(60), random.nextInt(60));
        nothing = NOTHING[random.nextInt(NOTHING.length)];
        flags = FLAGS[random.nextInt(FLAGS.length)];
        Collections.shuffle(order, random);
        order.add(random.nextBoolean() ? 0 : random.nextInt(order.size()), LogChannel.TIME);
        for (LogChannel channel : UNITS.keySet()) {
            List<Unit> choices = UNITS.get(channel);
            units.put(channel, choices.get(random.nextInt(choices.size())));
            every.put(channel, new int[] {1, 1, 2, 5}[random.nextInt(4)]);
            expected.put(channel, new TreeMap<>());
        }
        units.put(LogChannel.TIME, timeForm == 1 ? new Unit("ms", 1e-3, 0, 0) : new Unit("s", 1, 0, 3));
    }

    /** The run itself, SI. */
    static double truth(LogChannel channel, double t) {
        double share = t / (ROWS * STEP);
        return switch (channel) {
            case ENGINE_SPEED -> 3000 + 4000 * share;
            case MANIFOLD_PRESSURE -> 1.1e5 + 1.4e5 * share * (2 - share) / 1.2;
            case LAMBDA -> 0.86 - 0.07 * share - 0.02 * share * share;
            case BOTTLE_PRESSURE -> 66e5 - 5e5 * share;
            case CHARGE_TEMPERATURE -> 305 + 20 * share;
            case WHEEL_POWER -> 1.5e5 + 2.8e5 * share;
            case VEHICLE_SPEED -> 25 + 35 * share;
            default -> share > 0.3 && share < 0.8 ? 1 : 0;
        };
    }

    /** What a faithful reader finds: for each channel the samples over seconds since the first row. */
    @SuppressWarnings("NonApiType") // the test walks it both ways
    Map<LogChannel, TreeMap<Double, Double>> expected() {
        return expected;
    }

    /** Half a digit of what was written, SI. */
    double tolerance(LogChannel channel) {
        Unit unit = units.get(channel);
        return 0.5000001 * unit.factor() * Math.pow(10, -unit.digits()) + 1e-9 * Math.abs(truth(channel, 0));
    }

    /** The mapping beside the log; empty where its headings are ours. */
    String mapping() {
        StringBuilder text = new StringBuilder("ambient: 0.98 bar abs\nchannels:\n");
        for (LogChannel channel : foreign ? order : List.<LogChannel>of()) {
            text.append(String.format("  %s: {column: \"%s\"", channel.key(), heading(channel)));
            boolean clock = channel == LogChannel.TIME && timeForm > 1;
            if (unitPlace == 3 && !units.get(channel).name().isEmpty() && !clock) {
                text.append(String.format(", unit: \"%s\"", units.get(channel).name()));
            }
            text.append("}\n");
        }
        return foreign
                ? text.toString()
                : text.append("  time: {column: time}\n").toString();
    }

    private String heading(LogChannel channel) {
        return foreign ? "Kanal " + (char) ('A' + List.of(LogChannel.values()).indexOf(channel)) : channel.words();
    }

    byte[] bytes() {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(5); i > 0; i--) {
            text.append(List.of(
                                    "Recorded at the strip",
                                    "Lane" + delimiter + "left",
                                    "# remark",
                                    "",
                                    "Ger\u00e4t: keines")
                            .get(random.nextInt(5)))
                    .append('\n');
        }
        text.append(line(order.stream().map(this::headingWithUnit).toList()));
        if (unitPlace == 2) {
            text.append(line(order.stream().map(this::unit).toList()));
        }
        int gap = 60 + random.nextInt(60);
        int lost = random.nextInt(3) * 6;
        for (int i = 0; i < ROWS; i++) {
            boolean missing = (i >= gap && i < gap + lost) || (i > 0 && random.nextInt(40) == 0);
            if (!missing) {
                text.append(line(row(i)));
            }
        }
        return coded(text.toString());
    }

    private String headingWithUnit(LogChannel channel) {
        String unit = unit(channel);
        if (unitPlace > 1 || unit.isEmpty()) {
            return heading(channel);
        }
        return heading(channel) + (unitPlace == 0 ? " [" + unit + "]" : " (" + unit + ")");
    }

    private String unit(LogChannel channel) {
        return channel == LogChannel.TIME && timeForm > 1
                ? ""
                : units.get(channel).name();
    }

    private List<String> row(int i) {
        double t = i * STEP;
        List<String> cells = new ArrayList<>();
        for (LogChannel channel : order) {
            if (channel == LogChannel.TIME) {
                cells.add(time(t));
            } else if (i % every.get(channel) != 0) {
                cells.add(nothing);
            } else {
                double si = truth(channel, t);
                Unit unit = units.get(channel);
                cells.add(
                        channel == LogChannel.NITROUS_ON
                                ? flags[(int) si]
                                : number((si - unit.zero()) / unit.factor(), unit.digits()));
                expected.get(channel).put(t, si);
            }
        }
        return cells;
    }

    private String time(double t) {
        LocalDateTime moment = start.plusNanos(Math.round(t * 1e9));
        return switch (timeForm) {
            case 0 -> number(t, 3);
            case 1 -> number(1000 * t, 0);
            case 2 -> moment.format(DateTimeFormatter.ofPattern("HH:mm:ss.SSS", Locale.ROOT));
            case 3 -> moment.format(DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT));
            default -> moment.format(DateTimeFormatter.ofPattern("dd.MM.yyyy hh:mm:ss.SSS a", Locale.US));
        };
    }

    private String number(double value, int digits) {
        String plain = String.format(Locale.US, (thousands ? "%,." : "%.") + digits + "f", value);
        return comma ? plain.replace('.', '_').replace(',', '.').replace('_', ',') : plain;
    }

    private String line(List<String> cells) {
        return String.join(
                        String.valueOf(delimiter),
                        cells.stream()
                                .map(c -> c.indexOf(delimiter) >= 0 ? '"' + c + '"' : c)
                                .toList())
                + "\n";
    }

    private byte[] coded(String text) {
        String ends = random.nextBoolean() ? text : text.replace("\n", "\r\n");
        int coding = random.nextInt(7);
        Charset charset = List.of(
                        StandardCharsets.UTF_8,
                        StandardCharsets.ISO_8859_1,
                        StandardCharsets.UTF_16LE,
                        StandardCharsets.UTF_16BE,
                        StandardCharsets.UTF_8,
                        StandardCharsets.UTF_16LE,
                        StandardCharsets.UTF_16BE)
                .get(coding);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes((coding > 3 ? "\uFEFF" + ends : ends).getBytes(charset));
        return out.toByteArray();
    }

    @Override
    public String toString() {
        return String.format(
                "delimiter '%s', decimal comma %s, thousands %s, foreign headings %s, units %d, time %d, start %s, nothing '%s'",
                delimiter, comma, thousands, foreign, unitPlace, timeForm, start, nothing);
    }
}
