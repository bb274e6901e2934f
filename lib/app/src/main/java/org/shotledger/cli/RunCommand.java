package org.shotledger.cli;

import java.io.FileDescriptor;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
            defaultValue = "out",
            description = "Folder for the results; default: ${DEFAULT-VALUE}.")
    private Path out;

    @Option(
            names = "--to",
            paramLabel = "FORMATS",
            split = ",",
            defaultValue = "ipynb,html,pdf",
            description = "What to write; default: ${DEFAULT-VALUE}.")
    private Set<String> formats;

    @Option(
            names = "--code",
            paramLabel = "show|hide",
            defaultValue = "show",
            description = "Whether pages show the code; default: ${DEFAULT-VALUE}.")
    private String code;

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
        Set<String> unknown = new TreeSet<>(formats);
        unknown.removeAll(RunRequest.FORMATS);
        if (!unknown.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--to " + String.join(",", unknown) + " is not a format; allowed: "
                            + String.join(",", new TreeSet<>(RunRequest.FORMATS)) + ".");
        }
        if (!Set.of("show", "hide").contains(code)) {
            throw new ParameterException(spec.commandLine(), "--code " + code + " is neither show nor hide.");
        }
    }

    private List<Path> absolute() {
        return notebooks.stream().map(Folders::fromCommandLine).toList();
    }

    /** The options as another process is given them. */
    private List<String> arguments() {
        List<String> list = new ArrayList<>(List.of(
                "--out", Folders.fromCommandLine(out).toString(), "--to", String.join(",", formats), "--code", code));
        values.forEach((name, value) -> list.addAll(List.of("--set", name + "=" + value)));
        return list;
    }
}
