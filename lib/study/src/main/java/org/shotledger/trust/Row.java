package org.shotledger.trust;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One row of the table. */
record Row(
        String id, String subject, String inputs, String expected, String tolerance, String source, String strength) {
    private static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?";

    /** The rows of a table of published engine values. */
    static List<Row> all(Path table) {
        return Cells.of(table).stream().map(Row::of).toList();
    }

    private static Row of(List<String> c) {
        return new Row(c.get(0), c.get(1), c.get(3), c.get(4), c.get(6), c.get(7), c.get(9));
    }

    /** The input named, as written in the row. */
    double in(String key) {
        Matcher m = Pattern.compile("(?:^|[;,|\\s])" + Pattern.quote(key) + "\\s*=\\s*(" + NUMBER + ")")
                .matcher(inputs);
        if (!m.find()) {
            throw new IllegalStateException(id + " has no input " + key + " in: " + inputs);
        }
        return Double.parseDouble(m.group(1));
    }

    /** The published numbers. */
    double[] values() {
        return numbers(expected.replaceAll("(?<=\\d)-(?=\\d)", " "));
    }

    /** The allowed error of each value. */
    double[] errors() {
        double[] values = values();
        String[] stated = tolerance.isBlank() ? new String[] {"0.000001%"} : tolerance.split(";", -1);
        double[] errors = new double[values.length];
        for (int i = 0; i < errors.length; i++) {
            String text = stated[Math.min(i, stated.length - 1)].trim();
            errors[i] = text.endsWith("%")
                    ? Math.abs(values[i]) * Double.parseDouble(text.substring(0, text.length() - 1)) / 100
                    : Double.parseDouble(text);
        }
        return errors;
    }

    private static double[] numbers(String text) {
        Matcher m = Pattern.compile(NUMBER).matcher(text);
        List<Double> found = new ArrayList<>();
        while (m.find()) {
            found.add(Double.parseDouble(m.group()));
        }
        return found.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public String toString() {
        return id + " " + subject;
    }
}
