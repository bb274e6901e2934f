package org.shotledger.document;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/** Looks for what a page edge or a margin spoils: rows cut in two, letters beyond the margins, which are clipped there. */
public final class PaperCheck {
    /** Margins of the style sheet, mm. */
    private static final double TOP = 15;

    private static final double SIDE = 14;
    private static final double BOTTOM = 15;

    private static final double POINTS_PER_MM = 72 / 25.4;

    /** Letters begin and end a little beside their box. */
    private static final double LETTER = 1;

    private PaperCheck() {}

    /**
     * The words of one page, with single spaces.
     *
     * @param pdf the file
     * @param index of the page, from 0
     * @return what it says
     * @throws IOException when the file cannot be read
     */
    public static String page(byte[] pdf, int index) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(index + 1);
            stripper.setEndPage(index + 1);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }

    /**
     * Table rows of which one part stands on one page and another on the next, after the file's own tags.
     *
     * @param pdf the file
     * @return pages of each such row, counted from one; empty when no row is cut
     * @throws IOException when the file cannot be read
     */
    public static List<String> cutRows(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> cut = new ArrayList<>();
            int rows = rows(document, document.getDocumentCatalog().getStructureTreeRoot(), cut);
            if (rows == 0) {
                cut.add("the file has no tagged row at all");
            }
            return cut;
        }
    }

    /**
     * Headings of sections and heads of tables on another page than what they stand above, after the file's own tags.
     *
     * @param pdf the file
     * @return each with its page, counted from one; empty when none is left alone
     * @throws IOException when the file cannot be read
     */
    public static List<String> leftAlone(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> alone = new ArrayList<>();
            int heads = heads(document, document.getDocumentCatalog().getStructureTreeRoot(), alone);
            if (heads == 0) {
                alone.add("the file has no tagged heading and no tagged table at all");
            }
            return alone;
        }
    }

    private static int heads(PDDocument document, PDStructureNode node, List<String> alone) {
        int heads = 0;
        List<PDStructureElement> kids = node.getKids().stream()
                .filter(PDStructureElement.class::isInstance)
                .map(PDStructureElement.class::cast)
                .toList();
        for (int i = 0; i < kids.size(); i++) {
            String type = kids.get(i).getStructureType();
            boolean head = type.equals("H2") || type.equals("THead") || type.equals("Caption");
            if (head && i + 1 < kids.size()) {
                heads++;
                int own = firstPage(document, kids.get(i));
                int next = firstPage(document, kids.get(i + 1));
                if (own != next) {
                    alone.add(type + " on page " + own + ", what follows on page " + next);
                }
            }
            heads += heads(document, kids.get(i), alone);
        }
        return heads;
    }

    private static int firstPage(PDDocument document, PDStructureElement element) {
        Set<Integer> pages = new HashSet<>();
        pages(document, element, pages);
        return pages.stream().mapToInt(Integer::intValue).min().orElse(0);
    }

    /**
     * Letters beyond the margins, of text and of drawings, other than the page's foot.
     *
     * @param pdf the file
     * @return the first ones of each page; empty when all stand within
     * @throws IOException when the file cannot be read
     */
    public static List<String> beyondMargins(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> found = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDRectangle paper = document.getPage(page - 1).getMediaBox();
                Letters letters = new Letters(paper);
                letters.setStartPage(page);
                letters.setEndPage(page);
                letters.getText(document);
                String foot = "Estimates, to be proven in small steps" + "page " + page + " of "
                        + document.getNumberOfPages();
                // what stands above every sheet is set first
                String beyond = letters.beyond
                        .toString()
                        .replaceFirst("(?s)^.*?(?=" + foot + ")", "")
                        .replace(foot, "")
                        .strip();
                if (!beyond.isEmpty()) {
                    found.add("page " + page + ": " + beyond.substring(0, Math.min(60, beyond.length())));
                }
            }
            return found;
        }
    }

    /**
     * The smallest letters, of text and of drawings.
     *
     * @param pdf the file
     * @return their size, points; infinite without any
     * @throws IOException when the file cannot be read
     */
    public static double leastLetters(byte[] pdf) throws IOException {
        double[] least = {Double.POSITIVE_INFINITY};
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    Matrix at = text.getTextMatrix();
                    least[0] = Math.min(least[0], Math.hypot(at.getShearY(), at.getScaleY()));
                }
            }.getText(document);
        }
        return least[0];
    }

    /** Gathers the letters that do not stand within the margins. */
    private static final class Letters extends PDFTextStripper {
        final StringBuilder beyond = new StringBuilder();
        private final Rectangle2D inside;

        Letters(PDRectangle paper) {
            inside = new Rectangle2D.Double(
                    SIDE * POINTS_PER_MM - LETTER,
                    BOTTOM * POINTS_PER_MM - LETTER,
                    paper.getWidth() - 2 * (SIDE * POINTS_PER_MM - LETTER),
                    paper.getHeight() - (TOP + BOTTOM) * POINTS_PER_MM + 2 * LETTER);
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            Matrix at = text.getTextMatrix();
            double along = text.getWidthDirAdj() / Math.hypot(at.getScaleX(), at.getShearY());
            double x = at.getTranslateX();
            double y = at.getTranslateY();
            if (!inside.contains(x, y) || !inside.contains(x + along * at.getScaleX(), y + along * at.getShearY())) {
                beyond.append(text.getUnicode());
            }
        }
    }

    private static int rows(PDDocument document, PDStructureNode node, List<String> cut) {
        int rows = 0;
        for (Object kid : node.getKids()) {
            // a head that is repeated on each page is one row of the tags
            if (kid instanceof PDStructureElement element
                    && !element.getStructureType().equals("THead")) {
                if (element.getStructureType().equals("TR")) {
                    rows++;
                    Set<Integer> pages = new HashSet<>();
                    pages(document, element, pages);
                    if (pages.size() > 1) {
                        cut.add("row on pages " + pages);
                    }
                }
                rows += rows(document, element, cut);
            }
        }
        return rows;
    }

    private static void pages(PDDocument document, PDStructureElement element, Set<Integer> pages) {
        for (Object kid : element.getKids()) {
            if (kid instanceof PDStructureElement inner) {
                pages(document, inner, pages);
            } else {
                COSBase own = kid instanceof PDMarkedContentReference reference
                        ? reference.getCOSObject().getDictionaryObject(COSName.PG)
                        : null;
                COSBase page = own == null ? element.getCOSObject().getDictionaryObject(COSName.PG) : own;
                pages.add(1 + document.getPages().indexOf(new PDPage((COSDictionary) page)));
            }
        }
    }
}
