package org.shotledger.cli;

import java.util.List;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;

/** Opens sessions that know the project's names. */
final class Sessions {

    private static final List<String> IMPORTS = List.of(
            "import java.nio.file.*;",
            "import java.util.*;",
            "import java.util.function.*;",
            "import java.util.stream.*;",
            "import static java.lang.Math.*;",
            "import org.shotledger.display.*;");

    private Sessions() {}

    static JavaSession open() {
        return new JavaSession(SessionOptions.of(IMPORTS));
    }
}
