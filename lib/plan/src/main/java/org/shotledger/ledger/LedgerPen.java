package org.shotledger.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

/** Writes entries of a ledger in order, each in the form its provenance asks for. */
final class LedgerPen {
    /** J. B. Heywood's textbook, McGraw-Hill; the section follows. */
    static final String HEYWOOD = "Heywood, Internal Combustion Engine Fundamentals (1988), ";

    /** A figure of the sheet and one of the setup closer than this are the same. */
    private static final double SAME = 1e-9;

    private final Car car;
    private final double least;
    private final List<Entry> entries = new ArrayList<>();

    LedgerPen(Car car) {
        this(car, Entry.ROUNDING);
    }

    /** @param least relative difference that a solver behind all of the figures leaves */
    LedgerPen(Car car, double least) {
        this.car = car;
        this.least = least;
    }

    Ledger ledger() {
        return Ledger.of(entries);
    }

    /** A figure that is given: by the sheet, with its place and its reason, as long as it is the sheet's; else by something else. */
    Draft given(
            String key, String name, String symbol, QuantityKind kind, double value, String path, String elsewhere) {
        Draft draft = new Draft(key, name, symbol, kind, value);
        Optional<Origin> stated = car.origin(path);
        if (stated.isEmpty()) {
            return draft.by("given", elsewhere).provenance(Provenance.ASSUMED);
        }
        Origin origin = stated.get();
        if (origin.kind() != null && Math.abs(origin.value() - value) > SAME * Math.abs(value)) {
            return draft.by("given", elsewhere + "; the sheet has '" + origin.text() + "'")
                    .provenance(Provenance.ASSUMED);
        }
        draft.origin = stated;
        return draft.by("input, '" + origin.text() + "'", origin.source())
                .uncertain(origin.uncertainty())
                .provenance(Provenance.ofWords(origin.provenance()));
    }

    /** A figure of the sheet that nothing else gives. */
    void sheet(String key, String name, String symbol, QuantityKind kind, double value, String path) {
        given(key, name, symbol, kind, value, path, "the car, not stated in the sheet")
                .enter();
    }

    /** A figure that follows from others. */
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
        private List<String> inputs = List.of();
        private Provenance provenance = Provenance.CALCULATED;
        private Optional<Origin> origin = Optional.empty();
        private Optional<Formula> formula = Optional.empty();
        private double tolerance = least;

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

        Draft provenance(Provenance known) {
            provenance = known;
            return this;
        }

        Draft on(String... keys) {
            inputs = List.of(keys);
            return this;
        }

        /** Relative difference the solver leaves. */
        Draft within(double relative) {
            tolerance = Math.max(relative, least);
            return this;
        }

        void from(Formula made) {
            formula = Optional.of(made);
            enter();
        }

        void enter() {
            entries.add(new Entry(
                    key,
                    name,
                    symbol,
                    kind,
                    value,
                    uncertainty,
                    basis,
                    source,
                    inputs,
                    provenance,
                    origin,
                    formula,
                    tolerance));
        }
    }
}
