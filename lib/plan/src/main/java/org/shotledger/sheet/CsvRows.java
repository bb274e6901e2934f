package org.shotledger.sheet;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table read row by row: {@code #} comment lines first, then one heading line with units in brackets, then rows.
 *
 * <p>Comma, semicolon and tab part the cells, whichever the heading uses; with semicolons and tabs a decimal comma is
 * read. Memory does not grow with the length of the file.
 */
public final class CsvRows implements Closeable {
    private static final Pattern HEADING = Pattern.compile("([^\\[\\]]*)\\[([^\\[\\]]*)\\]");
    private static final int MOST_COLUMNS = 500;
    private static final char SEEN_IN_HEADING = 0;

    private final String file;
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private final List<Heading> headings;
    private final List<String> comments;
    private final boolean decimalComma;
    private final long firstLine;

    /**
     * The heading of one column.
     *
     * @param name its name
     * @param unit the unit between brackets, empty when there is none
     * @param column its number from 1
     */
    public record Heading(String name, String unit, int column) {}

    /**
     * One row.
     *
     * @param line the line in the file, from 1
     * @param cells its cells, stripped
     */
    public record Row(int line, List<String> cells) {}

    private CsvRows(String file, BufferedReader reader, char mark, int before) throws IOException {
        this.file = file;
        this.comments = new ArrayList<>();
        int line = 0;
        String text = withoutMark(reader.readLine());
        while (text != null && (line < before || text.isBlank() || text.startsWith("#"))) {
            line++;
            if (!text.isBlank()) {
                comments.add((text.startsWith("#") ? text.substring(1) : text).strip());
            }
            text = comments.size() > 1000 ? null : reader.readLine();
        }
        if (text == null) {
            throw new SheetException(
                    Problem.of(file, "The table has no heading line; write one such as \"flow [kg/s],...\"."));
        }
        this.firstLine = line + 1L;
        char delimiter = mark == SEEN_IN_HEADING ? delimiter(text) : mark;
        this.decimalComma = delimiter != ',';
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true)
                .get();
        this.headings = headings(text, format);
        this.parser = CSVParser.builder().setReader(reader).setFormat(format).get();
        this.records = parser.iterator();
    }

    private static String withoutMark(String text) {
        return text != null && text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /**
     * Opens a table.
     *
     * @param path the file
     * @param name the file as the user named it
     * @return the rows, to be closed
     * @throws SheetException when there is no such file or its heading cannot be used
     */
    public static CsvRows open(Path path, String name) {
        if (!Files.isRegularFile(path)) {
            throw new SheetException(Problem.of(name, "There is no such file; check the name and the folder."));
        }
        try {
            return open(Files.newBufferedReader(path, StandardCharsets.UTF_8), name);
        } catch (IOException e) {
            throw new SheetException(Problem.of(name, "The file cannot be read (" + e.getMessage() + ")."));
        }
    }

    /**
     * Reads a table from text.
     *
     * @param reader the text
     * @param name the file as the user named it
     * @return the rows, to be closed
     * @throws SheetException when the heading cannot be used
     */
    public static CsvRows open(Reader reader, String name) {
        return open(reader, name, SEEN_IN_HEADING, 0);
    }

    /**
     * Reads a table from text whose layout is known.
     *
     * @param reader the text
     * @param name the file as the user named it
     * @param delimiter what parts the cells
     * @param before lines above the heading that are no table; they are kept as comments
     * @return the rows, to be closed
     * @throws SheetException when the heading cannot be used
     */
    public static CsvRows open(Reader reader, String name, char delimiter, int before) {
        try {
            return new CsvRows(name, new BufferedReader(new GuardedReader(reader)), delimiter, before);
        } catch (IOException e) {
            throw refused(name, e, 0);
        }
    }

    private List<Heading> headings(String text, CSVFormat format) throws IOException {
        List<Heading> found = new ArrayList<>();
        try (CSVParser head = CSVParser.parse(text, format)) {
            for (CSVRecord cells : head) {
                for (String cell : cells) {
                    found.add(heading(cell, found.size() + 1));
                }
            }
        } catch (UncheckedIOException | IOException e) {
            throw new SheetException(new Problem(
                    file,
                    (int) firstLine,
                    0,
                    "",
                    "",
                    "The heading line has an open or misplaced quotation mark; mend it."));
        }
        if (found.size() > MOST_COLUMNS) {
            throw new SheetException(new Problem(
                    file,
                    (int) firstLine,
                    0,
                    "",
                    "",
                    "The table has " + found.size() + " columns; at most " + MOST_COLUMNS + " are read."));
        }
        return List.copyOf(found);
    }

    private static Heading heading(String cell, int column) {
        Matcher matcher = HEADING.matcher(cell.strip());
        return matcher.matches()
                ? new Heading(matcher.group(1).strip(), matcher.group(2).strip(), column)
                : new Heading(cell.strip(), "", column);
    }

    private static char delimiter(String heading) {
        int[] count = new int[3];
        String marks = ";\t,";
        int depth = 0;
        for (int i = 0; i < heading.length(); i++) {
            char c = heading.charAt(i);
            depth += c == '[' ? 1 : c == ']' ? -1 : 0;
            int mark = marks.indexOf(c);
            if (mark >= 0 && depth == 0) {
                count[mark]++;
            }
        }
        return count[0] > 0 ? ';' : count[1] > 0 ? '\t' : ',';
    }

    /**
     * The columns.
     *
     * @return the headings in order
     */
    public List<Heading> headings() {
        return headings;
    }

    /**
     * The comment lines before the heading, which say where the table comes from.
     *
     * @return the lines without their marks
     */
    public List<String> comments() {
        return List.copyOf(comments);
    }

    /**
     * The line of the heading.
     *
     * @return the line from 1
     */
    public int headingLine() {
        return (int) firstLine;
    }

    /**
     * Reads the next row.
     *
     * @return the row, or null at the end
     * @throws SheetException when the text cannot go on as a table
     */
    public Row next() {
        try {
            if (!records.hasNext()) {
                return null;
            }
            CSVRecord cells = records.next();
            List<String> list = new ArrayList<>(cells.size());
            for (String cell : cells) {
                list.add(cell.strip());
            }
            return new Row((int) Math.min(Integer.MAX_VALUE, firstLine + parser.getCurrentLineNumber()), list);
        } catch (UncheckedIOException e) {
            throw refused(file, e.getCause(), (int) (firstLine + parser.getCurrentLineNumber()));
        } catch (IllegalStateException e) {
            throw new SheetException(new Problem(
                    file,
                    (int) (firstLine + parser.getCurrentLineNumber()),
                    0,
                    "",
                    "",
                    "The row has an open or misplaced quotation mark; mend it."));
        }
    }

    /**
     * Whether cells may hold a decimal comma, which is so when commas do not part them.
     *
     * @return true with semicolons or tabs
     */
    public boolean decimalComma() {
        return decimalComma;
    }

    private static SheetException refused(String file, IOException e, int line) {
        if (e instanceof GuardedReader.Refused refused) {
            return new SheetException(new Problem(file, refused.line, 0, "", "", refused.getMessage()));
        }
        if (e instanceof CharacterCodingException) {
            return new SheetException(Problem.of(file, "The file is not UTF-8 text; save it as UTF-8."));
        }
        return new SheetException(
                new Problem(file, line, 0, "", "", "The row has an open or misplaced quotation mark; mend it."));
    }

    @Override
    public void close() {
        try {
            parser.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
