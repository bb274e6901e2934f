package org.shotledger.document;

import java.util.List;
import org.shotledger.chart.ChartPicture;
import org.shotledger.table.Listing;

/** One piece of a section. */
public sealed interface Block {

    /**
     * A paragraph.
     *
     * @param words plain text, unescaped
     */
    record Paragraph(String words) implements Block {}

    /**
     * A list of points, each a sentence or two.
     *
     * @param points plain text, unescaped
     */
    record Points(List<String> points) implements Block {
        public Points {
            points = List.copyOf(points);
        }
    }

    /**
     * A sentence or two under a name of their own, the shortest form there is.
     *
     * @param name a word or two
     * @param words plain text, unescaped
     */
    record Fact(String name, String words) implements Block {}

    /**
     * A table, in the units it was handed over in.
     *
     * @param listing the table
     */
    record Rows(Listing listing) implements Block {}

    /**
     * A chart.
     *
     * @param chart the picture
     */
    record Picture(ChartPicture chart) implements Block {}
}
