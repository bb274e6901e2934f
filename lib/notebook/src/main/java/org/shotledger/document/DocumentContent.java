package org.shotledger.document;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shotledger.chart.ChartPicture;
import org.shotledger.limits.Verdict;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;

/**
 * What a customer document says. Sections without content are left out, except the cautions, which every document has.
 *
 * @param title the title
 * @param customer for whom it is made; may be empty
 * @param author who made it; may be empty
 * @param notice a notice under the title, for example that the data are invented; may be empty
 * @param verdict the verdict on the recommended plan
 * @param summary the recommendation in one or two sentences
 * @param sections the blocks of each section
 * @param signatures roles that sign, for example {@code "engine builder"}
 * @param revisions the revisions, the newest first
 */
public record DocumentContent(
        String title,
        String customer,
        String author,
        String notice,
        Verdict verdict,
        String summary,
        Map<Section, List<Block>> sections,
        List<String> signatures,
        List<Revision> revisions) {

    public DocumentContent {
        Map<Section, List<Block>> copy = new EnumMap<>(Section.class);
        sections.forEach((section, blocks) -> copy.put(section, List.copyOf(blocks)));
        sections = java.util.Collections.unmodifiableMap(copy);
        signatures = List.copyOf(signatures);
        revisions = List.copyOf(revisions);
    }

    /**
     * Begins a document.
     *
     * @param title the title
     * @param verdict the verdict on the recommended plan
     * @param summary the recommendation in one or two sentences
     * @return a builder
     * @throws IllegalArgumentException when title or summary is blank
     */
    public static Builder titled(String title, Verdict verdict, String summary) {
        if (title.isBlank() || summary.isBlank()) {
            throw new IllegalArgumentException("The document lacks a title or a recommendation; give both.");
        }
        return new Builder(title, verdict, summary);
    }

    /** Collects the content. */
    public static final class Builder {
        private final String title;
        private final Verdict verdict;
        private final String summary;
        private final Map<Section, List<Block>> sections = new EnumMap<>(Section.class);
        private final List<String> signatures = new ArrayList<>();
        private final List<Revision> revisions = new ArrayList<>();
        private String customer = "";
        private String author = "";
        private String notice = "";
        private Shown units = Shown.BOTH;

        private Builder(String title, Verdict verdict, String summary) {
            this.title = title;
            this.verdict = verdict;
            this.summary = summary;
        }

        /**
         * Says for whom and by whom the document is made.
         *
         * @param forWhom the customer
         * @param byWhom the author
         * @return this builder
         */
        public Builder between(String forWhom, String byWhom) {
            customer = forWhom;
            author = byWhom;
            return this;
        }

        /**
         * Puts a notice under the title.
         *
         * @param words for example that the data are invented
         * @return this builder
         */
        public Builder notice(String words) {
            notice = words;
            return this;
        }

        /**
         * Chooses the units of the tables that follow.
         *
         * @param shown the units; both systems until others are chosen
         * @return this builder
         */
        public Builder in(Shown shown) {
            units = shown;
            return this;
        }

        /**
         * Adds a sentence or two under a name of their own.
         *
         * @param section where
         * @param name a word or two
         * @param words plain text
         * @return this builder
         */
        public Builder fact(Section section, String name, String words) {
            return add(section, new Block.Fact(name, words));
        }

        /**
         * Adds a paragraph.
         *
         * @param section where
         * @param words plain text
         * @return this builder
         */
        public Builder say(Section section, String words) {
            return add(section, new Block.Paragraph(words));
        }

        /**
         * Adds a list of points.
         *
         * @param section where
         * @param points plain text, one sentence or two each
         * @return this builder
         */
        public Builder points(Section section, List<String> points) {
            return points.isEmpty() ? this : add(section, new Block.Points(points));
        }

        /**
         * Adds a table in the units of the document.
         *
         * @param section where
         * @param listing the table; one without rows is left out
         * @return this builder
         */
        public Builder rows(Section section, Listing listing) {
            return inBoth(section, listing.in(units));
        }

        /**
         * Adds a table in the units it has, for what is set by hand with whatever gauge there is.
         *
         * @param section where
         * @param listing the table; one without rows is left out
         * @return this builder
         */
        public Builder inBoth(Section section, Listing listing) {
            return listing.isEmpty() ? this : add(section, new Block.Rows(listing));
        }

        /**
         * Adds a chart.
         *
         * @param section where
         * @param chart the picture
         * @return this builder
         */
        public Builder picture(Section section, ChartPicture chart) {
            return add(section, new Block.Picture(chart));
        }

        /**
         * Adds lines to sign on.
         *
         * @param roles who signs, for example {@code "engine builder"}
         * @return this builder
         */
        public Builder signedBy(String... roles) {
            signatures.addAll(List.of(roles));
            return this;
        }

        /**
         * Adds a revision, the newest first.
         *
         * @param revision the revision
         * @return this builder
         */
        public Builder revision(Revision revision) {
            revisions.add(revision);
            return this;
        }

        /**
         * Finishes the content.
         *
         * @return the content, with the usual cautions at its end
         */
        public DocumentContent build() {
            Map<Section, List<Block>> whole = new EnumMap<>(Section.class);
            sections.forEach((section, blocks) -> whole.put(section, new ArrayList<>(blocks)));
            whole.computeIfAbsent(Section.CAUTIONS, s -> new ArrayList<>()).add(new Block.Points(Cautions.usual()));
            return new DocumentContent(title, customer, author, notice, verdict, summary, whole, signatures, revisions);
        }

        private Builder add(Section section, Block block) {
            sections.computeIfAbsent(section, s -> new ArrayList<>()).add(block);
            return this;
        }
    }
}
