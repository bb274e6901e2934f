package org.shotledger.build;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One value in which two builds differ.
 *
 * @param path its place in the sheet
 * @param before the value as written in the first; empty when it does not stand there
 * @param after the value as written in the second; empty when it does not stand there
 * @param change relative change of the figure; NaN for words and for figures without a counterpart
 */
public record Difference(String path, String before, String after, double change) {
    /** Figures closer than this are the same figure in two units. */
    private static final double SAME = 1e-9;

    static List<Difference> between(Build first, Build second) {
        Set<String> paths = new LinkedHashSet<>(first.origins().keySet());
        paths.addAll(second.origins().keySet());
        List<Difference> list = new ArrayList<>();
        for (String path : paths) {
            Origin a = first.origins().get(path);
            Origin b = second.origins().get(path);
            if (a == null || b == null || !same(a, b)) {
                list.add(new Difference(path, text(a), text(b), change(a, b)));
            }
        }
        if (!first.engine().volumetricEfficiency().equals(second.engine().volumetricEfficiency())) {
            list.add(new Difference("engine.volumetric-efficiency (table)", "", "", Double.NaN));
        }
        if (!first.turbo().map().equals(second.turbo().map())) {
            list.add(new Difference("turbo.compressor.map (table)", "", "", Double.NaN));
        }
        if (!first.injection().pumps().equals(second.injection().pumps())) {
            list.add(new Difference("injection.pumps.curve (table)", "", "", Double.NaN));
        }
        if (!first.wetKit().fuel().pumps().equals(second.wetKit().fuel().pumps())) {
            list.add(new Difference("wet-kit.fuel.pumps.curve (table)", "", "", Double.NaN));
        }
        if (!first.wetKit().ladder().equals(second.wetKit().ladder())) {
            list.add(new Difference("wet-kit.jet-ladder (table)", "", "", Double.NaN));
        }
        return list;
    }

    private static boolean same(Origin a, Origin b) {
        if (Double.isNaN(a.value()) || Double.isNaN(b.value())) {
            return a.text().equals(b.text());
        }
        return Math.abs(a.value() - b.value()) <= SAME * Math.max(Math.abs(a.value()), Math.abs(b.value()));
    }

    private static String text(Origin origin) {
        return origin == null ? "" : origin.text();
    }

    private static double change(Origin a, Origin b) {
        return a == null || b == null ? Double.NaN : (b.value() - a.value()) / Math.abs(a.value());
    }

    @Override
    public String toString() {
        String values = before.isEmpty() && after.isEmpty() ? "differs" : said(before) + " -> " + said(after);
        String relative =
                Double.isFinite(change) ? String.format(java.util.Locale.ROOT, " (%+.1f %%)", 100 * change) : "";
        return path + ": " + values + relative;
    }

    private static String said(String value) {
        return value.isEmpty() ? "(not stated)" : value;
    }
}
