package org.shotledger.document;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.PDFTranscoder.OpenHtmlFontResolver;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.logging.Level;
import org.apache.batik.bridge.DefaultFontFamilyResolver;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;

/** Sets a page as PDF/A-2 with tags after PDF/UA, fonts embedded, and nothing fetched. */
final class Pdf {
    private static final String FAMILY = "Liberation Sans";

    /** A longer document has a page of contents. */
    private static final int WITHOUT_CONTENTS = 6;

    private Pdf() {}

    /**
     * Sets a document with a page of contents if it is longer than six pages without.
     *
     * @param pages gives the HTML, with or without contents
     * @param likely whether it is likely to be that long: a wrong guess costs time and nothing else
     */
    static byte[] of(Function<Boolean, String> pages, boolean likely) {
        Setting first = set(pages.apply(likely));
        boolean contents = first.pages - (likely ? 1 : 0) > WITHOUT_CONTENTS;
        return contents == likely ? first.bytes : set(pages.apply(contents)).bytes;
    }

    static byte[] of(String html) {
        return set(html).bytes;
    }

    /** A file and how many pages it has. */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    private record Setting(byte[] bytes, int pages) {}

    private static Setting set(String html) {
        quiet();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawings = new Drawings();
                PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            builder.useSVGDrawer(drawings);
            builder.useExternalResourceAccessControl(
                    (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
            builder.usePdfUaAccessibility(true);
            builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
            builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            builder.withProducer("Shotledger");
            font(builder, document, "Regular", 400, FontStyle.NORMAL);
            font(builder, document, "Bold", 700, FontStyle.NORMAL);
            font(builder, document, "Italic", 400, FontStyle.ITALIC);
            builder.withHtmlContent(html, null);
            builder.toStream(out);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                renderer.createPDFWithoutClosing();
                timeless(document, html);
                tellLinks(document);
                document.save(out);
                return new Setting(out.toByteArray(), document.getNumberOfPages());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The document cannot be set as PDF.", e);
        }
    }

    /** The same page gives the same bytes: no time of making, and an identity that follows from the page. */
    private static void timeless(PDDocument document, String html) throws IOException {
        document.getDocumentInformation().setCreationDate(null);
        document.setDocumentId((long) html.hashCode());
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String stated = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
        String kept = stated.replaceAll("\\s*<xmp:CreateDate>[^<]*</xmp:CreateDate>", "");
        metadata.importXMPMetadata(kept.getBytes(StandardCharsets.UTF_8));
    }

    /** A link says where it leads, for those who cannot see where it stands (ISO 14289-1, 7.18.5). */
    private static void tellLinks(PDDocument document) throws IOException {
        for (PDPage page : document.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink link) {
                    PDDestination to = link.getAction() instanceof PDActionGoTo action
                            ? action.getDestination()
                            : link.getDestination();
                    if (to instanceof PDPageDestination place) {
                        link.setContents("to page " + (1 + place.retrievePageNumber()));
                    }
                }
            }
        }
    }

    /** Without ligatures: the library searches each word for them by patterns that it makes anew, which took most of the time. */
    private static void font(PdfRendererBuilder builder, PDDocument document, String face, int weight, FontStyle style)
            throws IOException {
        try (InputStream in = open(face)) {
            TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(in));
            letters.setEnableGsub(false);
            PDFontSupplier font = new PDFontSupplier(PDType0Font.load(document, letters, true));
            builder.useFont(font, FAMILY, weight, style, true);
        }
    }

    private static InputStream open(String face) {
        InputStream in = Pdf.class.getResourceAsStream("/liberation/LiberationSans-" + face + ".ttf");
        if (in == null) {
            throw new IllegalStateException("The font LiberationSans-" + face
                    + " is not on the class path; add the font library named in the notebook module's pom.");
        }
        return in;
    }

    /**
     * Draws charts in the typeface they were laid out in. Charts register it with the JDK when they are drawn, so Batik's own
     * resolver knows it; the one of the PDF library shrinks letters it was given by file.
     */
    private static final class Drawings extends BatikSVGDrawer {
        @Override
        public void importFontFaceRules(List<FontFaceRule> faces, SharedContext context) {
            fontResolver = new Faces();
        }
    }

    /** Asks Batik's resolver for every family. */
    private static final class Faces extends OpenHtmlFontResolver {
        @Override
        public GVTFontFamily resolve(String family) {
            return DefaultFontFamilyResolver.SINGLETON.resolve(family);
        }

        @Override
        public GVTFontFamily resolve(String family, FontFace face) {
            return DefaultFontFamilyResolver.SINGLETON.resolve(family, face);
        }

        @Override
        public GVTFontFamily getFamilyThatCanDisplay(char letter) {
            return DefaultFontFamilyResolver.SINGLETON.getFamilyThatCanDisplay(letter);
        }

        @Override
        public GVTFontFamily getDefault() {
            return DefaultFontFamilyResolver.SINGLETON.getDefault();
        }
    }

    /** The renderer logs each CSS rule it does not know; the same rules serve browsers. */
    private static void quiet() {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.SEVERE));
    }
}
