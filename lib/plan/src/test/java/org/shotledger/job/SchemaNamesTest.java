package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetException;
import org.shotledger.sheet.SheetNode;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.YamlSheet;

/**
 * Every name the reader knows stands in the schema, and every name of the schema is known to the reader. The reader is made to
 * list its names by a name it cannot know, put into each section of a few sheets.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SchemaNamesTest {
    private static final String UNKNOWN = "zz-unknown";
    private static final Pattern KNOWN =
            Pattern.compile(".* is not known in (?:\"([^\"]*)\"|the sheet); known are (.*)\\.");
    private static final Set<String> OWN = Set.of("from", "provenance", "note");

    private final String demo = Files.readString(DemoSheetTest.DEMO);
    private final JsonNode schema =
            new ObjectMapper().readTree(Files.readString(Path.of("../../data/schema/job-sheet.schema.json")));

    SchemaNamesTest() throws IOException {}

    @Test
    void reader_and_schema_know_the_same_names() {
        Map<String, Set<String>> reader = new TreeMap<>();
        for (String sheet : sheets()) {
            List<Problem> problems = assertThrows(
                            SheetException.class, () -> Job.read(sheet, DemoSheetTest.DEMO.getParent()))
                    .problems();
            for (Problem problem : problems) {
                Matcher known = KNOWN.matcher(problem.sentence());
                // the names inside readings are those of the sheet's own sensors
                if (known.matches() && !String.valueOf(known.group(1)).startsWith("readings.")) {
                    String path = known.group(1) == null ? "" : known.group(1);
                    reader.computeIfAbsent(general(path), p -> new TreeSet<>())
                            .addAll(List.of(known.group(2).split(", ")));
                }
            }
        }
        Map<String, Set<String>> written = new TreeMap<>();
        collect("", schema, written);
        assertEquals(lines(written), lines(reader));
    }

    /** The demonstration with other kinds of fuel and sensor, and with sections it leaves out. */
    private List<String> sheets() {
        String friction = "  friction: {constant: 0.4 bar, share-of-peak-pressure: 0.005, per-piston-speed: 9000,"
                + " per-piston-speed-squared: 90}\n";
        String gasoline = "kind: gasoline\n    research-octane: 98\n    motor-octane: 88";
        String table = ":\n    engine-speed: [4000 rpm, 6000 rpm]\n    boost: [10 psi gauge, 12 psi gauge]\n";
        String setup =
                "setup:\n  nitrous-jet: 44 thou\n  fuel-jet: 24 thou\n  boost-off" + table + "  boost-armed" + table;
        String kinds =
                "{A1: {kind: pull-up, pull-up: 1 kohm}, B1: {kind: frequency}, C1: {kind: low-side, current: 1 A},"
                        + " D1: {kind: bus}}";
        String pins = "  pins: " + kinds + "\n  expanders: {box: {frames: 10 Hz, rate: 10 Hz, pins: " + kinds + "}}\n";
        String ways = "bus: {part: x}, own-device: {part: x}, relay: {part: x}, ";
        String tests = """
                flow-tests:
                  one: {kind: nitrous, jets: 43 thou, seconds: 9 s}
                  two: {kind: fuel, jets: 22 thou, seconds: 9 s}
                """;
        return List.of(
                unknowns(demo + setup),
                // a reader stops at so many problems, so the sections read last need a sheet with fewer before them
                unknowns(demo.replaceFirst("(?s)\nwiring:.*?\n\n# what the controller", "\n\n# what the controller")
                        + tests),
                unknowns(demo.replace("  sensor-inputs:", pins + "  sensor-inputs:")
                        .replace(
                                "    ethanol-content:",
                                "    wheel: {kind: wheel-speed, teeth: 48, tyre-radius: 320 mm, high: 90 m/s}\n    ethanol-content:")
                        .replace("arming-switch: {channel: input,", "arming-switch: {" + ways + "channel: input,")),
                unknowns(demo.replaceFirst(
                        "  fuel:\n    kind: ethanol-blend\n    ethanol: 78 %", "  fuel:\n    " + gasoline)),
                unknowns(demo.replace("  red-line:", friction + "  nitrous-work: 93 %\n  red-line:")
                        .replace(
                                "  main-evaporated:",
                                "  nitrous-oxide-evaporated: 95 %\n  wall-heat: 5 %\n  main-evaporated:")),
                unknowns(demo.replace("kind: same", gasoline)),
                unknowns(demo.replaceFirst("kind: ethanol-blend\n    ethanol: [^\n]*", gasoline)),
                unknowns(demo.replace("kind: same", "kind: ethanol-blend\n    ethanol: 10 %")));
    }

    private String unknowns(String sheet) {
        Mapping root = YamlSheet.read(sheet, "x", new Problems()).orElseThrow();
        List<Mapping> sections = new ArrayList<>();
        find(root, sections);
        StringBuilder text = new StringBuilder(sheet);
        for (int i = sections.size() - 1; i >= 0; i--) {
            Mapping section = sections.get(i);
            int at = sheet.offsetByCodePoints(0, section.at().offset());
            if (section.flow()) {
                text.insert(at + 1, UNKNOWN + ": 1, ");
            } else {
                text.insert(at, UNKNOWN + ": 1\n" + " ".repeat(section.at().column() - 1));
            }
        }
        return text.toString();
    }

    /** Sections in the order of the text; a value with its reason is none, nor is a list of names the writer chooses. */
    private static void find(SheetNode node, List<Mapping> sections) {
        if (node instanceof Mapping mapping && mapping.find("value").isEmpty()) {
            sections.add(mapping);
            mapping.entries().forEach(e -> find(e.value(), sections));
        }
    }

    /** Names that the writer chooses become a star. */
    private static String general(String path) {
        return path.replaceFirst(
                        "^(conditions|flow-tests|wiring\\.(?:loads|signals|sensors|safety)|controller\\.(?:pins|expanders)|parts\\.items)\\.[^.]+",
                        "$1.*")
                .replaceFirst(
                        "^(controller\\.expanders\\.\\*\\.pins|wiring\\.safety\\.\\*\\.contacts)\\.[^.]+", "$1.*");
    }

    private void collect(String path, JsonNode node, Map<String, Set<String>> found) {
        JsonNode at = node.has("$ref") ? schema.at(node.get("$ref").asText().substring(1)) : node;
        if (!at.path("type").asText().equals("object")) {
            return;
        }
        JsonNode any = at.path("additionalProperties");
        if (any.isObject()) {
            collect(path + ".*", any, found);
            return;
        }
        at.path("properties").properties().forEach(e -> {
            if (!OWN.contains(e.getKey())) {
                found.computeIfAbsent(path, p -> new TreeSet<>()).add(e.getKey());
                collect(path.isEmpty() ? e.getKey() : path + "." + e.getKey(), e.getValue(), found);
            }
        });
    }

    private static String lines(Map<String, Set<String>> names) {
        StringBuilder text = new StringBuilder();
        names.forEach(
                (path, keys) -> text.append(path).append(": ").append(keys).append('\n'));
        return text.toString();
    }
}
