package org.shotledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Origin;
import org.shotledger.sheet.Found.Meant;
import org.shotledger.sheet.Problem;
import org.shotledger.units.Excerpt;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitFactors;

/**
 * What a sheet states that can be, but seldom is: a figure outside its usual range, and figures that do not go together. A figure is
 * left alone once the writer says that it is meant: by a reason or {@code sure: yes} beside a figure outside its range, by
 * {@code sure: yes} where figures contradict each other, as a reason may stand beside a slip of the pen.
 */
final class Unusual {
    /** Half-width over the value from which a figure counts as hardly known: our choice. */
    private static final double WIDE = 0.25;
    /** The same for a figure that says itself that it is estimated: our choice. */
    private static final double WIDE_ESTIMATE = 0.8;
    /** Half-width of a temperature near freezing, K, from which it says nothing. */
    private static final double WIDE_TEMPERATURE = 30;

    private final Job job;
    private final List<Problem> found = new ArrayList<>();

    private Unusual(Job job) {
        this.job = job;
    }

    static List<Problem> of(Job job) {
        Unusual unusual = new Unusual(job);
        job.car().origins().values().forEach(unusual::figure);
        new CrossChecks(job, unusual::contradiction).all();
        return List.copyOf(unusual.found);
    }

    private void figure(Origin origin) {
        if (origin.kind() == null || !origin.stated()) {
            return;
        }
        band(origin);
        boolean none = origin.value() == 0 && origin.kind() != QuantityKind.TEMPERATURE;
        boolean reasoned = origin.meant() == Meant.REASONED
                && !origin.from().endsWith(Rewrite.NO_REASON)
                && !SheetPen.wrote(origin.from());
        if (none || reasoned || origin.meant() == Meant.SURE) {
            return;
        }
        QuantityKind kind = origin.kind();
        Optional<SheetField> field = SheetFields.ranged(origin.path(), kind);
        field.flatMap(f -> f.usual(kind))
                .filter(usual -> !usual.holds(origin.value()))
                .ifPresent(usual -> add(
                        origin,
                        Excerpt.quoted(origin.text()) + " is unusual for \"" + origin.path() + "\"; usual is "
                                + field.get().rangeLike(origin.text(), kind) + " (" + SheetFields.source(field.get())
                                + "); mend it, or say \"from: ...\" or \"sure: yes\" beside it if it is meant."));
    }

    private void band(Origin origin) {
        double half = origin.halfWidth();
        if (Double.isNaN(half) || origin.meant() == Meant.SURE) {
            return;
        }
        boolean wide = origin.kind() == QuantityKind.TEMPERATURE
                ? half > Math.max(WIDE_TEMPERATURE, WIDE * (origin.value() - UnitFactors.ICE_POINT))
                : half > (origin.provenance().equals("estimated") ? WIDE_ESTIMATE : WIDE) * Math.abs(origin.value());
        if (wide) {
            add(
                    origin,
                    Excerpt.quoted(origin.text()) + " at \"" + origin.path()
                            + "\" has a band so wide that it says little; mend the band, or say \"sure: yes\" beside it if it is"
                            + " meant.");
        }
    }

    private void contradiction(String path, String sentence) {
        Optional<Origin> origin = job.car().origin(path);
        if (origin.filter(o -> o.meant() == Meant.SURE).isEmpty()
                && found.stream().noneMatch(p -> p.field().equals(path))) {
            String advice = "; mend what is wrong, or say \"sure: yes\" beside \"" + path + "\" if it is meant.";
            found.add(new Problem(
                    job.source().file(),
                    origin.map(Origin::line).orElse(0),
                    0,
                    path,
                    origin.map(Origin::text).orElse(""),
                    sentence + advice));
        }
    }

    private void add(Origin origin, String sentence) {
        found.add(new Problem(job.source().file(), origin.line(), 0, origin.path(), origin.text(), sentence));
    }
}
