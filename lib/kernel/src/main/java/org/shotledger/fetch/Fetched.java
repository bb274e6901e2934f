package org.shotledger.fetch;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A library that is on this machine now.
 *
 * @param coordinates what was asked for
 * @param jars its jar and those it needs, in the order of a class path
 */
public record Fetched(String coordinates, List<Jar> jars) {

    /**
     * One jar.
     *
     * @param coordinates group, artifact and version
     * @param file where it lies
     * @param from the repository it was fetched from just now; empty if it was there before
     */
    public record Jar(String coordinates, Path file, String from) {}

    public Fetched {
        jars = List.copyOf(jars);
    }

    /**
     * What was fetched.
     *
     * @return one sentence or two
     */
    public String sentence() {
        List<Jar> fresh = jars.stream().filter(jar -> !jar.from().isEmpty()).toList();
        String all = coordinates + " can be used from here on, with "
                + (jars.size() == 1 ? "one jar" : jars.size() + " jars") + ". ";
        if (fresh.isEmpty()) {
            return all + "Nothing was fetched: the local repository had everything.";
        }
        Set<String> places = fresh.stream().map(Jar::from).collect(Collectors.toSet());
        return all + "Fetched from " + places.stream().sorted().collect(Collectors.joining(" and ")) + ": "
                + fresh.stream().map(Jar::coordinates).collect(Collectors.joining(", ")) + ".";
    }
}
