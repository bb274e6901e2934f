package org.shotledger.snippet;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;

/** What the compiler finds on the class path: what the session began with, and what its cells have added since. */
final class Libraries {

    private final List<ClassPathIndex> parts;

    Libraries(ClassPathIndex first) {
        this.parts = new CopyOnWriteArrayList<>(List.of(first));
    }

    /** Adds those of the jars that are not there yet, and gives them back. */
    List<Path> add(List<Path> jars) {
        Set<Path> known = Set.copyOf(entries());
        List<Path> fresh = jars.stream().filter(jar -> !known.contains(jar)).toList();
        if (!fresh.isEmpty()) {
            parts.add(ClassPathIndex.of(
                    null, fresh.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator))));
        }
        return fresh;
    }

    List<Path> entries() {
        return parts.stream().flatMap(part -> part.entries().stream()).toList();
    }

    List<ClassPathIndex.Place> list(String packageName, boolean below) {
        return parts.size() == 1
                ? parts.get(0).list(packageName, below)
                : parts.stream()
                        .flatMap(part -> part.list(packageName, below).stream())
                        .toList();
    }

    /** Where a class is, or null. */
    ClassPathIndex.Place find(String binaryName) {
        for (ClassPathIndex part : parts) {
            ClassPathIndex.Place found = part.find(binaryName);
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
