package org.shotledger;

import static com.tngtech.archunit.core.domain.JavaModifier.PUBLIC;
import static java.util.stream.Collectors.toMap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shotledger.cli.Main;
import org.shotledger.session.Help;
import org.shotledger.session.Session;

/**
 * Finds classes that only tests use. Whatever is of use is reached from a command, from what every cell may name without a class
 * before it, from a class that a shipped notebook, the help page or a README names in its code, or from a service file.
 */
class ReachableTest {
    private static final Path ROOT = Path.of("..", "..");
    private static final List<String> MODULES =
            List.of("files", "physics", "plan", "study", "logs", "kernel", "notebook", "app");

    private static final Pattern WORD = Pattern.compile("\\w+");
    private static final Pattern CODE = Pattern.compile("(?s)```.*?```|`[^`]+`");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|//[^\n]*");

    /** All that stands in a main folder, whatever its class files lie beside. */
    private static final Map<String, JavaClass> CLASSES =
            Imported.MAIN.stream().filter(c -> source(c) != null).collect(toMap(JavaClass::getName, c -> c));

    @Test
    void everyClassIsOfUseToSomebody() throws IOException {
        Set<String> reached = reached();
        Set<String> idle = CLASSES.values().stream()
                .filter(c -> c.isTopLevelClass() && !c.getSimpleName().equals("package-info"))
                .filter(c -> !isReached(c, reached))
                .map(JavaClass::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), idle, "only tests use these; delete them, or give them a use");
    }

    /** A test that finds no notebook, service or class says nothing. */
    @Test
    void theSearchStartsFromAllOfThem() throws IOException {
        Set<String> roots = roots();
        for (String one : List.of(
                Main.class.getName(), // a command
                Session.class.getName(), // imported by every session
                "org.shotledger.view.TrustViews$OfFamily", // a service
                "org.shotledger.confidence.FlowTestAdvice")) { // named by a README
            assertTrue(roots.contains(one), one);
        }
        assertTrue(CLASSES.size() > 1000, "classes found: " + CLASSES.size());
    }

    private static boolean isReached(JavaClass c, Set<String> reached) {
        return reached.stream().anyMatch(r -> r.equals(c.getName()) || r.startsWith(c.getName() + "$"));
    }

    private static Set<String> reached() throws IOException {
        Set<String> reached = new HashSet<>(roots());
        Deque<String> next = new ArrayDeque<>(reached);
        Set<Path> read = new HashSet<>();
        while (!next.isEmpty()) {
            JavaClass c = CLASSES.get(next.pop());
            Set<String> used = c.getDirectDependenciesFromSelf().stream()
                    .map(d -> d.getTargetClass().getBaseComponentType().getName())
                    .collect(Collectors.toCollection(HashSet::new));
            if (read.add(source(c))) {
                used.addAll(holdersOfConstants(source(c)));
            }
            used.retainAll(CLASSES.keySet());
            used.removeAll(reached);
            reached.addAll(used);
            next.addAll(used);
        }
        return reached;
    }

    /** The compiler copies a constant into the class that uses it, so that only the source still names where it stands. */
    private static List<String> holdersOfConstants(Path source) throws IOException {
        Set<String> words = words(COMMENT.matcher(Files.readString(source)).replaceAll(" "));
        return CLASSES.values().stream()
                .filter(c -> c.getMethods().isEmpty() && words.contains(c.getSimpleName()))
                .map(JavaClass::getName)
                .toList();
    }

    private static Set<String> roots() throws IOException {
        Set<String> roots = new HashSet<>(List.of(Main.class.getName()));
        Set<String> packages = new HashSet<>(List.of("org.shotledger.display"));
        for (String imported : Session.IMPORTS) {
            if (imported.startsWith("static ")) {
                roots.add(imported.replaceAll("static |\\.\\*", ""));
            } else {
                packages.add(imported.replace(".*", ""));
            }
        }
        Set<String> words = words(shownCode());
        CLASSES.values().stream()
                .filter(c -> c.getModifiers().contains(PUBLIC))
                .filter(c -> packages.contains(c.getPackageName()) && words.contains(c.getSimpleName()))
                .forEach(c -> roots.add(c.getName()));
        for (Path file : files("lib/*/src/main/resources/META-INF/services", "*")) {
            roots.addAll(Files.readAllLines(file));
        }
        roots.retainAll(CLASSES.keySet());
        return roots;
    }

    /** All code that a reader is shown. */
    private static String shownCode() throws IOException {
        StringBuilder code = new StringBuilder(Files.readString(source(CLASSES.get(Help.class.getName()))));
        List<Path> notebooks = files("notebooks", "*.ipynb");
        notebooks.addAll(files("lib/app/src/main", "*.ipynb"));
        for (Path file : notebooks) {
            for (JsonElement cell : JsonParser.parseString(Files.readString(file))
                    .getAsJsonObject()
                    .getAsJsonArray("cells")) {
                JsonObject fields = cell.getAsJsonObject();
                if (fields.get("cell_type").getAsString().equals("code")) {
                    fields.getAsJsonArray("source")
                            .forEach(line -> code.append(line.getAsString()).append('\n'));
                }
            }
        }
        List<Path> readmes = files("lib/*", "README.md");
        readmes.addAll(files(".", "README.md"));
        for (Path file : readmes) {
            CODE.matcher(Files.readString(file))
                    .results()
                    .forEach(part -> code.append(part.group()).append('\n'));
        }
        return code.toString();
    }

    private static Set<String> words(String text) {
        return WORD.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    /** Those of a kind in one folder of the repository, or in the same folder of each module, written with a star. */
    private static List<Path> files(String folder, String kind) throws IOException {
        List<Path> found = new ArrayList<>();
        for (String one :
                new TreeSet<>(MODULES.stream().map(m -> folder.replace("*", m)).toList())) {
            if (Files.isDirectory(ROOT.resolve(one))) {
                try (DirectoryStream<Path> files = Files.newDirectoryStream(ROOT.resolve(one), kind)) {
                    files.forEach(found::add);
                }
            }
        }
        return found;
    }

    private static Path source(JavaClass c) {
        String file = c.getName().replaceFirst("\\$.*", "").replace('.', '/') + ".java";
        return MODULES.stream()
                .map(module -> ROOT.resolve("lib")
                        .resolve(module)
                        .resolve("src/main/java")
                        .resolve(file))
                .filter(Files::exists)
                .findFirst()
                .orElse(null);
    }
}
