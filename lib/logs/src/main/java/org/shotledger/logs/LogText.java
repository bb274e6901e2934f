package org.shotledger.logs;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Opens the text of a log in the coding it was written in: UTF-8, UTF-16 with or without a byte order mark, else one byte a
 * character.
 *
 * <p>One byte a character is read as windows-1252, which the Encoding Standard (WHATWG) reads wherever "latin1" is said; it holds
 * all printable characters of ISO 8859-1 at their places.
 */
final class LogText {
    private static final Charset ONE_BYTE = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 4096;
    /** Share of zero bytes at every second place that tells UTF-16 from text of one byte, which has none; our choice. */
    private static final double ZEROS = 0.4;

    private LogText() {}

    static BufferedReader open(Path file) throws IOException {
        Charset charset = charset(file);
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
        return new BufferedReader(new InputStreamReader(Files.newInputStream(file), decoder));
    }

    private static Charset charset(Path file) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            in.mark(LOOKED_AT);
            byte[] head = in.readNBytes(LOOKED_AT);
            Charset wide = wide(head);
            if (wide != null) {
                return wide;
            }
            in.reset();
            return isUtf8(in) ? StandardCharsets.UTF_8 : ONE_BYTE;
        }
    }

    /** UTF-16 by its mark, or because every second byte of a mostly Western text is zero; null when it is neither. */
    private static Charset wide(byte[] head) {
        int mark = head.length < 2 ? 0 : (head[0] & 0xFF) << 8 | (head[1] & 0xFF);
        if (mark == 0xFEFF || mark == 0xFFFE) {
            return StandardCharsets.UTF_16;
        }
        int[] zeros = new int[2];
        for (int i = 0; i < head.length; i++) {
            zeros[i % 2] += head[i] == 0 ? 1 : 0;
        }
        double half = head.length / 2.0;
        if (zeros[1] > ZEROS * half && zeros[0] == 0) {
            return StandardCharsets.UTF_16LE;
        }
        return zeros[0] > ZEROS * half && zeros[1] == 0 ? StandardCharsets.UTF_16BE : null;
    }

    private static boolean isUtf8(InputStream in) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(1 << 16);
        CharBuffer chars = CharBuffer.allocate(1 << 16);
        boolean end = false;
        while (!end) {
            int n = in.read(bytes.array(), bytes.position(), bytes.remaining());
            end = n < 0;
            bytes.position(bytes.position() + Math.max(n, 0)).flip();
            CoderResult result = decoder.decode(bytes, chars, end);
            if (result.isError()) {
                return false;
            }
            chars.clear();
            bytes.compact();
        }
        return true;
    }
}
