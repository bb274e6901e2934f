package org.shotledger.document;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Holds a page against success criteria of the Web Content Accessibility Guidelines 2.2 (W3C, 2023) that a program can judge. */
public final class PageCheck {
    private final Document page;
    private final List<String> faults = new ArrayList<>();

    private PageCheck(Document page) {
        this.page = page;
    }

    /**
     * What a page lacks.
     *
     * @param html the page, written so that an XML reader takes it too
     * @return the criterion and the place of each fault
     */
    public static List<String> faults(String html) {
        try {
            var builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            PageCheck check = new PageCheck(builder.parse(new InputSource(new StringReader(html))));
            check.names();
            check.headings();
            check.tables();
            check.pictures();
            check.links();
            return check.faults;
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalArgumentException("The page is not well formed: " + e.getMessage(), e);
        }
    }

    /** 2.4.2 Page Titled, 3.1.1 Language of Page, 1.4.4 Resize Text: the reader may enlarge. */
    private void names() {
        hold("2.4.2", !text("title").isBlank(), "the page has no title");
        String language = page.getDocumentElement().getAttribute("lang");
        hold("3.1.1", language.matches("[a-z]{2}(-[A-Z]{2})?"), "the page's language is '" + language + "'");
        for (Element meta : all("meta")) {
            boolean held = !meta.getAttribute("content").matches(".*(user-scalable|maximum-scale).*");
            hold("1.4.4", held, "the page may not be enlarged");
        }
    }

    /** 1.3.1 Info and Relationships, technique G141: headings go down one level at a time, the first is the page's. */
    private void headings() {
        int level = 0;
        for (Element heading : all("h1", "h2", "h3", "h4", "h5", "h6")) {
            int next = heading.getTagName().charAt(1) - '0';
            hold("1.3.1", next <= level + 1, "h" + next + " after h" + level + ": " + heading.getTextContent());
            hold("2.4.6", !heading.getTextContent().isBlank(), "an empty heading");
            level = next;
        }
        hold("1.3.1", all("h1").size() == 1, "the page has not one heading of the first level");
        hold("2.4.1", all("main").size() == 1, "the page has not one main part");
    }

    /** 1.3.1, techniques H39 and H63: a caption, a header with scope for every column and every row. */
    private void tables() {
        for (Element table : all("table")) {
            String name = first(table, "caption");
            hold("1.3.1", !name.isBlank(), "a table without a caption");
            List<Element> heads = within(table, "th");
            hold("1.3.1", !heads.isEmpty(), name + ": no header cell");
            for (Element head : heads) {
                hold("1.3.1", head.getAttribute("scope").matches("col|row"), name + ": a header without scope");
            }
            List<Element> rows = within(table, "tr");
            int columns = within(rows.get(0), "th").size();
            for (Element row : rows) {
                int cells = within(row, "th").size() + within(row, "td").size();
                hold("1.3.1", cells == columns, name + ": " + cells + " cells under " + columns + " headers");
                hold("1.3.1", !within(row, "th").isEmpty(), name + ": a row without a header");
            }
        }
    }

    /** 1.1.1 Non-text Content; 4.1.2: a role and a name. */
    private void pictures() {
        for (Element picture : all("svg", "img")) {
            boolean drawn = picture.getTagName().equals("svg");
            String name = picture.getAttribute(drawn ? "aria-label" : "alt");
            hold("1.1.1", name.length() > 20, "a picture named '" + name + "'");
            hold("4.1.2", !drawn || picture.getAttribute("role").equals("img"), name + ": no role");
            hold("1.1.1", !drawn || !first(picture, "desc").isBlank(), name + ": no description");
        }
    }

    /** 2.4.4 Link Purpose: every link says where it leads, and leads there. */
    private void links() {
        for (Element link : all("a")) {
            String to = link.getAttribute("href");
            hold("2.4.4", !link.getTextContent().isBlank(), "a link without words to " + to);
            boolean found = to.startsWith("#")
                    && all("*").stream().anyMatch(any -> any.getAttribute("id").equals(to.substring(1)));
            hold("2.4.4", found, "a link to nothing in the page: " + to);
        }
    }

    private void hold(String criterion, boolean held, String fault) {
        if (!held) {
            faults.add(criterion + " " + fault);
        }
    }

    private String text(String tag) {
        return all(tag).isEmpty() ? "" : all(tag).get(0).getTextContent();
    }

    private static String first(Element in, String tag) {
        List<Element> found = within(in, tag);
        return found.isEmpty() ? "" : found.get(0).getTextContent();
    }

    private List<Element> all(String... tags) {
        List<Element> found = new ArrayList<>();
        for (Element any : within(page.getDocumentElement(), "*")) {
            for (String tag : tags) {
                if (tag.equals("*") || any.getTagName().equals(tag)) {
                    found.add(any);
                }
            }
        }
        return found;
    }

    private static List<Element> within(Element in, String tag) {
        NodeList nodes = in.getElementsByTagName(tag);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }
}
