package org.shotledger.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the launcher enters. */
@Command(
        name = "shotledger",
        description = "Budgets an engine's power between a turbocharger and a wet nitrous-oxide system.",
        subcommands = {
            RunCommand.class,
            EvalCommand.class,
            LabCommand.class,
            KernelCommand.class,
            NewCommand.class,
            CheckCommand.class,
            ExplainCommand.class,
            MapCommand.class,
            DiffCommand.class,
            DocumentCommand.class,
            DoctorCommand.class
        },
        footer = {
            "",
            "Exit codes: 0 done; 1 the notebook or check failed; 2 the command was wrong.",
            "Every figure is an estimate to be proven on the car in small steps."
        })
public final class Main {

    private Main() {}

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param arguments as given on the command line
     */
    public static void main(String[] arguments) {
        if (arguments.length == 3 && arguments[0].equals("kernel") && arguments[1].equals("serve")) {
            serve(Path.of(arguments[2]));
        }
        if (arguments.length == 1 && arguments[0].equals("warm-up")) {
            System.exit(call(new WarmUp()));
        }
        Optional<? extends Callable<Integer>> plain = plain(arguments);
        if (plain.isPresent()) {
            Sessions.begin();
            // a name no jar has opens them all, which the session is about to need and this thread has time for
            ClassLoader.getSystemResource("-");
            System.exit(call(plain.get()));
        }
        System.exit(run(arguments));
    }

    /** What somebody waits for, if the line needs no parser: that takes as long as a third of running a cell. */
    private static Optional<? extends Callable<Integer>> plain(String... arguments) {
        return switch (arguments.length < 2 ? "" : arguments[0]) {
            case "run" -> RunCommand.plain(arguments);
            case "eval" -> EvalCommand.plain(arguments);
            default -> Optional.empty();
        };
    }

    /** As the parser calls a command. */
    private static int call(Callable<Integer> command) {
        PrintWriter err = writer(terminal(FileDescriptor.err));
        try {
            return command.call();
        } catch (Exception failure) {
            try {
                return FailureSentence.say(failure, err);
            } catch (Exception unforeseen) {
                unforeseen.printStackTrace(err);
                return CommandLine.ExitCode.SOFTWARE;
            }
        }
    }

    /** The one command somebody waits for: without the cost of a command-line parser. */
    private static void serve(Path connection) {
        try {
            System.exit(KernelServeCommand.serve(connection));
        } catch (IOException | IllegalArgumentException e) {
            System.err.println(e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        System.exit(1);
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
        CommandLine line = commands(writer(out), writer(err));
        if (arguments.length == 0) {
            line.usage(out);
            return CommandLine.ExitCode.USAGE;
        }
        return line.execute(arguments);
    }

    /** All commands, writing to the given streams. */
    static CommandLine commands(PrintWriter out, PrintWriter err) {
        CommandLine line =
                new CommandLine(new Main()).setOut(out).setErr(err).setExecutionExceptionHandler(new FailureSentence());
        NewCommand.addFigures(line.getSubcommands().get("new"));
        withHelp(line);
        line.addSubcommand("help", new CommandLine.HelpCommand());
        line.setUsageHelpAutoWidth(false);
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
