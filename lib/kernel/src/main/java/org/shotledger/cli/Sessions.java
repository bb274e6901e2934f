package org.shotledger.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shotledger.session.Session;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;

/** Opens sessions that know the project's names. */
final class Sessions {

    private static final List<String> IMPORTS = List.of(
            "import java.nio.file.*;",
            "import java.util.function.*;",
            "import java.util.stream.*;",
            "import static java.lang.Math.*;",
            "import org.shotledger.display.*;");

    /** The job's own verbs, which completion lists first. */
    static final Set<String> VERBS = Set.of(
            "Build",
            "Budget",
            "Wish",
            "Charts",
            "Tables",
            "budget",
            "build",
            "help",
            "units",
            "file",
            "why",
            "verdict",
            "document");

    private Sessions() {}

    /** Where the launcher keeps the index of the class path; null without the launcher. */
    static Path index() {
        String file = System.getProperty("shotledger.index");
        return file == null ? null : Path.of(file);
    }

    static JavaSession open() {
        List<String> imports = new ArrayList<>(IMPORTS);
        Session.IMPORTS.forEach(name -> imports.add("import " + name + ";"));
        return new JavaSession(SessionOptions.of(imports, index()));
    }
}
