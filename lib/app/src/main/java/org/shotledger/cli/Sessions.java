package org.shotledger.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shotledger.job.SheetField;
import org.shotledger.job.SheetFields;
import org.shotledger.session.Session;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;
import org.shotledger.snippet.Words;

/** Opens sessions that know the project's names. */
final class Sessions {

    private static final String LIBRARY = "org.shotledger";

    private static final List<String> IMPORTS = List.of(
            "import java.nio.file.*;",
            "import java.util.function.*;",
            "import java.util.stream.*;",
            "import static java.lang.Math.*;",
            "import org.shotledger.display.*;");

    /** The job's own verbs, which completion lists first. */
    private static final Set<String> VERBS = Set.of(
            "Job",
            "Plan",
            "Evaluate",
            "Charts",
            "Tables",
            "job",
            "plan",
            "setup",
            "help",
            "units",
            "file",
            "why",
            "verdict",
            "document");

    private Sessions() {}

    /** What completion knows of the job. */
    static Words words() {
        return new Words(
                VERBS,
                () -> SheetFields.all().stream()
                        .map(SheetField::path)
                        .filter(path -> !path.contains("*"))
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** The index of the class path, which {@link WarmUp} writes for later starts; null without the launcher. */
    static Path index() {
        return System.getProperty(Folders.STATE) == null
                ? null
                : Folders.state().resolve("start-classes.index");
    }

    static JavaSession open() {
        List<String> imports = new ArrayList<>(IMPORTS);
        Session.IMPORTS.forEach(name -> imports.add("import " + name + ";"));
        return new JavaSession(SessionOptions.of(imports, index(), LIBRARY));
    }
}
