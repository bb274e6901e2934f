package org.shotledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetEdits;
import org.shotledger.sheet.SheetNode;
import org.shotledger.sheet.SheetNode.Items;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetNode.Scalar;
import org.shotledger.sheet.SheetReading;
import org.shotledger.sheet.SheetSection;
import org.shotledger.sheet.YamlSheet;

/**
 * The formats of a job sheet. A sheet of an older format is brought up to date in its text, step by step, before it is read,
 * so that saving it keeps every comment.
 *
 * <p>To change the sheet in a way old sheets do not follow: raise {@link #CURRENT}, add a step to {@link #upgrade}, keep a
 * sheet of the old format among the tests. A new value with a default needs no new format.
 *
 * <ul>
 *   <li>1: the first.
 *   <li>2: {@code bottle.thermostat} is {@code bottle.heater-off-temperature}, beside which a pressure switch can be named as
 *       {@code heater-off-pressure}; {@code engine.valves-per-cylinder} and {@code electrical.bottle-distance}, which nothing
 *       was calculated from, are gone.
 *   <li>3: the section {@code wet-kit} is {@code nitrous-system} and its {@code window} is {@code arming}; the word
 *       {@code standing} beside a figure is {@code provenance}.
 * </ul>
 */
final class SheetFormat {
    static final int CURRENT = 3;

    /** The key as it stood, first on its line or within braces. */
    private static final Pattern STANDING = Pattern.compile("(?m)(^\\s*|[{,]\\s*)standing\\s*:");

    private final SheetEdits edits;
    private final String file;
    private final List<Problem> notices = new ArrayList<>();

    private SheetFormat(SheetEdits edits, String file) {
        this.edits = edits;
        this.file = file;
    }

    /**
     * A text of the current format.
     *
     * @param text the text
     * @param notices what was changed to bring it there
     */
    record Upgraded(String text, List<Problem> notices) {}

    /** The format a sheet names; empty, and reported, when it names none that can be read. */
    static Optional<Integer> of(Mapping root, SheetReading reading) {
        Optional<Integer> line = root.find("format").map(e -> e.keyAt().line());
        if (line.isEmpty()) {
            problem(
                    reading,
                    1,
                    "",
                    "The sheet does not say its format; write \"format: " + CURRENT + "\" as its first line.");
            return Optional.of(CURRENT);
        }
        Mapping alone = new Mapping(root.find("format").stream().toList(), root.at(), root.end(), root.flow());
        int before = reading.problems().count();
        int found = SheetSection.root(reading, alone).count("format", 1, 1_000_000);
        if (found > CURRENT) {
            problem(
                    reading,
                    line.get(),
                    String.valueOf(found),
                    "The sheet has format " + found + ", newer than the " + CURRENT
                            + " this program reads; use a newer program.");
        }
        return reading.problems().count() > before ? Optional.empty() : Optional.of(found);
    }

    private static void problem(SheetReading reading, int line, String found, String sentence) {
        reading.problems().add(new Problem(reading.file(), line, 0, "format", found, sentence));
    }

    /** Brings a text of an older format up to date. */
    static Upgraded upgrade(String text, Mapping root, String file, int format) {
        SheetFormat from = new SheetFormat(new SheetEdits(text, root), file);
        from.edits
                .set("format", String.valueOf(CURRENT))
                .ifPresent(line -> from.note(
                        line,
                        "format",
                        "The sheet has format " + format + " and was read as format " + CURRENT
                                + ", which saving it writes; look through what changed."));
        if (format < 2) {
            from.rename("bottle.thermostat", "heater-off-temperature");
            from.retire("engine.valves-per-cylinder");
            from.retire("electrical.bottle-distance");
        }
        String upgraded;
        if (format < 3) {
            from.rename("wet-kit.window", "arming");
            from.rename("wet-kit", "nitrous-system");
            upgraded = provenance(from.edits.text(), file);
        } else {
            upgraded = from.edits.text();
        }
        return new Upgraded(upgraded, List.copyOf(from.notices));
    }

    /** The word as a key and in the comments that explain it; in the words of a value it is the writer's own. */
    private static String provenance(String text, String file) {
        List<Scalar> values = new ArrayList<>();
        values(YamlSheet.read(text, file, new Problems()).orElseThrow(), values);
        return STANDING.matcher(text).replaceAll(found -> {
            int at = text.codePointCount(0, found.end());
            boolean own = values.stream().anyMatch(v -> v.at().offset() < at && at <= v.end());
            return Matcher.quoteReplacement(own ? found.group() : found.group(1) + "provenance:");
        });
    }

    private static void values(SheetNode node, List<Scalar> values) {
        if (node instanceof Scalar value) {
            values.add(value);
        } else if (node instanceof Mapping section) {
            section.entries().forEach(entry -> values(entry.value(), values));
        } else if (node instanceof Items list) {
            list.items().forEach(item -> values(item, values));
        }
    }

    private void rename(String path, String name) {
        edits.rename(path, name)
                .ifPresent(line -> note(line, path, "The value is now called \"" + name + "\"; it was renamed."));
    }

    private void retire(String path) {
        edits.retire(path)
                .ifPresent(line -> note(
                        line,
                        path,
                        "Nothing is calculated from this value any more; it was taken out, or made a comment."));
    }

    private void note(int line, String path, String sentence) {
        notices.add(new Problem(file, line, 0, path, "", sentence));
    }
}
