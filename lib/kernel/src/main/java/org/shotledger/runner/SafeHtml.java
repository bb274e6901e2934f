package org.shotledger.runner;

import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.ParseSettings;
import org.jsoup.parser.Parser;

/** Makes a fragment of a page fit for a page that is complete in itself: no script, no file beside it, links to the web only. */
final class SafeHtml {

    /** What can ask for something or do something; a fragment without any of it is not looked at further. */
    private static final Pattern DOUBTFUL = Pattern.compile(
            "<(?:img|image|a|script|iframe|frame|object|embed|link|base|meta|use|form|video|audio|source|svg)\\b|\\son\\w+\\s*=",
            Pattern.CASE_INSENSITIVE);

    private static final String ACTIVE =
            "script, iframe, frame, object, embed, link, base, meta, form, video, audio, source";
    private static final Set<String> EMBEDDED =
            Set.of("data:image/png", "data:image/jpeg", "data:image/gif", "data:image/webp", "data:image/svg+xml");
    private static final Pattern WEB = Pattern.compile("(?i)https?://.*|#.*");

    private final Consumer<String> say;

    private SafeHtml(Consumer<String> say) {
        this.say = say;
    }

    /**
     * A fragment without what a page must not hold.
     *
     * @param say told what was left out, a sentence each
     */
    static String of(String fragment, Consumer<String> say) {
        return DOUBTFUL.matcher(fragment).find() ? new SafeHtml(say).cleaned(fragment) : fragment;
    }

    private String cleaned(String fragment) {
        // drawings have names with capitals
        Document page = Jsoup.parse(fragment, "", Parser.htmlParser().settings(ParseSettings.preserveCase));
        page.outputSettings().prettyPrint(false);
        page.select(ACTIVE).forEach(this::leaveOut);
        page.select("img").forEach(this::image);
        page.select("a[href]").forEach(this::link);
        for (Element element : page.body().getAllElements()) {
            inner(element);
        }
        return page.body().html();
    }

    private void leaveOut(Element element) {
        say.accept("A " + element.normalName() + " was left out of the page, which holds no active parts.");
        element.remove();
    }

    private void image(Element image) {
        String source = image.attr("src").strip();
        if (isEmbedded(source)) {
            return;
        }
        String text = image.attr("alt").isBlank() ? source : image.attr("alt");
        say.accept("The image " + shortened(source) + " is not part of the page; its text stands there instead."
                + " Show it from a cell to embed it.");
        image.replaceWith(new Element("span").addClass("left-out").text("[image: " + shortened(text) + "]"));
    }

    static boolean isEmbedded(String source) {
        int end = source.indexOf(';') < 0 ? source.indexOf(',') : source.indexOf(';');
        return end > 0 && EMBEDDED.contains(source.substring(0, end).toLowerCase(Locale.ROOT));
    }

    private void link(Element link) {
        String target = link.attr("href").strip();
        if (!WEB.matcher(target).matches()) {
            say.accept("The link to " + shortened(target)
                    + " was taken out of the page: links there lead to the web only.");
            link.removeAttr("href");
        }
    }

    /** Handlers of events, and what a drawing fetches from outside itself. */
    private void inner(Element element) {
        for (Attribute attribute : element.attributes().asList()) {
            String name = attribute.getKey().toLowerCase(Locale.ROOT);
            boolean reference = name.equals("xlink:href")
                    || (name.equals("href") && !element.normalName().equals("a"));
            boolean outside = reference && !attribute.getValue().startsWith("#") && !isEmbedded(attribute.getValue());
            if (name.startsWith("on") || name.equals("srcset") || outside) {
                element.removeAttr(attribute.getKey());
            }
        }
    }

    private static String shortened(String text) {
        return text.length() <= 80 ? text : text.substring(0, 79) + "…";
    }
}
