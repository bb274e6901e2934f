package org.shotledger.document;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.logging.Level;

/** Sets a page as PDF/A-2 with tags after PDF/UA, fonts embedded, and nothing fetched. */
final class Pdf {
    private static final String FAMILY = "Liberation Sans";

    private Pdf() {}

    static byte[] of(String html) {
        quiet();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
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

    /** The renderer logs each CSS rule it does not know; the same rules serve browsers. */
    private static void quiet() {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.SEVERE));
    }
}
