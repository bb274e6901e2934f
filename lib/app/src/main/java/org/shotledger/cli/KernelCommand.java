package org.shotledger.cli;

import picocli.CommandLine.Command;

/** The Jupyter kernel. */
@Command(
        name = "kernel",
        description = "Registers the kernel with Jupyter, removes it, or serves it.",
        subcommands = {KernelInstallCommand.class, KernelRemoveCommand.class, KernelServeCommand.class})
final class KernelCommand {}
