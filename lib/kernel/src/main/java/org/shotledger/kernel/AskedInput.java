package org.shotledger.kernel;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.shotledger.display.DisplaySink;

/** {@code System.in} of a cell: each line is asked of the person at the notebook. */
final class AskedInput extends InputStream {

    private final DisplaySink person;
    private byte[] line = new byte[0];
    private int at;

    AskedInput(DisplaySink person) {
        this.person = person;
    }

    @Override
    public int read() throws IOException {
        fill();
        return line[at++] & 0xFF;
    }

    @Override
    public int read(byte[] target, int offset, int count) throws IOException {
        if (count == 0) {
            return 0;
        }
        fill();
        int taken = Math.min(count, line.length - at);
        System.arraycopy(line, at, target, offset, taken);
        at += taken;
        return taken;
    }

    @Override
    public int available() {
        return line.length - at;
    }

    private void fill() throws IOException {
        if (at == line.length) {
            line = (ask() + "\n").getBytes(StandardCharsets.UTF_8);
            at = 0;
        }
    }

    private String ask() throws IOException {
        try {
            return person.ask("", false);
        } catch (IllegalStateException e) {
            throw new IOException(e.getMessage(), e);
        }
    }
}
