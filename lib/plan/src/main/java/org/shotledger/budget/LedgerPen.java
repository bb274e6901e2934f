package org.shotledger.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.build.Build;
import org.shotledger.build.Origin;
import org.shotledger.units.QuantityKind;

/** Writes entries of a ledger in order, each in the form its standing asks for. */
final class LedgerPen {
    /** Source of a figure this budget chose itself. */
    static final String CHOICE = "this budget";

    /** J. B. Heywood's textbook, McGraw-Hill; the section follows. */
    static final String HEYWOOD = "Heywood, Internal Combustion Engine Fundamentals (1988), ";

    private static final String SILENT = "set in the build, not stated in the sheet";

    private final Build build;
    private final List<Entry> entries = new ArrayList<>();

    LedgerPen(Build build) {
        this.build = build;
    }

    Ledger ledger() {
        return Ledger.of(entries);
    }

    void add(Entry entry) {
        entries.add(entry);
    }

    /** A value that stands in the sheet, with its place, its reason and its uncertainty. */
    void sheet(String key, String name, String symbol, QuantityKind kind, double value, String path) {
        Origin origin = build.origin(path).orElse(null);
        if (origin == null) {
            add(bare(key, name, symbol, kind, value, SILENT));
            return;
        }
        String source =
                origin.file() + " line " + origin.line() + (origin.from().isEmpty() ? "" : ": " + origin.from());
        add(new Entry(
                key,
                name,
                symbol,
                kind,
                value,
                origin.uncertainty(),
                "input, '" + origin.text() + "'",
                source,
                List.of(),
                Standing.ofWords(origin.standing()),
                Optional.of(origin)));
    }

    /** A value of the sheet that may be asked for differently in one wish; it is the sheet's only while it agrees with it. */
    void asked(String key, String name, String symbol, QuantityKind kind, double value, double written, String path) {
        if (value == written) {
            sheet(key, name, symbol, kind, value, path);
        } else {
            add(bare(key, name, symbol, kind, value, "asked here; the sheet has another figure"));
        }
    }

    /** An input without a place in the sheet. */
    private static Entry bare(String key, String name, String symbol, QuantityKind kind, double value, String source) {
        return new Entry(key, name, symbol, kind, value, Double.NaN, "input", source, List.of(), Standing.ASSUMED);
    }

    /** A setting this budget chose. */
    void chosen(String key, String name, String symbol, QuantityKind kind, double value, String... inputs) {
        calculated(key, name, symbol, kind, value)
                .by("chosen: the split whose closest limit is furthest away", CHOICE)
                .on(inputs);
    }

    /** A property of matter with its publication. */
    void published(
            String key, String name, String symbol, QuantityKind kind, double value, String basis, String source) {
        add(new Entry(key, name, symbol, kind, value, Double.NaN, basis, source, List.of(), Standing.PUBLISHED));
    }

    /** A figure that follows from others; it is entered when its inputs are named. */
    Draft calculated(String key, String name, String symbol, QuantityKind kind, double value) {
        return new Draft(key, name, symbol, kind, value);
    }

    /** An entry not yet entered. */
    final class Draft {
        private final String key;
        private final String name;
        private final String symbol;
        private final QuantityKind kind;
        private final double value;
        private double uncertainty = Double.NaN;
        private String basis = "";
        private String source = "";
        private Standing standing = Standing.CALCULATED;

        private Draft(String key, String name, String symbol, QuantityKind kind, double value) {
            this.key = key;
            this.name = name;
            this.symbol = symbol;
            this.kind = kind;
            this.value = value;
        }

        Draft uncertain(double standardUncertainty) {
            uncertainty = standardUncertainty;
            return this;
        }

        Draft by(String equation, String publication) {
            basis = equation;
            source = publication;
            return this;
        }

        Draft standing(Standing known) {
            standing = known;
            return this;
        }

        void on(String... inputs) {
            add(new Entry(key, name, symbol, kind, value, uncertainty, basis, source, List.of(inputs), standing));
        }
    }
}
