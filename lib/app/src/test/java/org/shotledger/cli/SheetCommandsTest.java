package org.shotledger.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The commands that begin, check and compare job sheets, with their exit codes. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SheetCommandsTest {

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.commands(arguments[0], new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(arguments);
    }

    @Test
    void a_new_folder_passes_the_check_as_it_is() {
        String job = folder.resolve("job").toString();
        assertEquals(0, run("new", job));
        List<String> lines = out.toString().lines().toList();
        assertEquals(8, lines.size());
        assertEquals("wrote " + job + "/job.yaml", lines.get(6));
        assertEquals("Every figure in it is invented: put in your own, then ./shotledger check " + job, lines.get(7));
        assertEquals(0, run("check", job, job + "/compressor-map.csv"));
        assertEquals(job + ": good\n" + job + "/compressor-map.csv: good\n", out.toString());
    }

    @Test
    void a_dozen_figures_begin_a_sheet_and_what_is_unusual_is_said() throws IOException {
        String job = folder.resolve("own").toString();
        assertEquals(
                0,
                run("new", job, "--like", "given-jets", "--mass", "1200 kg", "--boost", "1.3 bar gauge"),
                err.toString());
        assertTrue(out.toString().contains("What was not told is estimated and marked so"), out.toString());
        assertEquals(0, run("check", job), out.toString());
        assertEquals(job + ": good\n", out.toString());
        Path sheet = Path.of(job, "job.yaml");
        Files.writeString(
                sheet, Files.readString(sheet).replaceFirst("mass: \\{value: 1200 kg, from: [^}]*}", "mass: 154 kg"));
        assertEquals(0, run("check", job), out.toString());
        assertTrue(
                out.toString()
                        .contains(
                                "vehicle.mass: \"154 kg\" is unusual for \"vehicle.mass\"; usual is 600 to 2800 kg (common practice, no source)"),
                out.toString());
        assertEquals(1, run("new", folder.resolve("none").toString(), "--boost", "20 psi"));
        assertTrue(err.toString().contains("\"cylinders\" is missing"), err.toString());
    }

    @Test
    void a_field_is_explained() {
        assertEquals(0, run("explain", "valve-kv"));
        assertTrue(out.toString().contains("usual: 0.4 to 3 m3/h"), out.toString());
        assertEquals(0, run("explain"));
        assertTrue(out.toString().contains("bottle: part, charge, water-capacity"), out.toString());
        assertEquals(1, run("explain", "valve-kw"));
        assertTrue(err.toString().contains("the nearest name is \"valve-kv\""), err.toString());
    }

    @Test
    void a_mapping_is_proposed_written_once_and_read_by_the_check() throws IOException {
        StringBuilder rows = new StringBuilder("Time [s],Engine Speed [rpm],AFR Lambda,MAP [kPa]\n");
        for (int i = 0; i < 200; i++) {
            rows.append(i * 0.02)
                    .append(',')
                    .append(3000 + 20 * i)
                    .append(",0.81,")
                    .append(180 + i % 3)
                    .append('\n');
        }
        Path log = Files.writeString(folder.resolve("pull.csv"), rows);
        Path mapping = folder.resolve("pull.log.yaml");
        assertEquals(0, run("map", log.toString()), out::toString);
        assertTrue(
                out.toString().startsWith("wrote ") && Files.readString(mapping).contains("engine-speed"),
                out.toString());
        assertEquals(0, run("check", log.toString(), mapping.toString()), out::toString);
        String written = Files.writeString(mapping, "# mine\n" + Files.readString(mapping))
                .toString();
        assertEquals(1, run("map", log.toString()));
        assertTrue(out.toString().contains("stands already")
                && Files.readString(Path.of(written)).startsWith("# mine"));
    }

    @Test
    void a_log_is_checked_with_the_mapping_beside_it() throws IOException {
        Path log = Files.writeString(folder.resolve("pull.csv"), "T;N\n0,0;3000\n0,1;\n0,2;3100\n");
        Path mapping = Files.writeString(
                folder.resolve("pull.log.yaml"),
                "channels: {time: {column: T, unit: s}, engine-speed: {column: N, unit: rpm}}");
        assertEquals(0, run("check", log.toString(), mapping.toString()));
        List<String> lines = out.toString().lines().toList();
        assertEquals(log + ": good", lines.get(0));
        assertTrue(
                lines.stream()
                        .anyMatch(l -> l.contains("note: pull.csv: Engine speed has no value at 0.100 s (line 3)")),
                out.toString());
        Files.writeString(log, "T;N\n0,0;fast\n");
        assertEquals(1, run("check", log.toString()));
        assertTrue(
                out.toString().contains("pull.csv, line 2, column 2, engine speed: \"fast\" is not a number"),
                out.toString());
    }

    @Test
    void a_folder_that_holds_something_is_refused_and_left_alone() throws IOException {
        Path kept = Files.writeString(folder.resolve("notes.txt"), "mine");
        assertEquals(1, run("new", folder.toString()));
        assertEquals(
                "There is something in " + folder
                        + " already and nothing is overwritten; name a new or an empty folder.\n",
                err.toString());
        assertEquals("mine", Files.readString(kept));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(kept), files.toList());
        }
    }

    @Test
    void a_check_lists_every_problem_below_its_file() throws IOException {
        Path jets = Files.writeString(folder.resolve("jets.csv"), "bore [thou]\n20\nwide\n500\n");
        assertEquals(1, run("check", jets.toString()));
        assertEquals(
                jets + ": 2 problems\n"
                        + "  jets.csv, line 3, column 1, bore: \"wide\" is not a number; write one without its unit.\n"
                        + "  jets.csv, line 4, column 1, bore: \"500\" is not plausible; allowed is 3.93701 to 393.701"
                        + " thou.\n",
                out.toString());
    }

    @Test
    void a_difference_is_shown_with_its_reason() throws IOException {
        String a = folder.resolve("a").toString();
        Path b = folder.resolve("b");
        run("new", a);
        run("new", b.toString());
        assertEquals(0, run("diff", a, b.toString()));
        assertEquals("no difference\n", out.toString());

        Path sheet = b.resolve("job.yaml");
        String text = Files.readString(sheet).replaceFirst("(?m)^  mass: .*$", "  mass: {value: 1600 kg, from: scale}");
        Files.writeString(sheet, text);
        assertEquals(0, run("diff", a, b.toString()));
        assertTrue(
                out.toString()
                        .matches("vehicle\\.mass: .* kg -> 1600 kg \\(.* %\\); reason: .* -> .*: scale\\n"
                                + "one value differs\\n"),
                out.toString());
    }

    @Test
    void a_sheet_that_cannot_be_read_is_no_difference_but_a_failure() throws IOException {
        Path sheet = Files.writeString(folder.resolve("job.yaml"), "format: 99\n");
        assertEquals(1, run("diff", sheet.toString(), sheet.toString()));
        assertTrue(
                err.toString().contains("job.yaml, line 1, format: The sheet has format 99, newer than the"),
                err.toString());
    }

    @Test
    void a_wrong_command_is_told_from_a_failure() {
        assertEquals(CommandLine.ExitCode.USAGE, run("new"));
        assertEquals(CommandLine.ExitCode.USAGE, run("diff", "only-one"));
        assertEquals(CommandLine.ExitCode.USAGE, run("check"));
    }

    @Test
    void the_help_names_the_commands() {
        String help =
                Main.commands("", new PrintWriter(out), new PrintWriter(err)).getUsageMessage();
        assertTrue(Stream.of("new", "check", "diff").allMatch(name -> help.contains("\n  " + name + " ")), help);
    }
}
