package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Path;

/** A kernel that Jupyter can be told of. */
interface InstallableKernel {

    /** What Jupyter calls it. */
    String name();

    /** How to begin with it, as a sentence. */
    String invitation();

    /** Writes the entry by which Jupyter knows it, and makes what that needs. */
    void install(Path folder) throws IOException, InterruptedException;
}
