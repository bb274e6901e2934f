package org.shotledger.snippet;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.InternalException;

/** The classes of a session: those of its cells, the stubs between them, and those of libraries that its cells have added. */
final class CellLoader implements LoaderDelegate {

    private final Classes classes = new Classes();

    CellLoader() {
        // libraries that look for services of the cells ask the thread
        Thread.currentThread().setContextClassLoader(classes);
    }

    /** All of them are known before the first is made: classes of one cell mention each other. */
    @Override
    public void load(ClassBytecodes[] sources) throws ClassInstallException {
        boolean[] loaded = new boolean[sources.length];
        for (ClassBytecodes source : sources) {
            classes.waiting.put(source.name(), source.bytecodes());
        }
        for (int i = 0; i < sources.length; i++) {
            try {
                classes.loadClass(sources[i].name());
                loaded[i] = true;
            } catch (ClassNotFoundException | LinkageError e) {
                throw new ClassInstallException(sources[i].name() + " cannot be loaded: " + e.getMessage(), loaded);
            }
        }
    }

    @Override
    public void classesRedefined(ClassBytecodes[] sources) {
        // nothing is redefined in place here: Linker puts other classes behind the same names
    }

    @Override
    public void addToClasspath(String path) throws InternalException {
        for (String entry : path.split(File.pathSeparator, -1)) {
            try {
                classes.addURL(Path.of(entry).toUri().toURL());
            } catch (MalformedURLException e) {
                throw new InternalException(entry + " cannot be put on the class path: " + e.getMessage());
            }
        }
    }

    @Override
    public Class<?> findClass(String name) throws ClassNotFoundException {
        return classes.loadClass(name);
    }

    /** Makes classes from the bytes it was given. */
    private static final class Classes extends URLClassLoader {
        private final Map<String, byte[]> waiting = new ConcurrentHashMap<>();

        Classes() {
            super(new URL[0], ClassLoader.getSystemClassLoader());
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] bytes = waiting.remove(name);
            return bytes == null ? super.findClass(name) : defineClass(name, bytes, 0, bytes.length);
        }

        @Override
        protected void addURL(URL jar) { // for the class around this one
            super.addURL(jar);
        }
    }
}
