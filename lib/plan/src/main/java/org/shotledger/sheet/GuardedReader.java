package org.shotledger.sheet;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Passes text on and stops at what no table holds: control characters and endless lines, with the line named. */
final class GuardedReader extends FilterReader {
    private static final int LONGEST_LINE = 20_000;

    private int line = 1;
    private int column;

    GuardedReader(Reader in) {
        super(in);
    }

    /** What was met, with its line. */
    static final class Refused extends IOException {
        private static final long serialVersionUID = 1L;
        final int line;

        Refused(int line, String sentence) {
            super(sentence);
            this.line = line;
        }
    }

    @Override
    public int read() throws IOException {
        int c = super.read();
        if (c >= 0) {
            check((char) c);
        }
        return c;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        int n = super.read(buffer, offset, length);
        for (int i = offset; i < offset + n; i++) {
            check(buffer[i]);
        }
        return n;
    }

    private void check(char c) throws Refused {
        if (c == '\n') {
            line++;
            column = 0;
        } else if (++column > LONGEST_LINE) {
            throw new Refused(line, "The line is longer than " + LONGEST_LINE + " characters; check the line ends.");
        } else if (c < ' ' && c != '\t' && c != '\r') {
            throw new Refused(
                    line, String.format("The character U+%04X does not belong into a table; remove it.", (int) c));
        }
    }
}
