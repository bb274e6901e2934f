package org.shotledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shotledger.kernel.SelfCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Tells what is there, what is missing, and what to do. */
@Command(name = "doctor", description = "Tells what is installed, what is missing, and what to do.")
final class DoctorCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    private PrintWriter out;
    private int missing;

    @Override
    public Integer call() throws IOException, InterruptedException {
        out = spec.commandLine().getOut();
        good("Java", System.getProperty("java.version") + " in " + System.getProperty("java.home"));
        session();
        if (Files.exists(Folders.home().resolve("pom.xml"))) { // a release is built already
            maven();
        }
        archive();
        kernel();
        jupyter();
        return missing == 0 ? 0 : 1;
    }

    private void session() throws IOException, InterruptedException {
        long start = System.nanoTime();
        Optional<String> status = SelfCheck.run(Sessions::open, "6 * 7");
        if (status.equals(Optional.of("ok"))) {
            double seconds = (System.nanoTime() - start) / 1e9;
            good("cells", String.format(Locale.ROOT, "run over the notebook's channels, the first in %.1f s", seconds));
        } else {
            bad(
                    "cells",
                    "a trivial cell is answered with " + status.orElse("nothing"),
                    "Rebuild: mvn clean, then try again");
        }
    }

    private void maven() throws InterruptedException {
        Optional<String> version = Jupyter.says("mvn", "-v");
        if (version.isPresent()) {
            good("Maven", version.get().replaceAll("\u001b\\[[;\\d]*m", ""));
        } else {
            bad("Maven", "not found; needed to build after a change", "Debian: apt-get install maven");
        }
    }

    private void archive() throws IOException, InterruptedException {
        String remedy = "starting takes longer. Make one: ./shotledger kernel install";
        StartArchive archive = StartArchive.ofLauncher();
        if (!archive.exists()) {
            note("start-up archive", "none for this Java; " + remedy);
        } else if (!archive.fits()) {
            note("start-up archive", "does not fit this Java or these jars and is not used; " + remedy);
        } else {
            good("start-up archive", archive.bytes() / 1_000_000 + " MB, in use");
        }
    }

    private void kernel() throws IOException {
        Path own = JupyterPlace.userData().resolve("kernels").resolve(KernelSpec.NAME);
        if (!Files.exists(own.resolve("kernel.json"))) {
            note("kernel", "not registered for this user. ./shotledger kernel install; ./shotledger lab needs none");
            return;
        }
        Optional<String> fault = KernelSpec.fault(own);
        if (fault.isEmpty()) {
            good("kernel", "registered in " + own);
        } else {
            bad("kernel", "registered in " + own + ", but " + fault.get(), "./shotledger kernel install");
        }
    }

    private void jupyter() throws IOException, InterruptedException {
        Optional<Jupyter> found = Jupyter.find();
        if (found.isPresent()) {
            good("Jupyter", found.get().module() + " under " + found.get().python());
            return;
        }
        List<Path> pythons = Jupyter.onPath().toList();
        note(
                "Jupyter",
                pythons.isEmpty()
                        ? "none, and no python3; notebooks run headless with ./shotledger run"
                        : "none; ./shotledger lab makes a private one, or Debian: apt-get install jupyter-notebook");
    }

    private void good(String part, String fact) {
        line("good   ", part, fact);
    }

    private void note(String part, String fact) {
        line("note   ", part, fact + ".");
    }

    private void bad(String part, String fact, String remedy) {
        missing++;
        line("missing", part, fact + ". " + remedy + ".");
    }

    private void line(String verdict, String part, String fact) {
        out.println(String.format(Locale.ROOT, "%s  %-17s %s", verdict, part, fact));
    }
}
