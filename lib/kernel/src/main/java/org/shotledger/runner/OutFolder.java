package org.shotledger.runner;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds out before the cells run whether there will be a place for what comes of them. */
final class OutFolder {

    private OutFolder() {}

    /**
     * Checks a folder, which need not be there yet; nothing is made.
     *
     * @param folder where results will be written
     * @param name how to call it in messages
     * @throws IOException if they cannot; the message says why and what to do
     */
    static void check(Path folder, String name) throws IOException {
        Path there = folder.toAbsolutePath().normalize();
        while (there.getParent() != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there)) {
            throw new IOException("Results cannot be written to " + name + ": " + there
                    + " is a file. Give another folder with --out.");
        }
        if (!Files.isWritable(there)) {
            throw new IOException("Results cannot be written to " + name + ": you may not write to " + there
                    + ". Give another folder with --out.");
        }
    }
}
