package org.shotledger.cli;

import java.io.FileDescriptor;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.shotledger.runner.RunRequest;
import org.shotledger.runner.Runner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Executes notebooks without a front end. */
@Command(name = "run", description = "Executes notebooks and writes what came of them, as notebook, HTML page and PDF.")
final class RunCommand implements Callable<Integer> {

    private static final String OUT = "out";
    private static final String FORMATS = "ipynb,html,pdf";
    private static final String CODE = "show";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "NOTEBOOK", arity = "1..*", description = "Notebook files.")
    private List<Path> notebooks;

    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description = "Give a variable of the cell tagged parameters another value; may be repeated.")
    private Map<String, String> values = Map.of();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = OUT,
            description = "Folder for the results; default: ${DEFAULT-VALUE}.")
    private Path out = Path.of(OUT);

    @Option(
            names = "--to",
            paramLabel = "FORMATS",
            split = ",",
            defaultValue = FORMATS,
            description = "What to write; default: ${DEFAULT-VALUE}.")
    private Set<String> formats = formats(FORMATS);

    @Option(
            names = "--code",
            paramLabel = "show|hide",
            defaultValue = CODE,
            description = "Whether pages show the code; default: ${DEFAULT-VALUE}.")
    private String code = CODE;

    /**
     * The command of a line that holds one notebook and options with sound values, which needs no parser.
     *
     * @return empty for any other line
     */
    static Optional<RunCommand> plain(String... words) {
        RunCommand command = new RunCommand();
        command.values = new LinkedHashMap<>();
        Set<String> options = new HashSet<>();
        for (int i = 1; i < words.length; i++) {
            String word = words[i];
            boolean option = word.startsWith("--") && i + 1 < words.length;
            boolean again = option && !word.equals("--set") && !options.add(word);
            if (again || !(option ? command.take(word, words[++i]) : command.take(word))) {
                return Optional.empty();
            }
        }
        return command.notebooks == null ? Optional.empty() : Optional.of(command);
    }

    private boolean take(String word) {
        boolean first = notebooks == null && word.endsWith(".ipynb") && isPlain(word);
        if (first) {
            notebooks = List.of(Path.of(word));
        }
        return first;
    }

    private boolean take(String option, String value) {
        switch (option) {
            case "--out" -> out = Path.of(value);
            case "--code" -> code = value;
            case "--to" -> formats = formats(value);
            case "--set" -> {
                int equals = value.indexOf('=');
                if (equals < 1 || values.put(value.substring(0, equals), value.substring(equals + 1)) != null) {
                    return false;
                }
            }
            default -> {
                return false;
            }
        }
        return isPlain(value) && problem().isEmpty();
    }

    /** Words that begin otherwise mean something to the parser, and so do quotes. */
    private static boolean isPlain(String word) {
        return !word.isEmpty() && word.charAt(0) != '-' && word.charAt(0) != '@' && word.indexOf('"') < 0;
    }

    private static Set<String> formats(String words) {
        return new LinkedHashSet<>(List.of(words.split(",", -1)));
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        checkOptions();
        if (notebooks.size() > 1) {
            return new ParallelRuns(arguments()).run(absolute());
        }
        Path notebook = Folders.fromCommandLine(notebooks.get(0));
        if (!Folders.projectOf(notebook).equals(Path.of("").toAbsolutePath().normalize())) {
            return new ParallelRuns(arguments()).run(absolute());
        }
        PrintStream terminal = Main.terminal(FileDescriptor.out);
        Consumer<String> say = terminal::println;
        RunRequest request =
                new RunRequest(notebook, Folders.fromCommandLine(out), formats, code.equals("show"), values);
        return new Runner(Sessions::open, say, Folders::shown).run(request) ? 0 : 1;
    }

    private void checkOptions() {
        problem().ifPresent(sentence -> {
            throw new ParameterException(spec.commandLine(), sentence);
        });
    }

    private Optional<String> problem() {
        Set<String> unknown = new TreeSet<>(formats);
        unknown.removeAll(RunRequest.FORMATS);
        if (!unknown.isEmpty()) {
            return Optional.of("--to " + String.join(",", unknown) + " is not a format; allowed: "
                    + String.join(",", new TreeSet<>(RunRequest.FORMATS)) + ".");
        }
        return Set.of("show", "hide").contains(code)
                ? Optional.empty()
                : Optional.of("--code " + code + " is neither show nor hide.");
    }

    List<Path> absolute() {
        return notebooks.stream().map(Folders::fromCommandLine).toList();
    }

    /** The options as another process is given them. */
    List<String> arguments() {
        List<String> list = new ArrayList<>(List.of(
                "--out", Folders.fromCommandLine(out).toString(), "--to", String.join(",", formats), "--code", code));
        values.forEach((name, value) -> list.addAll(List.of("--set", name + "=" + value)));
        return list;
    }
}
