package org.shotledger.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the launcher enters. */
@Command(
        name = "shotledger",
        description = "Budgets an engine's power between a turbocharger and a wet nitrous-oxide system.",
        subcommands = {RunCommand.class, EvalCommand.class, WarmUpCommand.class},
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
        CommandLine line = new CommandLine(new Main())
                .setOut(writer(out))
                .setErr(writer(err))
                .setExecutionExceptionHandler(new FailureSentence());
        line.addSubcommand("help", new CommandLine.HelpCommand());
        line.setUsageHelpAutoWidth(false);
        if (arguments.length == 0) {
            line.usage(out);
            return CommandLine.ExitCode.USAGE;
        }
        return line.execute(arguments);
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** The real streams: a session takes over {@code System.out} while cells run. */
    static PrintStream terminal(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
