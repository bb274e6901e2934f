package org.shotledger.runner;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.function.Consumer;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.ParseSettings;
import org.jsoup.parser.Parser;

/** The PDF of a page. */
final class PdfPage {

    private static final String SVG_DATA = "data:image/svg+xml;base64,";
    private static final String FONTS = "/liberation/";
    private static final String FALLBACK = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private PdfPage() {}

    /**
     * Lays out an HTML page; nothing is fetched. An image that cannot be drawn gives way to its text.
     *
     * @param say told which images these are
     */
    static byte[] of(String html, Consumer<String> say) throws IOException {
        XRLog.setLoggingEnabled(false);
        Document document = Jsoup.parse(html, "", Parser.htmlParser().settings(ParseSettings.preserveCase));
        for (Element image : document.select("img[src^=" + SVG_DATA + "]")) {
            inline(image, say);
        }
        try {
            return drawn(document);
        } catch (RuntimeException odd) {
            for (Element image : document.select("svg, img")) {
                if (!isDrawable(image)) {
                    leaveOut(image, say);
                }
            }
            return drawn(document);
        }
    }

    private static byte[] drawn(Document document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useSVGDrawer(svg);
            builder.useUriResolver((base, uri) -> uri.startsWith("data:") || uri.startsWith("#") ? uri : null);
            fonts(builder);
            builder.withW3cDocument(new W3CDom().fromJsoup(document), "");
            builder.toStream(out);
            builder.run();
        }
        return out.toByteArray();
    }

    /** Draws one image alone. */
    private static boolean isDrawable(Element image) throws IOException {
        Document alone = Document.createShell("");
        alone.body().appendChild(image.clone());
        try {
            return drawn(alone).length > 0;
        } catch (RuntimeException odd) {
            return false;
        }
    }

    private static void leaveOut(Element image, Consumer<String> say) {
        String text = image.attr("alt").isBlank() ? "an image" : image.attr("alt");
        say.accept("The PDF holds the text of an image that cannot be drawn: " + text + ".");
        image.replaceWith(new Element("span").text("[image: " + text + "]"));
    }

    private static void inline(Element image, Consumer<String> say) {
        try {
            byte[] svg = Base64.getDecoder().decode(image.attr("src").substring(SVG_DATA.length()));
            String text = new String(svg, StandardCharsets.UTF_8);
            String root = text.substring(Math.max(0, text.indexOf("<svg")));
            Element drawing = Jsoup.parse(root, "", Parser.xmlParser()).selectFirst("svg");
            if (drawing != null) {
                image.replaceWith(drawing.attr("alt", image.attr("alt")));
                return;
            }
        } catch (IllegalArgumentException notBase64) {
            leaveOut(image, say);
            return;
        }
        leaveOut(image, say);
    }

    private static void fonts(PdfRendererBuilder builder) {
        boolean all = font(builder, FONTS + "LiberationSans-Regular.ttf", "Liberation Sans", 400, FontStyle.NORMAL);
        if (!all) {
            font(builder, FALLBACK, "Liberation Sans", 400, FontStyle.NORMAL);
            return;
        }
        font(builder, FONTS + "LiberationSans-Bold.ttf", "Liberation Sans", 700, FontStyle.NORMAL);
        font(builder, FONTS + "LiberationSans-Italic.ttf", "Liberation Sans", 400, FontStyle.ITALIC);
        font(builder, FONTS + "LiberationMono-Regular.ttf", "Liberation Mono", 400, FontStyle.NORMAL);
    }

    private static boolean font(
            PdfRendererBuilder builder, String resource, String family, int weight, FontStyle style) {
        if (PdfPage.class.getResource(resource) == null) {
            return false;
        }
        FSSupplier<InputStream> file = () -> PdfPage.class.getResourceAsStream(resource);
        builder.useFont(file, family, weight, style, true);
        return true;
    }
}
