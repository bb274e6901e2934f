package org.shotledger.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the launcher enters. */
@Command(
        name = "shotledger",
        description = "Budgets an engine's power between a turbocharger and a wet nitrous-oxide system.",
        footer = {
            "",
            "Exit codes: 0 done; 1 the notebook or check failed; 2 the command was wrong.",
            "Every figure is an estimate to be proven on the car in small steps."
        })
public final class Main {

    private static final Map<String, Class<?>> COMMANDS = commands();

    private static final String NEW = "new";

    private Main() {}

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param arguments as given on the command line
     */
    public static void main(String[] arguments) {
        if (arguments.length == 3 && arguments[0].equals("kernel") && arguments[1].equals("serve")) {
            // somebody waits for it in a notebook: the parser need not read how kernels are installed
            System.exit(new CommandLine(new KernelServeCommand())
                    .setExecutionExceptionHandler(new FailureSentence())
                    .execute(arguments[2]));
        }
        System.exit(run(arguments));
    }

    /**
     * Runs one command.
     *
     * @param arguments as given on the command line
     * @return the exit code
     */
    static int run(String... arguments) {
        PrintStream out = terminal(FileDescriptor.out);
        PrintStream err = terminal(FileDescriptor.err);
        CommandLine line = commands(arguments.length == 0 ? "" : arguments[0], writer(out), writer(err));
        if (arguments.length == 0) {
            line.usage(out);
            return CommandLine.ExitCode.USAGE;
        }
        return line.execute(arguments);
    }

    private static Map<String, Class<?>> commands() {
        Map<String, Class<?>> all = new LinkedHashMap<>();
        all.put("run", RunCommand.class);
        all.put("eval", EvalCommand.class);
        all.put("lab", LabCommand.class);
        all.put("kernel", KernelCommand.class);
        all.put(NEW, NewCommand.class);
        all.put("check", CheckCommand.class);
        all.put("explain", ExplainCommand.class);
        all.put("map", MapCommand.class);
        all.put("diff", DiffCommand.class);
        all.put("document", DocumentCommand.class);
        all.put("doctor", DoctorCommand.class);
        all.put("warm-up", WarmUp.class);
        return all;
    }

    /**
     * The command that a line begins with, or all of them if it begins with none: the parser reads the description of each command
     * it is given, and reading all of them lengthens a short start by a fourteenth.
     */
    static CommandLine commands(String first, PrintWriter out, PrintWriter err) {
        CommandLine line = new CommandLine(new Main());
        COMMANDS.forEach((name, command) -> {
            if (name.equals(first) || !COMMANDS.containsKey(first)) {
                line.addSubcommand(name, command);
            }
        });
        if (line.getSubcommands().containsKey(NEW)) {
            NewCommand.addFigures(line.getSubcommands().get(NEW));
        }
        withHelp(line);
        line.addSubcommand("help", new CommandLine.HelpCommand());
        line.setUsageHelpAutoWidth(false);
        line.setOut(out).setErr(err).setExecutionExceptionHandler(new FailureSentence());
        return line;
    }

    /** {@code --help} and {@code --version} of the program and of each of its commands. */
    private static void withHelp(CommandLine line) {
        String version = Main.class.getPackage().getImplementationVersion();
        line.getCommandSpec()
                .mixinStandardHelpOptions(true)
                .version("shotledger " + (version == null ? "(not packaged)" : version));
        line.getSubcommands().values().forEach(Main::withHelp);
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** The real streams: a session takes over {@code System.out} while cells run. */
    static PrintStream terminal(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
