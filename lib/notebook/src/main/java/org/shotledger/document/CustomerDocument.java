package org.shotledger.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.display.HasVerdict;

/** A document for the customer, as HTML and as PDF. */
public final class CustomerDocument implements Displayable, HasVerdict {
    private static final int STEPS = 3;

    private final DocumentContent content;
    private final Set<DocumentPart> parts;

    private CustomerDocument(DocumentContent content, Set<DocumentPart> parts) {
        this.content = content;
        this.parts = parts;
    }

    /**
     * Takes the content.
     *
     * @param content what the document says
     * @return the document
     */
    public static CustomerDocument of(DocumentContent content) {
        return new CustomerDocument(content, EnumSet.allOf(DocumentPart.class));
    }

    /**
     * The same document with some of its pages only.
     *
     * @param chosen the words of {@link DocumentPart#word()}, with commas between them
     * @return the document; its content stays whole
     * @throws IllegalArgumentException when a word is not known; the message lists them
     */
    public CustomerDocument pages(String chosen) {
        return pages(DocumentPart.read(chosen));
    }

    /**
     * The same document with some of its parts only.
     *
     * @param chosen the parts, at least one
     * @return the document; its content stays whole
     * @throws IllegalArgumentException when none is chosen
     */
    public CustomerDocument pages(Set<DocumentPart> chosen) {
        if (chosen.isEmpty()) {
            throw new IllegalArgumentException("No page of the document is chosen; choose at least one.");
        }
        return new CustomerDocument(content, Collections.unmodifiableSet(EnumSet.copyOf(chosen)));
    }

    /**
     * What the document says.
     *
     * @return the content
     */
    public DocumentContent content() {
        return content;
    }

    /**
     * The document as one page of HTML that needs neither network nor script and prints on A4 and Letter.
     *
     * @return a whole HTML5 page
     */
    public String html() {
        return Template.page(content, parts);
    }

    /**
     * The document as PDF, tagged, fonts embedded.
     *
     * @param paper the paper
     * @return the bytes of the file
     */
    public byte[] pdf(Paper paper) {
        return Pdf.of(
                contents -> Template.print(content, parts, paper, contents),
                parts.contains(DocumentPart.REASONS) || parts.contains(DocumentPart.LEDGER));
    }

    /**
     * Writes {@code NAME.html} and {@code NAME.pdf}, each under a temporary name first, so that no half file is left.
     *
     * @param folder where; made when it is missing
     * @param name the files' name without an ending
     * @param paper the paper of the PDF
     * @return both files
     * @throws UncheckedIOException when a file cannot be written
     */
    public List<Path> write(Path folder, String name, Paper paper) {
        return write(folder, name, paper, Progress.NONE);
    }

    /**
     * Writes both files as {@link #write(Path, String, Paper)} does, tells how far it is, and stops when the thread is interrupted.
     *
     * @param folder where; made when it is missing
     * @param name the files' name without an ending
     * @param paper the paper of the PDF
     * @param progress hears what begins
     * @return both files
     * @throws UncheckedIOException when a file cannot be written
     * @throws java.util.concurrent.CancellationException when the thread was interrupted; no file was changed
     */
    public List<Path> write(Path folder, String name, Paper paper, Progress progress) {
        try {
            progress.next("the page", 0, STEPS);
            byte[] page = html().getBytes(StandardCharsets.UTF_8);
            progress.next("the sheets of paper", 1, STEPS);
            byte[] sheets = pdf(paper);
            progress.next("both files", 2, STEPS);
            Files.createDirectories(folder);
            return List.of(put(folder.resolve(name + ".html"), page), put(folder.resolve(name + ".pdf"), sheets));
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "The document '" + name + "' cannot be written to " + folder + ": " + e.getMessage(), e);
        }
    }

    @Override
    public String verdictLine() {
        return content.verdict().word() + ": " + content.summary().replaceAll("\\s+", " ");
    }

    @Override
    public String toText() {
        return content.title() + "\n" + verdictLine();
    }

    @Override
    public String toHtml() {
        return "<p><strong>" + Display.escapeHtml(content.title()) + "</strong><br>" + Display.escapeHtml(verdictLine())
                + "</p>";
    }

    @Override
    public String toString() {
        return toText();
    }

    private static Path put(Path file, byte[] bytes) throws IOException {
        Path part = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            Files.write(part, bytes);
            return Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
