package org.shotledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The tables of a first sheet: generic ones scaled to the figures that are known. */
final class FirstTables {
    private static final String NOTE = "# Estimated, common practice, no source: ";

    private FirstTables() {}

    /** Flow, pressure ratio less one and wheel speed of the generic map times shares of their own. */
    static String compressor(String generic, double flow, double rise, double speed) {
        return scaled(
                generic,
                NOTE
                        + "a generic map scaled to the rated flow and pressure ratio; replace it by points read off the real one.",
                new double[] {speed, flow, rise, 1},
                2);
    }

    /** Flow of the generic pump times a share, current with it. */
    static String pump(String generic, double flow) {
        return scaled(
                generic,
                NOTE + "a generic pump scaled to the flow at 3 bar; replace it by the pump's own sheet.",
                new double[] {1, 1, flow, Math.sqrt(flow)},
                -1);
    }

    /** Numbers of each row times shares; of one column what lies above 1. */
    private static String scaled(String generic, String note, double[] shares, int aboveOne) {
        List<String> lines = new ArrayList<>();
        lines.add(note);
        for (String line : generic.lines().toList()) {
            if (line.startsWith("#")) {
                if (line.startsWith("# Corrected")) {
                    lines.add(line);
                }
                continue;
            }
            if (!Character.isDigit(line.charAt(0))) {
                lines.add(line);
                continue;
            }
            String[] cells = line.split(",", -1);
            for (int i = 0; i < cells.length; i++) {
                double value = Double.parseDouble(cells[i]);
                double then = i == aboveOne ? 1 + (value - 1) * shares[i] : value * shares[i];
                cells[i] = shares[i] == 1 ? cells[i] : number(then);
            }
            lines.add(String.join(",", cells));
        }
        return String.join("\n", lines) + "\n";
    }

    /** Five significant digits. */
    static String number(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(5))
                .stripTrailingZeros()
                .toPlainString();
    }

    static String breathing(double[] rpm, double[] efficiency) {
        StringBuilder text = new StringBuilder(NOTE)
                .append("from the power of the pull; replace it by what logged air flow and plenum state give.\n")
                .append("engine speed [rpm],volumetric efficiency\n");
        for (int i = 0; i < rpm.length; i++) {
            text.append(String.format(Locale.ROOT, "%.0f,%.3f\n", rpm[i], efficiency[i]));
        }
        return text.toString();
    }

    static String pull(List<FirstFigures.Pulled> points) {
        StringBuilder text = new StringBuilder("# The pull as it was given.\n")
                .append("engine speed [rpm],wheel power [kW],boost [bar gauge]\n");
        points.forEach(p -> text.append(
                String.format(Locale.ROOT, "%.0f,%.2f,%.3f\n", p.rpm(), p.wheelPower() / 1e3, p.boost() / 1e5)));
        return text.toString();
    }
}
