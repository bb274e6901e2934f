package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.shotledger.kernel.ConnectionFile;
import org.shotledger.kernel.Kernel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Serves one notebook; Jupyter starts this. */
@Command(name = "serve", description = "Serves one notebook; started by Jupyter.")
final class KernelServeCommand implements Callable<Integer> {

    @Parameters(paramLabel = "CONNECTION", description = "The connection file that Jupyter wrote.")
    private Path connection;

    @Override
    public Integer call() throws IOException, InterruptedException {
        ConnectionFile meeting = ConnectionFile.read(Folders.fromCommandLine(connection));
        new Kernel(meeting, Sessions::open, Sessions.words()).serve();
        return 0;
    }
}
