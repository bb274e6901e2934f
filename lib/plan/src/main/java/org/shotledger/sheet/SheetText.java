package org.shotledger.sheet;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a text file that must be UTF-8, not too long, and free of control characters. */
public final class SheetText {
    /** Largest sheet that is read, bytes. */
    public static final int LARGEST = 1 << 20;

    private SheetText() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @param name the file as the user named it
     * @return its text without a byte order mark
     * @throws SheetException when there is no such file, it is too long, or not text
     */
    public static String read(Path file, String name) {
        if (!Files.exists(file)) {
            throw new SheetException(Problem.of(name, "There is no such file; check the name and the folder."));
        }
        if (!Files.isRegularFile(file)) {
            throw new SheetException(Problem.of(name, "This is not a file; name a file."));
        }
        try {
            long size = Files.size(file);
            if (size > LARGEST) {
                throw new SheetException(Problem.of(
                        name,
                        "The file has " + size + " bytes; a sheet may have " + LARGEST + ". Move tables to CSV."));
            }
            return decode(Files.readAllBytes(file), name);
        } catch (IOException e) {
            throw new SheetException(
                    Problem.of(name, "The file cannot be read (" + e.getMessage() + "); check its rights."));
        }
    }

    /**
     * Decodes bytes and refuses what is not text.
     *
     * @param bytes the content
     * @param name the file as the user named it
     * @return the text without a byte order mark
     * @throws SheetException when the bytes are not UTF-8 text
     */
    public static String decode(byte[] bytes, String name) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return check(text, name);
        } catch (CharacterCodingException e) {
            throw new SheetException(Problem.of(name, "The file is not UTF-8 text; save it as UTF-8."));
        }
    }

    /**
     * Refuses control characters and over-long text.
     *
     * @param text the content
     * @param name the file as the user named it
     * @return the text without a byte order mark
     * @throws SheetException when a character does not belong into a text
     */
    public static String check(String text, String name) {
        if (text.length() > LARGEST) {
            throw new SheetException(Problem.of(
                    name, "The text has " + text.length() + " characters; a sheet may have " + LARGEST + "."));
        }
        String clean = text.startsWith("\uFEFF") ? text.substring(1) : text;
        int line = 1;
        for (int i = 0; i < clean.length(); i++) {
            char c = clean.charAt(i);
            if (c == '\n') {
                line++;
            } else if ((c < ' ' && c != '\t' && c != '\r') || c == 0x7f) {
                throw new SheetException(new Problem(
                        name,
                        line,
                        0,
                        "",
                        "",
                        String.format("The character U+%04X does not belong into a text; remove it.", (int) c)));
            }
        }
        return clean;
    }
}
