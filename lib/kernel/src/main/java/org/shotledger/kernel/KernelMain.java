package org.shotledger.kernel;

import com.google.gson.Gson;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shotledger.display.Display;
import org.shotledger.ipynb.Notebook;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;
import org.shotledger.snippet.Words;
import org.zeromq.ZContext;

/**
 * A kernel for any library: serves one notebook with the class path it was started with.
 *
 * <p>Its arguments are the connection file that Jupyter wrote, and the imports each cell gets, without the word {@code import}, such as
 * {@code java.util.*} or {@code static java.lang.Math.*}. The system property {@code kernel.library} names the package of the library the
 * notebooks are about, {@code kernel.index} a file in which to keep what the class path holds. {@code --try} in place of the connection
 * file runs one cell and writes the index.
 */
public final class KernelMain {

    private KernelMain() {}

    /**
     * Serves until the front end asks for the end, and ends the process.
     *
     * @param arguments connection file and imports
     * @throws IOException if the connection file cannot be read
     * @throws InterruptedException if this thread is interrupted
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments.length == 0) {
            System.err.println("The connection file is missing: KernelMain FILE [IMPORT]...");
            System.exit(2);
        }
        SessionOptions options =
                options(List.of(arguments).subList(1, arguments.length), System.getProperty("kernel.library", ""));
        if (arguments[0].equals("--try")) {
            System.exit(tried(options) ? 0 : 1);
        }
        new Kernel(ConnectionFile.read(Path.of(arguments[0])), () -> new JavaSession(options), Words.NONE).serve();
        System.exit(0);
    }

    /**
     * What a session of such a kernel starts with.
     *
     * @param names what to import, without the word
     * @param library the library's package; empty for none
     * @return the options, for the class path of this process
     */
    static SessionOptions options(List<String> names, String library) {
        List<String> imports =
                names.stream().map(name -> "import " + name + ";").toList();
        return SessionOptions.of(imports, index(), library);
    }

    private static Path index() {
        String file = System.getProperty("kernel.index");
        return file == null ? null : Path.of(file);
    }

    private static boolean tried(SessionOptions options) throws IOException, InterruptedException {
        if (index() != null) {
            options.classes().write(index());
        }
        return SelfCheck.run(
                        () -> new JavaSession(options),
                        "int six = 6;\nrecord Twice(int of) {}\nnew Twice(six).of() * 7")
                .equals(Optional.of("ok"));
    }

    /**
     * The jars or folders that a kernel needs beside those of the library.
     *
     * @return each once
     * @throws IOException if one cannot be found
     */
    public static Set<Path> ownClassPath() throws IOException {
        return locations(List.of(Kernel.class, Display.class, Notebook.class, Gson.class, ZContext.class));
    }

    /**
     * The jars or folders that classes were loaded from.
     *
     * @param classes the classes
     * @return each once
     * @throws IOException if one cannot be found
     */
    public static Set<Path> locations(List<Class<?>> classes) throws IOException {
        Set<Path> found = new LinkedHashSet<>();
        for (Class<?> one : classes) {
            try {
                found.add(Path.of(
                        one.getProtectionDomain().getCodeSource().getLocation().toURI()));
            } catch (URISyntaxException e) {
                throw new IOException("it cannot be found out where " + one.getName() + " was loaded from", e);
            }
        }
        return found;
    }
}
