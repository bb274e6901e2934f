package org.shotledger.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicReference;
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

    private static final AtomicReference<FutureTask<JavaSession>> BEGUN = new AtomicReference<>();

    private Sessions() {}

    /** Starts making the session that the command will ask for, while its line is still being read. */
    static void begin() {
        FutureTask<JavaSession> task = new FutureTask<>(Sessions::make);
        BEGUN.set(task);
        Thread thread = new Thread(task, "session");
        thread.setDaemon(true);
        thread.start();
    }

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
        FutureTask<JavaSession> begun = BEGUN.getAndSet(null);
        if (begun == null) {
            return make();
        }
        try {
            return begun.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(
                    "the session cannot start: " + e.getCause().getMessage(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the session starts", e);
        }
    }

    private static JavaSession make() {
        List<String> imports = new ArrayList<>(IMPORTS);
        Session.IMPORTS.forEach(name -> imports.add("import " + name + ";"));
        return new JavaSession(SessionOptions.of(imports, index(), LIBRARY));
    }
}
