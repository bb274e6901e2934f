package org.shotledger.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.shotledger.files.AtomicFile;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetNode;
import org.shotledger.sheet.YamlSheet;
import org.shotledger.units.Excerpt;

/**
 * Writes the folder a new job begins with: a commented sheet and its tables, either invented and marked so, or from the few figures a
 * shop knows with the rest estimated and marked so.
 */
public final class Starter {
    /** The sheet comes last: a folder is a job only when it holds one. */
    private static final List<String> FILES = List.of(
            "volumetric-efficiency.csv",
            "compressor-map.csv",
            "fuel-pump.csv",
            "nitrous-fuel-pump.csv",
            "injector-dead-time.csv",
            "jets.csv",
            JobReader.USUAL_NAME);

    /** The cars there are to begin like, each told by a few invented figures and a pull. */
    private static final List<String> LIKE = List.of("five-cylinder", "v8", "given-jets");

    /** What is said instead of a figure of the car to begin like. */
    private static final Map<String, String> INSTEAD_OF = Map.of("injector", "injector-flow", "pump", "pump-flow");

    private Starter() {}

    /**
     * The figures from which a sheet can be made.
     *
     * @return name to what it is, in the order in which they are asked for
     */
    public static Map<String, String> figures() {
        return java.util.Collections.unmodifiableMap(FirstFigures.NAMES);
    }

    /**
     * Reads figures from a small file: lines of name and value.
     *
     * @param text the file's text
     * @param file what it is called in messages
     * @return name to value as written
     * @throws org.shotledger.sheet.SheetException when it is no such file
     */
    public static Map<String, String> figures(String text, String file) {
        Problems problems = new Problems();
        Map<String, String> said = new LinkedHashMap<>();
        YamlSheet.read(text, file, problems)
                .ifPresent(root -> root.entries().forEach(entry -> {
                    if (entry.value() instanceof SheetNode.Scalar scalar) {
                        said.put(entry.key(), scalar.text());
                    } else {
                        problems.add(new Problem(
                                file,
                                entry.keyAt().line(),
                                entry.keyAt().column(),
                                entry.key(),
                                "",
                                "A plain figure or word is wanted here; known are "
                                        + String.join(", ", FirstFigures.NAMES.keySet()) + "."));
                    }
                }));
        problems.throwIfAny();
        return said;
    }

    /**
     * Writes a sheet from a few figures.
     *
     * @param folder the folder to make, or an empty one to fill
     * @param like name of a car whose figures stand where nothing is said; empty for none
     * @param said figures by the names of {@link #figures()}, as they would be written in a sheet
     * @param pulls the folder in which the table of the pull lies
     * @return the files written, the sheet last
     * @throws IllegalArgumentException when a figure is wrong or missing, or there is something there already; nothing is then written
     */
    public static List<Path> write(Path folder, String like, Map<String, String> said, Path pulls) {
        if (!like.isEmpty() && !LIKE.contains(like)) {
            throw new IllegalArgumentException("There is no car " + Excerpt.quoted(like) + " to begin like; there are "
                    + String.join(", ", LIKE) + ".");
        }
        return fill(folder, filled -> {
            Map<String, String> all = new LinkedHashMap<>();
            if (!like.isEmpty()) {
                all.putAll(figures(resource("like/" + like + ".yaml"), like + ".yaml"));
            }
            // the size of an engine is told in one of two ways, and what is said replaces the other car's, whichever
            // that was
            if (said.containsKey("bore") || said.containsKey("stroke")) {
                all.remove("displacement");
            }
            if (said.containsKey("displacement")) {
                all.keySet().removeAll(List.of("bore", "stroke"));
            }
            all.putAll(said);
            boolean own = said.containsKey("pull") || like.isEmpty();
            if (said.keySet().stream().anyMatch(List.of("pull-power", "pull-rpm")::contains)
                    && !said.containsKey("pull")) {
                all.remove("pull");
            }
            INSTEAD_OF.forEach((part, figure) -> {
                if (said.containsKey(part) && !said.containsKey(figure)) {
                    all.remove(figure);
                }
            });
            if (!own && all.containsKey("pull")) {
                AtomicFile.write(filled.resolve(all.get("pull")), resource("like/" + all.get("pull")));
            }
            FirstFigures figures = FirstFigures.of(all, own ? pulls : filled);
            if (!own && all.containsKey("pull")) {
                delete(filled.resolve(all.get("pull")));
            }
            String sheet = FirstSheet.write(figures, filled, name -> resource("starter/" + name));
            AtomicFile.write(filled.resolve(JobReader.USUAL_NAME), sheet);
        });
    }

    /**
     * Writes the files, all or none: a new folder is filled under another name and renamed.
     *
     * @param folder the folder to make, or an empty one to fill
     * @return the files written, the sheet last
     * @throws IllegalArgumentException when there is something there already; nothing is then written
     * @throws UncheckedIOException when the disk refuses; nothing then stays
     */
    public static List<Path> write(Path folder) {
        return fill(folder, filled -> FILES.forEach(file -> AtomicFile.write(filled.resolve(file), starter(file))));
    }

    private static String starter(String file) {
        String text = resource("starter/" + file);
        return file.equals(JobReader.USUAL_NAME) ? text + resource("starter/wiring.yaml") : text;
    }

    private static List<Path> fill(Path folder, Consumer<Path> writer) {
        Path goal = folder.toAbsolutePath().normalize();
        boolean there = Files.exists(goal);
        if (there && !isEmptyFolder(goal)) {
            throw new IllegalArgumentException("There is something in " + folder
                    + " already and nothing is overwritten; name a new or an empty folder.");
        }
        Path filled = there
                ? goal
                : goal.resolveSibling(
                        "." + goal.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            writer.accept(filled);
            if (!there) {
                Files.move(filled, goal);
            }
        } catch (IOException | UncheckedIOException e) {
            remove(filled, there);
            throw new UncheckedIOException(
                    "The folder " + folder + " cannot be written; nothing was left there.", new IOException(e));
        } catch (IllegalArgumentException e) {
            remove(filled, there);
            throw e;
        }
        return written(goal).stream().map(folder::resolve).toList();
    }

    /** The files of a folder by name, the sheet last. */
    private static List<Path> written(Path goal) {
        Comparator<Path> sheetLast = Comparator.comparing(path -> path.endsWith(JobReader.USUAL_NAME));
        try (Stream<Path> files = Files.list(goal)) {
            return files.map(Path::getFileName)
                    .sorted(sheetLast.thenComparing(Path::toString))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isEmptyFolder(Path path) {
        try (Stream<Path> files = Files.list(path)) {
            return files.findAny().isEmpty();
        } catch (IOException e) {
            return false; // a file, or a folder that does not show what it holds
        }
    }

    private static void remove(Path folder, boolean keepFolder) {
        try (Stream<Path> files = Files.list(folder)) {
            files.toList().forEach(Starter::delete);
        } catch (IOException ignored) {
            // the first failure is the one to report
        }
        if (!keepFolder) {
            delete(folder);
        }
    }

    private static void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException ignored) {
            // the first failure is the one to report
        }
    }

    private static String resource(String file) {
        try (InputStream in = Starter.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
