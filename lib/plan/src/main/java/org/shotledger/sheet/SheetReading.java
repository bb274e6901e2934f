package org.shotledger.sheet;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The state of reading one sheet: its name, its folder, what was wrong so far, and where each value came from. */
public final class SheetReading {
    private final String file;
    private final Path folder;
    private final Problems problems = new Problems();
    private final Map<String, Found> found = new LinkedHashMap<>();
    private final Map<String, Path> tables = new LinkedHashMap<>();

    /**
     * Begins a reading.
     *
     * @param file the file as the user named it
     * @param folder the folder its tables must lie in
     */
    public SheetReading(String file, Path folder) {
        this.file = file;
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * The file as the user named it.
     *
     * @return its name
     */
    public String file() {
        return file;
    }

    /**
     * What was wrong so far.
     *
     * @return the collection itself
     */
    public Problems problems() {
        return problems;
    }

    /**
     * Where each value came from, by its path in the sheet.
     *
     * @return the live map
     */
    public Map<String, Found> found() {
        return found;
    }

    /**
     * The tables the sheet names, as they are written there.
     *
     * @return name in the sheet to file, the live map
     */
    public Map<String, Path> tables() {
        return tables;
    }

    /**
     * The folder its tables must lie in.
     *
     * @return absolute and normal
     */
    public Path folder() {
        return folder;
    }

    void note(Found origin) {
        found.put(origin.path(), origin);
    }

    void problem(SheetNode.Place at, String field, String found, String sentence) {
        problems.add(new Problem(file, at.line(), at.column(), field, found, sentence));
    }
}
