package org.shotledger.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.shotledger.files.AtomicFile;
import org.shotledger.kernel.KernelMain;

/**
 * A kernel for a library of somebody else's, started without the launcher.
 *
 * @param name what Jupyter calls it
 * @param title what people see
 * @param classPath the library's jars and folders
 * @param imports what each cell may name, without the word import
 * @param library the library's package; empty for none
 */
record LibraryKernel(String name, String title, String classPath, List<String> imports, String library)
        implements InstallableKernel {

    private static final int FIRST_WITH_AOT_CACHE = 25;

    @Override
    public String invitation() {
        return "Choose the kernel \"" + title + "\" in Jupyter.";
    }

    /** Tries the kernel, makes what lets it start fast, and registers it. */
    @Override
    public void install(Path folder) throws IOException, InterruptedException {
        String path = wholeClassPath();
        Path state = Folders.state().resolve("kernels").resolve(name);
        Files.createDirectories(state);
        List<String> start = OwnJava.command();
        start.addAll(List.of("-Dkernel.index=" + state.resolve("classes.index"), "-Dkernel.library=" + library));
        List<String> end = new ArrayList<>(List.of("-cp", path, KernelMain.class.getName()));
        Path archive = state.resolve("classes.archive");
        Files.deleteIfExists(archive);
        if (!tryWith(start, end, archive)) {
            throw new IOException("the kernel " + name + " answers no cell with the class path " + path
                    + " and these imports: " + String.join(", ", imports) + ". Nothing was registered.");
        }
        if (Files.exists(archive)) {
            start.add((isNew() ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + archive);
        }
        List<String> command = new ArrayList<>(start);
        command.addAll(end);
        command.add("{connection_file}");
        command.addAll(imports);
        new KernelSpec(title, command).write(folder);
    }

    /** Runs a cell, which tells the JVM what to put into an archive. */
    private boolean tryWith(List<String> start, List<String> end, Path archive)
            throws IOException, InterruptedException {
        Path classes = archive.resolveSibling("classes.list");
        List<String> trial = new ArrayList<>(start);
        trial.add(isNew() ? "-XX:AOTCacheOutput=" + archive : "-XX:DumpLoadedClassList=" + classes);
        trial.addAll(end);
        trial.add("--try");
        trial.addAll(imports);
        if (!Jupyter.succeeds(trial.toArray(String[]::new))) {
            return false;
        }
        if (!isNew()) {
            List<String> dump = new ArrayList<>(start);
            dump.addAll(
                    List.of("-Xshare:dump", "-XX:SharedClassListFile=" + classes, "-XX:SharedArchiveFile=" + archive));
            dump.addAll(end.subList(0, 2));
            if (!Jupyter.succeeds(dump.toArray(String[]::new))) {
                Files.deleteIfExists(archive); // it starts without one, too
            }
            Files.deleteIfExists(classes);
        }
        return true;
    }

    private static boolean isNew() {
        return Runtime.version().feature() >= FIRST_WITH_AOT_CACHE;
    }

    /** The kernel's own jars and the library's, all of which must be there. */
    private String wholeClassPath() throws IOException {
        Set<Path> all = new LinkedHashSet<>(KernelMain.ownClassPath());
        all.addAll(KernelMain.locations(List.of(AtomicFile.class)));
        for (String entry : List.of(classPath.split(File.pathSeparator, -1))) {
            Path file = Folders.fromCommandLine(Path.of(entry));
            if (entry.isEmpty() || !Files.exists(file)) {
                throw new IllegalArgumentException("--class-path names " + file + ", which is not there.");
            }
            all.add(file);
        }
        return all.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }
}
