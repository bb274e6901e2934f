package org.shotledger.fetch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import javax.tools.ToolProvider;

/**
 * A repository in a folder with invented libraries, and a user's folder whose settings lead to it.
 *
 * <p>Layout and settings after Maven's own documentation: "Introduction to Repositories", "Settings Reference".
 *
 * @param folder for both
 */
public record RepositoryFolder(Path folder) {

    /** Where the user's settings lie. */
    public Path user() {
        return folder.resolve("user");
    }

    /** What is {@code .m2} to the user. */
    public Path settings() {
        return user().resolve(".m2");
    }

    /** Writes the settings: everything comes from here, by the name of "workshop". */
    public RepositoryFolder withSettings() throws IOException {
        Files.createDirectories(settings());
        Files.writeString(
                settings().resolve("settings.xml"),
                "<settings><mirrors><mirror><id>workshop</id><mirrorOf>*</mirrorOf><url>"
                        + folder.resolve("shelf").toUri() + "</url></mirror></mirrors></settings>");
        return this;
    }

    /** Puts a library with one class onto the shelf. */
    public void put(String artifact, String needs, String className, String source) throws IOException {
        Path place = Files.createDirectories(folder.resolve("shelf/invented/" + artifact + "/1"));
        String dependencies = needs.isEmpty()
                ? ""
                : "<dependencies><dependency><groupId>invented</groupId><artifactId>" + needs
                        + "</artifactId><version>1</version></dependency></dependencies>";
        Files.writeString(
                place.resolve(artifact + "-1.pom"),
                "<project><modelVersion>4.0.0</modelVersion><groupId>invented</groupId><artifactId>" + artifact
                        + "</artifactId><version>1</version>" + dependencies + "</project>");
        Path sources = Files.createDirectories(folder.resolve("sources/invented"));
        Files.writeString(sources.resolve(className + ".java"), source);
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-proc:none",
                        "-sourcepath",
                        folder.resolve("sources").toString(),
                        sources.resolve(className + ".java").toString());
        if (failed != 0) {
            throw new IllegalArgumentException(className + " does not compile");
        }
        try (OutputStream out = Files.newOutputStream(place.resolve(artifact + "-1.jar"));
                JarOutputStream jar = new JarOutputStream(out)) {
            jar.putNextEntry(new ZipEntry("invented/" + className + ".class"));
            jar.write(Files.readAllBytes(sources.resolve(className + ".class")));
        }
    }

    /** One library that needs another. */
    public RepositoryFolder withTwo() throws IOException {
        put("bolt", "", "Bolt", "package invented; public class Bolt { public static int size() { return 8; } }");
        put(
                "flange",
                "bolt",
                "Flange",
                "package invented; public class Flange { public static int bolts() { return Bolt.size() / 2; } }");
        return this;
    }

    /** The names of files in the user's local repository that end so. */
    public List<String> local(String end) throws IOException {
        try (var files = Files.walk(settings().resolve("repository"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(end))
                    .sorted()
                    .toList();
        }
    }
}
