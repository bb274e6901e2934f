package org.shotledger.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.files.AtomicFile;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetNode;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.YamlSheet;

/**
 * The text a job was read from. Two are equal when the text is.
 *
 * @param file the sheet's own name
 * @param folder the folder in which its tables lie
 * @param text the YAML text
 * @param tables the tables it names, by the name in the sheet
 * @param notices what was renamed or converted because the file is of an older format; empty when it is not
 */
public record JobSource(String file, Path folder, String text, Map<String, Path> tables, List<Problem> notices) {

    public JobSource {
        tables = Map.copyOf(tables);
        notices = List.copyOf(notices);
    }

    /** The text with one value written anew, and its reason where one is given. */
    String with(String path, String value, Optional<Rewrite.Reason> reason) {
        return Rewrite.of(text, at(keys(path)), value, reason)
                .orElseThrow(() -> new IllegalArgumentException("The sheet " + file + " states no value at \"" + path
                        + "\"; write one there first, or name one that stands in it."));
    }

    /** The text with one value, written anew where it stands and added to its section where it does not. */
    String stating(String path, String value, Rewrite.Reason reason) {
        List<String> keys = keys(path);
        int last = keys.size() - 1;
        SheetNode section = at(keys.subList(0, last));
        if (child(section, keys.get(last)) != null) {
            return with(path, value, Optional.of(reason));
        }
        String changed = section instanceof Mapping mapping
                ? Rewrite.adding(text, mapping, keys.get(last), value, reason).orElse(null)
                : null;
        if (changed == null) {
            throw new IllegalArgumentException("The sheet " + file + " has no section for \"" + path
                    + "\"; write the section first, or name a value of one that stands in it.");
        }
        return changed;
    }

    /** The text with a section more at its end. */
    String adding(String section) {
        return text.stripTrailing() + "\n\n" + section;
    }

    /** The names on the way to a place, a place in a list as one of its own. */
    private static List<String> keys(String path) {
        return List.of(path.replace("[", ".[").split("\\.", -1));
    }

    private SheetNode at(List<String> keys) {
        SheetNode node = YamlSheet.read(text, file, new Problems()).orElseThrow();
        for (String key : keys) {
            node = child(node, key);
        }
        return node;
    }

    private static SheetNode child(SheetNode node, String key) {
        if (node instanceof Mapping mapping) {
            return mapping.find(key).map(SheetNode.Entry::value).orElse(null);
        }
        if (node instanceof SheetNode.Items items && key.matches("\\[\\d{1,6}\\]")) {
            int index = Integer.parseInt(key.substring(1, key.length() - 1));
            return index < items.items().size() ? items.items().get(index) : null;
        }
        return null;
    }

    void save(Path target) {
        Path goal = target.toAbsolutePath().normalize().getParent();
        Map<Path, String> contents = new LinkedHashMap<>();
        tables.forEach((name, path) -> {
            Path to = goal.resolve(name.replace('\\', '/')).normalize();
            if (!to.equals(path)) {
                contents.put(to, content(path));
            }
        });
        contents.forEach(AtomicFile::write);
        AtomicFile.write(target, text);
    }

    private static String content(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException("The table " + path + " cannot be read any more; nothing was written.", e);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JobSource source && text.equals(source.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }
}
