package org.shotledger.document;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.FontFormatException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.logging.Level;

/** Sets a page as PDF/A-2 with tags after PDF/UA, fonts embedded, and nothing fetched. */
final class Pdf {
    private static final String FAMILY = "Liberation Sans";

    private Pdf() {}

    static byte[] of(String html) {
        quiet();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawings = new Drawings()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useSVGDrawer(drawings);
            builder.useExternalResourceAccessControl(
                    (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
            builder.usePdfUaAccessibility(true);
            builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
            builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            builder.withProducer("Shotledger");
            font(builder, "Regular", 400, FontStyle.NORMAL);
            font(builder, "Bold", 700, FontStyle.NORMAL);
            font(builder, "Italic", 400, FontStyle.ITALIC);
            builder.withHtmlContent(html, null);
            builder.toStream(out);
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException("The document cannot be set as PDF.", e);
        }
        return out.toByteArray();
    }

    private static void font(PdfRendererBuilder builder, String face, int weight, FontStyle style) {
        builder.useFont(() -> open(face), FAMILY, weight, style, true);
    }

    private static InputStream open(String face) {
        InputStream in = Pdf.class.getResourceAsStream("/liberation/LiberationSans-" + face + ".ttf");
        if (in == null) {
            throw new IllegalStateException("The font LiberationSans-" + face
                    + " is not on the class path; add the font library named in the notebook module's pom.");
        }
        return in;
    }

    /** Draws charts in the typeface of the text; the library forgets faces given before it has read the page. */
    private static final class Drawings extends BatikSVGDrawer {
        @Override
        public void importFontFaceRules(List<FontFaceRule> faces, SharedContext context) {
            super.importFontFaceRules(faces, context);
            try {
                addFontFile(Faces.REGULAR, FAMILY, 400, FontStyle.NORMAL);
                addFontFile(Faces.BOLD, FAMILY, 700, FontStyle.NORMAL);
            } catch (IOException | FontFormatException e) {
                throw new IllegalStateException("The font for drawings cannot be read: " + e.getMessage(), e);
            }
        }
    }

    /** The faces as files, which is the only form in which the library takes them for drawings. */
    private static final class Faces {
        static final File REGULAR = file("Regular");
        static final File BOLD = file("Bold");

        private static File file(String face) {
            try (InputStream in = open(face)) {
                Path file = Files.createTempFile("shotledger-font", ".ttf");
                Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
                file.toFile().deleteOnExit();
                return file.toFile();
            } catch (IOException e) {
                throw new UncheckedIOException("The font for drawings cannot be put into the temporary folder.", e);
            }
        }
    }

    /** The renderer logs each CSS rule it does not know; the same rules serve browsers. */
    private static void quiet() {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.SEVERE));
    }
}
