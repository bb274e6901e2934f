package org.shotledger.snippet;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;

/** The compiler's view of files, with the class path answered from an index instead of by opening each jar. */
final class ClassPathFiles extends ForwardingJavaFileManager<StandardJavaFileManager>
        implements StandardJavaFileManager {

    /** How long the search index for package names waits, so that it does not compete with the first cell. */
    private static final long INDEX_DELAY_MILLIS = 3_000;

    private final Libraries index;
    private final OpenJars jars = new OpenJars();
    private final CountDownLatch over = new CountDownLatch(1);

    ClassPathFiles(StandardJavaFileManager platform, Libraries index) {
        super(platform);
        this.index = index;
    }

    @Override
    public Iterable<JavaFileObject> list(
            Location location, String packageName, Set<JavaFileObject.Kind> kinds, boolean recurse) throws IOException {
        if (location != StandardLocation.CLASS_PATH) {
            return super.list(location, packageName, kinds, recurse);
        }
        if (!kinds.contains(JavaFileObject.Kind.CLASS)) {
            return List.of();
        }
        return index.list(packageName, recurse).stream()
                .<JavaFileObject>map(place -> new ClassFile(place, jars))
                .toList();
    }

    @Override
    public JavaFileObject getJavaFileForInput(Location location, String className, JavaFileObject.Kind kind)
            throws IOException {
        if (location != StandardLocation.CLASS_PATH) {
            return super.getJavaFileForInput(location, className, kind);
        }
        ClassPathIndex.Place place = kind == JavaFileObject.Kind.CLASS ? index.find(className) : null;
        return place == null ? null : new ClassFile(place, jars);
    }

    @Override
    public String inferBinaryName(Location location, JavaFileObject file) {
        return file instanceof ClassFile own ? own.place().binaryName() : super.inferBinaryName(location, file);
    }

    @Override
    public boolean contains(Location location, FileObject file) throws IOException {
        return file instanceof ClassFile ? location == StandardLocation.CLASS_PATH : super.contains(location, file);
    }

    @Override
    public boolean isSameFile(FileObject a, FileObject b) {
        boolean own = a instanceof ClassFile || b instanceof ClassFile;
        return own ? a.equals(b) : super.isSameFile(a, b);
    }

    @Override
    public boolean hasLocation(Location location) {
        return location == StandardLocation.CLASS_PATH
                || location == StandardLocation.ANNOTATION_PROCESSOR_PATH
                || super.hasLocation(location);
    }

    /** Nothing on the class path plugs into the compiler: looking for plug-ins there would open each jar. */
    @Override
    public ClassLoader getClassLoader(Location location) {
        return location == StandardLocation.ANNOTATION_PROCESSOR_PATH
                ? ClassLoader.getPlatformClassLoader()
                : super.getClassLoader(location);
    }

    /** Asked by the search for package names, on its own thread, as soon as a session starts. */
    @Override
    public Iterable<? extends Path> getLocationAsPaths(Location location) {
        if (location == StandardLocation.CLASS_PATH) {
            return index.entries();
        }
        if (location == StandardLocation.PLATFORM_CLASS_PATH && isOver()) {
            return List.of();
        }
        return fileManager.getLocationAsPaths(location);
    }

    /** Waits; one thread makes the search indexes of all sessions, so those of sessions that are closed must not hold up the others. */
    private boolean isOver() {
        try {
            return over.await(INDEX_DELAY_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    /** The session is closed: nobody will search any more. */
    void end() {
        over.countDown();
    }

    @Override
    public void close() throws IOException {
        jars.close();
        super.close();
    }

    // what follows belongs to the interface and goes to the platform's manager unchanged

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjectsFromFiles(Iterable<? extends File> files) {
        return fileManager.getJavaFileObjectsFromFiles(files);
    }

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjects(File... files) {
        return fileManager.getJavaFileObjects(files);
    }

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjectsFromStrings(Iterable<String> names) {
        return fileManager.getJavaFileObjectsFromStrings(names);
    }

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjects(String... names) {
        return fileManager.getJavaFileObjects(names);
    }

    @Override
    public void setLocation(Location location, Iterable<? extends File> files) throws IOException {
        fileManager.setLocation(location, files);
    }

    @Override
    public void setLocationFromPaths(Location location, Collection<? extends Path> paths) throws IOException {
        fileManager.setLocationFromPaths(location, paths);
    }

    @Override
    public Iterable<? extends File> getLocation(Location location) {
        return fileManager.getLocation(location);
    }

    @Override
    public Path asPath(FileObject file) {
        return fileManager.asPath(file);
    }
}
