package org.shotledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A package with one job, as {@code rooms.csv} lists it.
 *
 * @param module the folder under {@code lib}
 * @param name the package under {@code org.shotledger}
 * @param ours rooms, or modules as a whole, that it may import
 * @param libraries packages of libraries that it may import
 */
record Room(String module, String name, Set<String> ours, Set<String> libraries) {

    static List<Room> all() {
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(Room.class.getResourceAsStream("rooms.csv"), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(Room::of)
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException("rooms.csv cannot be read", e);
        }
    }

    private static Room of(String line) {
        String[] cells = line.split(",", -1);
        return new Room(cells[0].strip(), cells[1].strip(), words(cells[2]), words(cells[3]));
    }

    private static Set<String> words(String cell) {
        Set<String> words = new TreeSet<>(List.of(cell.strip().split(" +")));
        words.remove("");
        return words;
    }

    /** Whether a class of one of our packages may be imported here. */
    boolean mayImport(Room other) {
        return other.equals(this) || ours.contains(other.name) || ours.contains("lib/" + other.module);
    }

    /** Whether a class of somebody else's may be imported here. */
    boolean mayImportLibrary(String className) {
        return libraries.stream().anyMatch(library -> className.startsWith(library + "."));
    }

    /** Every name this room's package-info has to state. */
    Set<String> stated() {
        Set<String> names = new TreeSet<>(ours);
        names.addAll(libraries);
        return names;
    }

    @Override
    public String toString() {
        return name;
    }
}
