package org.shotledger.document;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.chart.ChartPicture;
import org.shotledger.display.Display;

/**
 * Words that lead to another place of the same document. They are kept as marks of Unicode's private use inside plain text, so that
 * nothing a person writes is taken for one, and become links when the document is set and it is known what is printed where.
 */
public final class Reference {
    private static final char OPEN = '\uE000';
    private static final char CLOSE = '\uE001';
    private static final Pattern MARK = Pattern.compile(OPEN + "(section|figure):([a-z0-9-]+)" + CLOSE);

    private Reference() {}

    /**
     * Leads to a section.
     *
     * @param section the section
     * @return marked words, to be put into any text of a document
     */
    public static String to(Section section) {
        return OPEN + "section:" + section.anchor() + CLOSE;
    }

    /**
     * Leads to a figure.
     *
     * @param chart the picture
     * @return marked words, to be put into any text of a document
     */
    public static String to(ChartPicture chart) {
        return OPEN + "figure:" + chart.key() + CLOSE;
    }

    /** Makes links of the marks in a page; what is not printed is named as a part of the whole document. */
    static String linked(String page, Map<String, String> sections, Map<String, Integer> figures) {
        return MARK.matcher(page)
                .replaceAll(mark -> Matcher.quoteReplacement(
                        mark.group(1).equals("figure")
                                ? figure(mark.group(2), figures)
                                : section(mark.group(2), sections)));
    }

    private static String figure(String key, Map<String, Integer> figures) {
        return figures.containsKey(key)
                ? "<a href=\"#" + key + "-figure\" title=\"to figure " + figures.get(key) + "\">figure "
                        + figures.get(key) + "</a>"
                : "a figure of the whole document";
    }

    private static String section(String anchor, Map<String, String> sections) {
        return sections.containsKey(anchor)
                ? "<a class=\"page\" href=\"#" + anchor + "\" title=\"to the section: "
                        + Display.escapeHtml(sections.get(anchor)) + "\">\u201c"
                        + Display.escapeHtml(sections.get(anchor)) + "\u201d</a>"
                : "the whole document";
    }
}
