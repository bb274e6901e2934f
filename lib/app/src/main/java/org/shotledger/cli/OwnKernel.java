package org.shotledger.cli;

import java.io.IOException;
import java.nio.file.Path;

/**
 * The project's own kernel.
 *
 * @param home the folder that holds the launcher
 */
record OwnKernel(Path home) implements InstallableKernel {

    @Override
    public String name() {
        return KernelSpec.NAME;
    }

    @Override
    public String invitation() {
        return "Choose the kernel \"" + KernelSpec.TITLE + "\" in Jupyter, or start one with ./shotledger lab.";
    }

    @Override
    public void install(Path folder) throws IOException {
        KernelSpec.ofLauncher(home).write(folder);
        Logo.write(folder);
    }
}
