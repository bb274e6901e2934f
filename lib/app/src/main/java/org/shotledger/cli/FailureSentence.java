package org.shotledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import org.shotledger.ipynb.NotebookException;
import picocli.CommandLine;

/** Turns what a command throws into one sentence and an exit code. */
final class FailureSentence implements CommandLine.IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, CommandLine.ParseResult parsed)
            throws Exception {
        PrintWriter err = command.getErr();
        if (failure instanceof NotebookException
                || failure instanceof IllegalArgumentException
                || failure instanceof IllegalStateException
                || failure instanceof UncheckedIOException) {
            err.println(failure.getMessage());
        } else if (failure instanceof IOException) {
            err.println("A file could not be read or written: " + failure.getMessage());
        } else {
            throw failure;
        }
        return CommandLine.ExitCode.SOFTWARE;
    }
}
