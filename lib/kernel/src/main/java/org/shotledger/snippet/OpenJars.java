package org.shotledger.snippet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Reads classes from jars, each of which is opened when its first class is needed. */
final class OpenJars implements AutoCloseable {

    private final Map<Path, ZipFile> open = new HashMap<>();

    synchronized byte[] read(ClassPathIndex.Place place) throws IOException {
        String path = place.binaryName().replace('.', '/') + ".class";
        if (Files.isDirectory(place.entry())) {
            return Files.readAllBytes(place.entry().resolve(path));
        }
        ZipFile jar = open.get(place.entry());
        if (jar == null) {
            jar = new ZipFile(place.entry().toFile());
            open.put(place.entry(), jar);
        }
        ZipEntry entry = jar.getEntry(path);
        if (entry == null) {
            throw new IOException(place.entry() + " has no " + path + " any more; restart the kernel.");
        }
        try (InputStream in = jar.getInputStream(entry)) {
            return in.readAllBytes();
        }
    }

    @Override
    public synchronized void close() throws IOException {
        for (ZipFile jar : open.values()) {
            jar.close();
        }
        open.clear();
    }
}
