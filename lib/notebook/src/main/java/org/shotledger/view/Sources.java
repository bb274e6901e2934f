package org.shotledger.view;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.ledger.Entry;
import org.shotledger.limits.Provenance;
import org.shotledger.plan.Plan;
import org.shotledger.table.Listing;

/** The sources of a plan by their weight: publications, files, the builder's sheet, the trade's habits, laws. */
final class Sources {
    /** A publication is named with its year; what follows the year is the place in it. A report's number is no year. */
    private static final Pattern PUBLICATION =
            Pattern.compile("(.*?(?:\\((?:19|20)\\d\\d\\)|\\b(?:19|20)\\d\\d\\b(?![-)])))[, ]*(.*)");

    private static final String HABIT = "common practice";

    private Sources() {}

    static void write(DocumentContent.Builder builder, Plan plan) {
        Collection<Entry> entries = plan.ledger().entries();
        builder.rows(Section.SOURCES, publications(entries));
        builder.rows(Section.SOURCES, files(plan.car()));
        builder.rows(Section.SOURCES, sheet(entries));
        builder.rows(Section.SOURCES, habits(entries));
        builder.say(
                Section.SOURCES,
                "Everything else follows from what needs no source: " + String.join(", ", laws(entries)) + ".");
    }

    /** Publications and standards, each with the figures that rest on it. */
    static Listing publications(Collection<Entry> entries) {
        Map<String, Set<String>> serves = new LinkedHashMap<>();
        for (Entry entry : entries) {
            for (String part : parts(entry)) {
                Matcher named = PUBLICATION.matcher(part);
                if (named.matches()) {
                    String place = named.group(2).isBlank() ? "" : " (" + named.group(2) + ")";
                    add(serves, named.group(1), entry.name() + place);
                } else if (entry.provenance() == Provenance.PUBLISHED) {
                    add(serves, part, entry.name());
                }
            }
        }
        return listing("Published sources", "Publication", serves);
    }

    /** Tables that belong to the sheet, with what their first lines say of their origin. */
    static Listing files(Car car) {
        Listing.Builder rows = Listing.titled("Tables of the job")
                .words("File")
                .words("Serves")
                .words("Origin, as the file says");
        for (Origin origin : car.origins().values()) {
            if (origin.text().endsWith(".csv")) {
                rows.row(origin.text(), origin.path().replace('.', ' ').replace('-', ' '), origin.from());
            }
        }
        return rows.build();
    }

    /** The sheet as one source, by how well the builder knows what stands in it. */
    static Listing sheet(Collection<Entry> entries) {
        Listing.Builder rows = Listing.titled("The builder's own sheet, where the ledger rests on it")
                .words("Known as")
                .words("File and lines")
                .words("Serves");
        for (Provenance known : Provenance.values()) {
            List<Entry> own = entries.stream()
                    .filter(entry -> entry.origin().isPresent() && entry.provenance() == known)
                    .toList();
            if (!own.isEmpty()) {
                rows.row(known.words(), lines(own), told(own));
            }
        }
        return rows.build();
    }

    /** What rests on a habit of the trade alone. */
    static Listing habits(Collection<Entry> entries) {
        Map<String, Set<String>> serves = new LinkedHashMap<>();
        for (Entry entry : entries) {
            for (String part : parts(entry)) {
                if (part.contains(HABIT)) {
                    add(serves, part.replaceFirst(":? *common practice(, no source)?", ""), entry.name());
                }
            }
        }
        Listing.Builder rows =
                Listing.titled("Common practice, no source").words("Figure").words("What is taken from the trade");
        serves.forEach(
                (what, names) -> rows.row(String.join("; ", names), what.isBlank() ? "the figure itself" : what));
        return rows.build();
    }

    private static Set<String> laws(Collection<Entry> entries) {
        Set<String> laws = new TreeSet<>();
        for (Entry entry : entries) {
            for (String part : parts(entry)) {
                boolean published = PUBLICATION.matcher(part).matches() || entry.provenance() == Provenance.PUBLISHED;
                if (!published && !part.contains(HABIT)) {
                    laws.add(part);
                }
            }
        }
        return laws;
    }

    /** The sources of a figure that does not stand in the sheet. */
    private static List<String> parts(Entry entry) {
        return entry.origin().isPresent() ? List.of() : List.of(entry.source().split("; "));
    }

    private static String lines(List<Entry> own) {
        Map<String, Set<Integer>> lines = new LinkedHashMap<>();
        own.forEach(entry -> entry.origin()
                .ifPresent(origin -> lines.computeIfAbsent(origin.file(), any -> new TreeSet<>())
                        .add(origin.line())));
        return lines.entrySet().stream()
                .map(file -> file.getKey() + ", lines "
                        + file.getValue().stream().map(String::valueOf).collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    private static String told(List<Entry> own) {
        return own.stream()
                .map(entry -> entry.name()
                        + entry.origin()
                                .filter(origin -> !origin.text().endsWith(".csv"))
                                .map(Origin::from)
                                .filter(from -> !from.isBlank())
                                .map(from -> " (" + from + ")")
                                .orElse(""))
                .collect(Collectors.joining("; "));
    }

    private static void add(Map<String, Set<String>> serves, String source, String name) {
        serves.computeIfAbsent(source, any -> new LinkedHashSet<>()).add(name);
    }

    private static Listing listing(String caption, String head, Map<String, Set<String>> serves) {
        Listing.Builder rows = Listing.titled(caption).words(head).words("Serves");
        serves.forEach((source, names) -> rows.row(source, String.join("; ", names)));
        return rows.build();
    }
}
