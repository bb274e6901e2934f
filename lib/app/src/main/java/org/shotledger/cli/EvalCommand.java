package org.shotledger.cli;

import com.google.gson.JsonObject;
import java.io.FileDescriptor;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import org.shotledger.display.Display;
import org.shotledger.ipynb.MimeJson;
import org.shotledger.snippet.CellResult;
import org.shotledger.snippet.JavaSession;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Runs one snippet in a fresh session. */
@Command(name = "eval", description = "Runs Java in a fresh session and prints the last value as plain text.")
final class EvalCommand implements Callable<Integer> {

    @Parameters(paramLabel = "JAVA", arity = "1..*", description = "The Java to run; several arguments make one cell.")
    private List<String> code;

    @Override
    public Integer call() {
        PrintStream out = Main.terminal(FileDescriptor.out);
        PrintStream err = Main.terminal(FileDescriptor.err);
        try (JavaSession session = Sessions.open()) {
            CellResult result = session.evaluate(String.join("\n", code), "eval");
            System.out.flush();
            result.notes().forEach(err::println);
            if (result.error() != null) {
                result.error().report().forEach(err::println);
                return 1;
            }
            if (result.hasValue()) {
                JsonObject data = MimeJson.of(result.value());
                out.println(data.get(Display.TEXT).getAsString());
            }
            return 0;
        }
    }
}
