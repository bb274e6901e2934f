package org.shotledger.sheet;

import static org.shotledger.units.AbsolutePressure.STANDARD_ATMOSPHERE;
import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.sheet.SectionPlace.Value;
import org.shotledger.sheet.SheetNode.Entry;
import org.shotledger.sheet.SheetNode.Items;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetNode.Scalar;
import org.shotledger.units.Excerpt;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Reading;
import org.shotledger.units.UnitException;

/** Reads the figures of a section: unit, range, band, one by one or in brackets. */
final class Figures {
    private final SectionPlace place;

    Figures(SectionPlace place) {
        this.place = place;
    }

    double one(String key, QuantityKind kind, double low, double high) {
        return place.scalar(key, () -> "write " + kind.dimension().words() + " from " + Range.text(kind, low, high))
                .map(value -> read(key, value, kind, low, high))
                .orElse(Double.NaN);
    }

    /** Whether the value stands here and is a figure of a kind; asks nothing and reports nothing. */
    boolean measures(String key, QuantityKind kind) {
        return place.find(key)
                .map(Entry::value)
                .map(node -> node instanceof Mapping inner
                        ? inner.find("value").map(Entry::value).orElse(node)
                        : node)
                .filter(node -> node instanceof Scalar scalar && FigureText.isA(scalar.text(), kind))
                .isPresent();
    }

    double pressure(String key, double low, double high, double ambient) {
        Optional<Value> found =
                place.scalar(key, () -> "write a pressure from " + Range.text(ABSOLUTE_PRESSURE, low, high));
        if (found.isEmpty()) {
            return Double.NaN;
        }
        if (!FigureText.saysGauge(found.get().scalar().text())) {
            return read(key, found.get(), ABSOLUTE_PRESSURE, low, high);
        }
        double around = Double.isNaN(ambient) ? STANDARD_ATMOSPHERE.pascals() : ambient;
        return read(key, found.get(), GAUGE_PRESSURE, low - around, high - around) + around;
    }

    List<Double> several(String key, QuantityKind kind, double low, double high) {
        Optional<Entry> entry = place.find(key);
        if (entry.isEmpty() || !(entry.get().value() instanceof Items items)) {
            if (!place.missing()) {
                place.report(
                        entry.map(e -> e.value().at()).orElse(place.at()),
                        key,
                        "",
                        "\"" + place.name(key) + "\" is not a list; write figures in square brackets, each from "
                                + Range.text(kind, low, high) + ".");
            }
            return List.of();
        }
        List<Double> values = new ArrayList<>();
        for (SheetNode item : items.items()) {
            String itemKey = key + "[" + values.size() + "]";
            place.item(itemKey, item)
                    .ifPresentOrElse(
                            value -> values.add(read(itemKey, value, kind, low, high)),
                            () -> place.report(item.at(), itemKey, "", "A plain figure is wanted here."));
        }
        return values;
    }

    int count(String key, int low, int high) {
        double value = one(key, COUNT, low, high);
        if (Double.isNaN(value)) {
            return low;
        }
        if (value != Math.rint(value)) {
            place.report(
                    place.find(key).orElseThrow().value().at(),
                    key,
                    "",
                    "A whole number is wanted from " + low + " to " + high + ".");
            return low;
        }
        return (int) value;
    }

    private double read(String key, Value value, QuantityKind kind, double low, double high) {
        Scalar scalar = value.scalar();
        try {
            Reading figure = FigureText.read(scalar.text(), kind);
            double si = figure.value();
            double slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
            if (si < low - slack || si > high + slack) {
                place.report(
                        scalar.at(),
                        key,
                        scalar.text(),
                        Excerpt.quoted(scalar.text()) + " is not plausible for \"" + place.name(key) + "\"; allowed is "
                                + Range.like(kind, low, high, scalar.text()) + ".");
                return Double.NaN;
            }
            place.note(key, value, kind, si, figure.halfWidth());
            return si;
        } catch (UnitException e) {
            place.report(scalar.at(), key, scalar.text(), e.getMessage());
            return Double.NaN;
        }
    }
}
