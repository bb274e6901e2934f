package org.shotledger.logs;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Puts a comment mark before each of the first lines, so that what a logger writes above its table is kept as its origin. */
final class CommentedLines extends FilterReader {
    private int left;
    private boolean lineBegins = true;

    CommentedLines(Reader in, int lines) {
        super(in);
        this.left = lines;
    }

    @Override
    public int read() throws IOException {
        if (lineBegins && left > 0) {
            left--;
            lineBegins = false;
            return '#';
        }
        int c = super.read();
        lineBegins = c == '\n';
        return c;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        if (left == 0) {
            return super.read(buffer, offset, length);
        }
        int n = 0;
        while (n < length) {
            int c = read();
            if (c < 0) {
                return n == 0 ? -1 : n;
            }
            buffer[offset + n++] = (char) c;
            if (left == 0) {
                return n;
            }
        }
        return n;
    }
}
