package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The index against the JDK's own file manager, which opens each jar. */
class ClassPathIndexTest {

    @TempDir
    private Path folder;

    @Test
    void listsWhatTheJdksFileManagerLists() throws IOException {
        String classPath = System.getProperty("java.class.path");
        ClassPathIndex index = ClassPathIndex.of(null, classPath);
        try (StandardJavaFileManager jdk =
                ToolProvider.getSystemJavaCompiler().getStandardFileManager(null, null, null)) {
            jdk.setLocation(
                    StandardLocation.CLASS_PATH,
                    List.of(classPath.split(File.pathSeparator)).stream()
                            .map(File::new)
                            .toList());
            for (String name :
                    List.of("org.shotledger.display", "com.google.gson", "org.junit.jupiter.api", "no.such")) {
                Set<String> expected = new TreeSet<>();
                for (JavaFileObject file :
                        jdk.list(StandardLocation.CLASS_PATH, name, Set.of(JavaFileObject.Kind.CLASS), false)) {
                    expected.add(jdk.inferBinaryName(StandardLocation.CLASS_PATH, file));
                }
                expected.removeIf(found -> found.matches(".*\\$\\d.*")); // nobody can name classes inside methods
                assertEquals(expected, names(index.list(name, false)), name);
            }
        }
    }

    @Test
    void aWrittenIndexAnswersTheSame() throws IOException {
        String classPath = System.getProperty("java.class.path");
        ClassPathIndex scanned = ClassPathIndex.of(null, classPath);
        Path file = folder.resolve("classes.index");
        scanned.write(file);
        ClassPathIndex read = ClassPathIndex.of(file, classPath);
        assertEquals(scanned.list("org.shotledger", true), read.list("org.shotledger", true));
        assertEquals(scanned.list("", true).size(), read.list("", true).size());
        assertTrue(names(read.list("org.shotledger", true)).contains("org.shotledger.display.Display"));
    }

    @Test
    void anIndexOfAJarThatHasChangedIsNotUsed() throws IOException {
        Path jar = folder.resolve("lib.jar");
        Path file = folder.resolve("classes.index");
        jar(jar, "a/One.class");
        ClassPathIndex.of(null, jar.toString()).write(file);
        jar(jar, "a/One.class", "a/Another.class");
        assertEquals(2, ClassPathIndex.of(file, jar.toString()).list("a", false).size());
    }

    @Test
    void aDamagedIndexIsNotUsed() throws IOException {
        Path jar = folder.resolve("lib.jar");
        Path file = folder.resolve("classes.index");
        jar(jar, "a/One.class");
        Files.write(file, new byte[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14});
        assertEquals(1, ClassPathIndex.of(file, jar.toString()).list("a", false).size());
    }

    @Test
    void findsOneClass() throws IOException {
        Path jar = folder.resolve("lib.jar");
        jar(jar, "a/One.class", "ab/Two.class", "Top.class");
        ClassPathIndex index = ClassPathIndex.of(null, jar.toString());
        assertEquals("a.One", index.find("a.One").binaryName());
        assertEquals("Top", index.find("Top").binaryName());
        assertNull(index.find("a.Two"));
        assertEquals(
                List.of("a.One"),
                index.list("a", true).stream()
                        .map(ClassPathIndex.Place::binaryName)
                        .toList());
    }

    private static void jar(Path file, String... classes) throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            for (String name : classes) {
                out.putNextEntry(new ZipEntry(name));
                out.closeEntry();
            }
        }
    }

    private static Set<String> names(List<ClassPathIndex.Place> places) {
        Set<String> names = new TreeSet<>();
        places.forEach(place -> names.add(place.binaryName()));
        return names;
    }
}
