package org.shotledger.cli;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.shotledger.files.AtomicFile;

/**
 * The entry by which Jupyter knows a kernel.
 *
 * @param title what people see
 * @param command what starts it
 */
record KernelSpec(String title, List<String> command) {

    static final String NAME = "shotledger";
    static final String TITLE = "Java (Shotledger)";

    /** What is read back of an entry. */
    private record Entry(List<String> argv, Map<String, String> env) {}

    KernelSpec {
        command = List.copyOf(command);
    }

    /** The project's own kernel, started by the launcher. */
    static KernelSpec ofLauncher(Path home) {
        return new KernelSpec(
                TITLE, List.of("bash", home.resolve("shotledger").toString(), "kernel", "serve", "{connection_file}"));
    }

    void write(Path folder) throws IOException {
        JsonArray words = new JsonArray();
        command.forEach(words::add);
        JsonObject spec = new JsonObject();
        spec.add("argv", words);
        spec.addProperty("display_name", title);
        spec.addProperty("language", "java");
        spec.addProperty("interrupt_mode", "message");
        spec.add("env", environment());
        String json = new GsonBuilder()
                .setPrettyPrinting()
                .disableHtmlEscaping()
                .create()
                .toJson(spec);
        AtomicFile.write(folder.resolve("kernel.json"), json + "\n");
    }

    /** Jupyter may be started with another Java in its environment than the one this was installed with. */
    private static JsonObject environment() {
        JsonObject environment = new JsonObject();
        environment.addProperty("JAVA_HOME", System.getProperty("java.home"));
        return environment;
    }

    /** What keeps a registered kernel from starting, as the end of a sentence; nothing if nothing does. */
    static Optional<String> fault(Path folder) throws IOException {
        Path file = folder.resolve("kernel.json");
        Entry entry;
        try {
            entry = new Gson().fromJson(Files.readString(file), Entry.class);
        } catch (JsonParseException e) {
            entry = null;
        }
        if (entry == null || entry.argv() == null || entry.argv().size() < 2 || entry.env() == null) {
            return Optional.of("its kernel.json cannot be understood");
        }
        if (!Files.isRegularFile(Path.of(entry.argv().get(1)))) {
            return Optional.of("its launcher " + entry.argv().get(1) + " is not there any more");
        }
        String java = String.valueOf(entry.env().get("JAVA_HOME"));
        return Files.isExecutable(Path.of(java, "bin", "java"))
                ? Optional.empty()
                : Optional.of("its Java " + java + " is not there any more");
    }

    static boolean remove(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        }
        return true;
    }
}
