package org.shotledger.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.display.HasVerdict;

/** A document for the customer, as HTML and as PDF. */
public final class CustomerDocument implements Displayable, HasVerdict {
    private final DocumentContent content;

    private CustomerDocument(DocumentContent content) {
        this.content = content;
    }

    /**
     * Takes the content.
     *
     * @param content what the document says
     * @return the document
     */
    public static CustomerDocument of(DocumentContent content) {
        return new CustomerDocument(content);
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
        return Template.set(content, "");
    }

    /**
     * The document as PDF, tagged, fonts embedded.
     *
     * @param paper the paper
     * @return the bytes of the file
     */
    public byte[] pdf(Paper paper) {
        return Pdf.of(Template.set(content, paper.css()));
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
        try {
            Files.createDirectories(folder);
            return List.of(
                    put(folder.resolve(name + ".html"), html().getBytes(StandardCharsets.UTF_8)),
                    put(folder.resolve(name + ".pdf"), pdf(paper)));
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
