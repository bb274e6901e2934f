package org.shotledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Registers the kernel. */
@Command(
        name = "install",
        description = "Registers the kernel with Jupyter; with --class-path, one for another library.")
final class KernelInstallCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @ArgGroup
    private JupyterPlace place = new JupyterPlace();

    @ArgGroup(exclusive = false)
    private OtherLibrary library;

    @Override
    public Integer call() throws IOException, InterruptedException {
        InstallableKernel kernel = library == null ? new OwnKernel(Folders.home()) : library.kernel();
        Path folder = place.folder(kernel.name());
        kernel.install(folder);
        PrintWriter out = spec.commandLine().getOut();
        out.println("registered in " + folder);
        out.println(kernel.invitation());
        return 0;
    }

    /** What another library's kernel is made of. */
    static final class OtherLibrary {

        @Option(
                names = "--class-path",
                required = true,
                paramLabel = "JARS",
                description = "The library's jars and folders, as for java.")
        private String classPath;

        @Option(
                names = "--imports",
                split = ",",
                paramLabel = "NAME",
                description = "What each cell may name, such as com.example.*,static com.example.Units.*")
        private List<String> imports = List.of();

        @Option(
                names = "--library",
                paramLabel = "PACKAGE",
                defaultValue = "",
                description = "The library's package: what it refuses is told as a sentence, without a trace.")
        private String library = "";

        @Option(names = "--name", required = true, paramLabel = "NAME", description = "What Jupyter calls the kernel.")
        private String name;

        @Option(names = "--title", paramLabel = "TEXT", description = "What people see; default: Java (NAME).")
        private String title;

        LibraryKernel kernel() {
            if (!name.matches("[a-z0-9._-]+") || name.equals(KernelSpec.NAME)) {
                throw new IllegalArgumentException(
                        "--name " + name + " cannot be a kernel's name: small letters, digits,"
                                + " '.', '_' and '-' are allowed, and " + KernelSpec.NAME + " is taken.");
            }
            String shown = title == null ? "Java (" + name + ")" : title;
            return new LibraryKernel(
                    name, shown, classPath, imports.stream().map(String::strip).toList(), library);
        }
    }
}
