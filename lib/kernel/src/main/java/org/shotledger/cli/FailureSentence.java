package org.shotledger.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.shotledger.ipynb.NotebookException;
import picocli.CommandLine;

/** Turns what a command throws into one sentence and an exit code. */
final class FailureSentence implements CommandLine.IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, CommandLine.ParseResult parsed)
            throws Exception {
        boolean expected = failure instanceof NotebookException
                || failure instanceof IllegalArgumentException
                || failure instanceof IllegalStateException;
        if (expected) {
            command.getErr().println(failure.getMessage());
            return CommandLine.ExitCode.SOFTWARE;
        }
        if (failure instanceof UncheckedIOException) {
            command.getErr().println(failure.getMessage());
            return CommandLine.ExitCode.SOFTWARE;
        }
        if (failure instanceof IOException) {
            command.getErr().println("A file could not be read or written: " + failure.getMessage());
            return CommandLine.ExitCode.SOFTWARE;
        }
        throw failure;
    }
}
