package org.shotledger.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where relative paths lead.
 *
 * <p>Paths on the command line start from the folder the command was given in. Paths inside a notebook start from the project
 * folder: the nearest folder, from the notebook's own upwards, that holds a folder {@code data}; the notebook's own folder if
 * there is none. The launcher starts this process there, in Jupyter as well as in a headless run.
 */
final class Folders {

    /** Set by the launcher, which changes the folder. */
    private static final String GIVEN_IN = "shotledger.cwd";

    /** Set by the launcher: where it keeps what it makes for this machine. */
    static final String STATE = "shotledger.state";

    private Folders() {}

    /** The project's top folder, which holds the launcher. */
    static Path home() {
        String home = System.getProperty("shotledger.home");
        if (home == null) {
            throw new IllegalStateException(
                    "this command needs the launcher: run ./shotledger from the project's folder.");
        }
        return Path.of(home);
    }

    /** Where the launcher keeps what it makes for this machine: the user's own cache if nothing may be written beside the program. */
    static Path state() {
        return Path.of(
                System.getProperty(STATE, home().resolve("lib/app/target").toString()));
    }

    /** The user's own folder; who sets another for a process means it. */
    static Path ofUser() {
        String set = System.getenv("HOME");
        return Path.of(set == null || set.isEmpty() ? System.getProperty("user.home") : set);
    }

    static Path fromCommandLine(Path given) {
        return Path.of(System.getProperty(GIVEN_IN, ""))
                .resolve(given)
                .toAbsolutePath()
                .normalize();
    }

    static Path projectOf(Path notebook) {
        Path own = notebook.toAbsolutePath().normalize().getParent();
        for (Path folder = own; folder != null; folder = folder.getParent()) {
            if (Files.isDirectory(folder.resolve("data"))) {
                return folder;
            }
        }
        return own;
    }

    /** How to call a file in messages: short if it lies below the folder the command was given in. */
    static String shown(Path file) {
        Path base = fromCommandLine(Path.of(""));
        Path absolute = file.toAbsolutePath().normalize();
        return absolute.startsWith(base) ? base.relativize(absolute).toString() : absolute.toString();
    }
}
