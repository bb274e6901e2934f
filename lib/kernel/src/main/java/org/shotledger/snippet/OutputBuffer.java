package org.shotledger.snippet;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Collects what one cell prints and passes it on in large pieces, keeping the order between the two streams. */
final class OutputBuffer {

    private static final int FULL = 32_768;

    private final OutputListener listener;
    private byte[] bytes = new byte[1024];
    private int length;
    private String stream = "stdout";

    OutputBuffer(OutputListener listener) {
        this.listener = listener;
    }

    /** Appends bytes of UTF-8; true if this was the first since the last flush. */
    synchronized boolean append(String name, byte[] source, int offset, int count) {
        if (!name.equals(stream)) {
            flush();
            stream = name;
        }
        boolean first = length == 0;
        if (length + count > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(length + count, 2 * bytes.length));
        }
        System.arraycopy(source, offset, bytes, length, count);
        length += count;
        if (length >= FULL) {
            flush();
        }
        return first;
    }

    /** Passes on what is there, but for the start of a character whose end has not come yet. */
    synchronized void flush() {
        int whole = wholeCharacters();
        if (whole == 0) {
            return;
        }
        String text = new String(bytes, 0, whole, StandardCharsets.UTF_8);
        System.arraycopy(bytes, whole, bytes, 0, length - whole);
        length -= whole;
        if (bytes.length > 4 * FULL) {
            bytes = Arrays.copyOf(bytes, Math.max(1024, length));
        }
        listener.printed(stream, text);
    }

    private int wholeCharacters() {
        int lead = length - 1;
        while (lead >= 0 && lead > length - 4 && (bytes[lead] & 0xC0) == 0x80) {
            lead--;
        }
        if (lead < 0) {
            return length;
        }
        int first = bytes[lead] & 0xFF;
        int need = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : first >= 0xC0 ? 2 : 1;
        return length - lead < need ? lead : length;
    }
}
