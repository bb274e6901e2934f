package org.shotledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.shotledger.job.Starter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a job's folder. */
@Command(
        name = "new",
        description = {
            "Writes a folder to begin a job with: a commented job sheet and its tables.",
            "With about a dozen figures, as options or in a file, it writes a sheet of that car: what is not known is estimated, marked so,"
                    + " with a wide band and how to measure it. Without any, a sheet of invented figures."
        },
        footer = {
            "",
            "For example: new mycar --displacement \"2.0 L\" --cylinders 4 --compression 9.2 --fuel gasoline --boost \"1.1 bar gauge\""
                    + " --pull-power \"310 hp\" --pull-rpm \"6200 rpm\" --injector-flow \"850 cc/min\" --inducer \"50 mm\" --charge \"10 lb\""
                    + " --target-power \"370 hp\" --rpm-low \"5000 rpm\" --rpm-high \"7000 rpm\""
        })
final class NewCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", description = "A folder that does not exist yet, or an empty one.")
    private Path folder;

    @Option(
            names = "--like",
            paramLabel = "CAR",
            description =
                    "Begin like one of the invented cars five-cylinder, v8, given-jets; figures that are told replace its own.")
    private String like = "";

    @Option(
            names = "--from",
            paramLabel = "FILE",
            description = "A file with lines of \"name: figure\", names as the options below.")
    private Path from;

    private final Map<String, String> told = new LinkedHashMap<>();

    /** An option for each figure a sheet can be made from. */
    static void addFigures(CommandLine line) {
        NewCommand command = line.getCommand();
        Starter.figures()
                .forEach((name, what) -> line.getCommandSpec()
                        .addOption(OptionSpec.builder("--" + name)
                                .type(String.class)
                                .paramLabel("FIGURE")
                                .description(what.replace("%", "%%"))
                                .setter(new CommandLine.Model.ISetter() {
                                    @Override
                                    public <T> T set(T value) {
                                        if (value != null) {
                                            command.told.put(name, String.valueOf(value));
                                        }
                                        return null;
                                    }
                                })
                                .build()));
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Map<String, String> said = new LinkedHashMap<>();
        Path beside = Folders.fromCommandLine(Path.of(""));
        if (from != null) {
            Path file = Folders.fromCommandLine(from);
            said.putAll(Starter.figures(Files.readString(file), from.toString()));
            beside = file.getParent();
        }
        said.putAll(told);
        if (told.containsKey("pull")) {
            Path pull = Folders.fromCommandLine(Path.of(told.get("pull")));
            said.put("pull", String.valueOf(pull.getFileName()));
            beside = pull.getParent();
        }
        Path goal = Folders.fromCommandLine(folder);
        boolean invented = said.isEmpty() && like.isEmpty();
        List<Path> files = invented ? Starter.write(goal) : Starter.write(goal, like, said, beside);
        files.forEach(file -> out.println("wrote " + Folders.shown(file)));
        out.println((invented || said.isEmpty()
                        ? "Every figure in it is invented: put in your own"
                        : "What was not told is estimated and marked so: replace it by what you measure (./shotledger explain FIELD"
                                + " says how)")
                + ", then ./shotledger check " + folder);
        return 0;
    }
}
