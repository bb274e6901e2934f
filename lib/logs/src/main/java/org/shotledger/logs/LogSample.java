package org.shotledger.logs;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The first lines of a text, looked at without being used up. */
final class LogSample {
    private static final int LONGEST = 1 << 16;

    private LogSample() {}

    /** The lines that are whole within the first 65 536 characters. */
    static List<String> of(BufferedReader text) throws IOException {
        text.mark(LONGEST + 1);
        char[] chars = new char[LONGEST];
        int n = 0;
        int read = 0;
        while (n < LONGEST && read >= 0) {
            n += read;
            read = text.read(chars, n, LONGEST - n);
        }
        text.reset();
        String sample = new String(chars, 0, n);
        List<String> lines = new ArrayList<>((sample.startsWith("\uFEFF") ? sample.substring(1) : sample)
                .lines()
                .toList());
        if (n == LONGEST && !lines.isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }
}
