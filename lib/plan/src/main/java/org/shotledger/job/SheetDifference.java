package org.shotledger.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.units.Excerpt;
import org.shotledger.units.QuantityKind;

/**
 * One value in which two jobs differ, or the reason of a value.
 *
 * @param path its place in the sheet
 * @param before the value as written in the first; empty when it does not stand there
 * @param after the value as written in the second; empty when it does not stand there
 * @param change relative change of the figure; NaN for words, for figures without a counterpart, and for temperatures and
 *     gauge pressures, whose zero is a convention
 * @param reasonBefore how the first value is known and why, for example {@code "measured: bore gauge"}
 * @param reasonAfter how the second value is known and why; equal to the other when that did not change
 */
public record SheetDifference(
        String path, String before, String after, double change, String reasonBefore, String reasonAfter) {
    /** Figures closer than this are the same figure in two units. */
    private static final double SAME = 1e-9;

    private static final Set<QuantityKind> CONVENTIONAL = Set.of(QuantityKind.TEMPERATURE, QuantityKind.GAUGE_PRESSURE);
    /** A table's comments may be long; a line need not. */
    private static final int LONGEST_REASON = 100;

    static List<SheetDifference> between(Job first, Job second) {
        Set<String> paths = new LinkedHashSet<>(first.car().origins().keySet());
        paths.addAll(second.car().origins().keySet());
        List<SheetDifference> list = new ArrayList<>();
        for (String path : paths) {
            Origin a = first.car().origins().get(path);
            Origin b = second.car().origins().get(path);
            if (a == null || b == null || !same(a, b) || !reason(a).equals(reason(b))) {
                list.add(new SheetDifference(path, text(a), text(b), change(a, b), reason(a), reason(b)));
            }
        }
        tables(first, second, list);
        return list;
    }

    private static void tables(Job first, Job second, List<SheetDifference> list) {
        table(
                "engine.volumetric-efficiency",
                first.car().engine().volumetricEfficiency(),
                second.car().engine().volumetricEfficiency(),
                list);
        table(
                "turbo.compressor.map",
                first.car().turbo().map(),
                second.car().turbo().map(),
                list);
        table(
                "injection.injector.dead-time-table",
                first.car().injection().injector().deadTime(),
                second.car().injection().injector().deadTime(),
                list);
        table(
                "injection.pumps.curve",
                first.car().injection().pumps().pumps().get(0),
                second.car().injection().pumps().pumps().get(0),
                list);
        table(
                "nitrous-system.fuel.pumps.curve",
                first.car()
                        .nitrous()
                        .fuel()
                        .cell()
                        .map(cell -> cell.pumps().pumps().get(0)),
                second.car()
                        .nitrous()
                        .fuel()
                        .cell()
                        .map(cell -> cell.pumps().pumps().get(0)),
                list);
        table(
                "nitrous-system.jet-ladder",
                first.car().nitrous().ladder(),
                second.car().nitrous().ladder(),
                list);
        pull(first.car(), second.car(), list);
    }

    /** The curve of a pull, where what is made of it differs by the table alone and not by losses and corrections stated elsewhere. */
    private static void pull(Car first, Car second, List<SheetDifference> list) {
        boolean curves = Stream.of(first, second)
                .allMatch(car -> car.origin("base-pull.curve").isPresent());
        if (curves
                && first.driveline().equals(second.driveline())
                && first.basePull().correction().equals(second.basePull().correction())) {
            table(
                    "base-pull.curve",
                    first.basePull().points(),
                    second.basePull().points(),
                    list);
        }
    }

    private static void table(String path, Object a, Object b, List<SheetDifference> list) {
        if (!a.equals(b)) {
            list.add(new SheetDifference(path + " (table)", "", "", Double.NaN, "", ""));
        }
    }

    /** The same figure, band included, or the same words. */
    private static boolean same(Origin a, Origin b) {
        if (a.kind() == null || a.kind() != b.kind()) {
            return a.text().equals(b.text());
        }
        boolean bands =
                Double.isNaN(a.uncertainty()) ? Double.isNaN(b.uncertainty()) : close(a.uncertainty(), b.uncertainty());
        return close(a.value(), b.value()) && bands;
    }

    private static boolean close(double a, double b) {
        return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
    }

    private static String text(Origin origin) {
        return origin == null ? "" : origin.text();
    }

    private static String reason(Origin origin) {
        if (origin == null) {
            return "";
        }
        return origin.from().isEmpty() ? origin.provenance() : origin.provenance() + ": " + origin.from();
    }

    private static double change(Origin a, Origin b) {
        return a == null || b == null || a.kind() != b.kind() || (a.kind() != null && CONVENTIONAL.contains(a.kind()))
                ? Double.NaN
                : (b.value() - a.value()) / Math.abs(a.value());
    }

    @Override
    public String toString() {
        StringBuilder line = new StringBuilder(path).append(": ");
        if (before.isEmpty() && after.isEmpty()) {
            return line.append("differs").toString();
        }
        line.append(before.equals(after) ? "still " + after : said(before) + " -> " + said(after));
        if (Double.isFinite(change) && !before.equals(after)) {
            line.append(String.format(Locale.ROOT, " (%+.1f %%)", 100 * change));
        }
        if (!reasonBefore.equals(reasonAfter)) {
            line.append("; reason: ").append(shown(reasonBefore)).append(" -> ").append(shown(reasonAfter));
        }
        return line.toString();
    }

    private static String shown(String reason) {
        return Excerpt.of(said(reason), LONGEST_REASON);
    }

    private static String said(String value) {
        return value.isEmpty() ? "(not stated)" : value;
    }
}
