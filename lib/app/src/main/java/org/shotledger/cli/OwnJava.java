package org.shotledger.cli;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The Java that runs this process, with the options that the launcher chose: they stand there and nowhere else. */
final class OwnJava {

    /** Options that fit this process's own class path and folders only. */
    private static final List<String> NOT_FOR_OTHERS =
            List.of("-Dshotledger.", "-XX:SharedArchiveFile=", "-XX:AOTCache=");

    private OwnJava() {}

    /** Program and options for a process with a class path of its own, to be gone on with. */
    static List<String> command() {
        return command(option -> NOT_FOR_OTHERS.stream().noneMatch(option::startsWith));
    }

    /** Program and options for another process of this very program, to be gone on with. */
    static List<String> commandOfSameProgram() {
        return command(option -> true);
    }

    private static List<String> command(Predicate<String> taken) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(taken)
                .forEach(command::add);
        return command;
    }
}
