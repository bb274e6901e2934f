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
        /** Copies the list. */
        public Points {
            points = List.copyOf(points);
        }
    }

    /**
     * A table, shown in US and SI units side by side.
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
