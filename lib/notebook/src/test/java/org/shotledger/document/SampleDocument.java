package org.shotledger.document;

import java.nio.file.Path;
import java.util.List;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.Samples;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** A document with every section, made of made-up numbers. */
public final class SampleDocument {
    static final String NASTY = "<script>alert('x')</script> & \"quotes\" </style>";

    private SampleDocument() {}

    /**
     * Writes the sample.
     *
     * @param arguments the folder
     */
    public static void main(String[] arguments) {
        CustomerDocument.of(content()).write(Path.of(arguments[0]), "sample", Paper.A4);
        CustomerDocument.of(content()).write(Path.of(arguments[0]), "sample-letter", Paper.LETTER);
    }

    static DocumentContent content() {
        List<ChartPicture> charts = Samples.all(UnitSystem.US);
        var builder = DocumentContent.titled(
                        "A power budget for a made-up car",
                        Verdict.TIGHT,
                        "Jets 62 and 31 reach the wish with every limit kept; the injectors leave the least room.")
                .between(NASTY, "the test tree")
                .notice("Made-up data, no real car or part.")
                .say(Section.TARGET, "780 hp at the wheels between 5,800 and 7,800 rpm, three passes on one bottle.")
                .say(Section.DECISION, "Fit the jets of the first row, start two steps smaller, and prove each step.")
                .picture(Section.OUTCOMES, charts.get(0))
                .rows(Section.SETUP, jets())
                .picture(Section.SETUP, charts.get(2))
                .picture(Section.LIMITS, charts.get(1))
                .rows(Section.LIMITS, limits())
                .say(Section.ALTERNATIVES, "Smaller jets with more boost break the injectors.")
                .points(
                        Section.RISKS,
                        List.of("Fuel filter blocked: lambda rises to 0.98; cut by fuel pressure in 60 ms.", NASTY))
                .rows(Section.STEP_UP, steps())
                .picture(Section.PASS, charts.get(3))
                .say(Section.WIRING, "One more output is needed than the controller has left.")
                .rows(Section.REASONING, reasons())
                .points(Section.SOURCES, List.of("A table of made-up figures"))
                .signedBy("engine builder", "customer")
                .revision(new Revision("B", "2026-07-04", List.of("Smaller fuel jet: the first pull read rich.")))
                .revision(new Revision("A", "2026-06-20", List.of("First issue.")));
        return builder.build();
    }

    private static Listing jets() {
        return Listing.titled("Pairs on the ladder")
                .words("Pair")
                .figures("Nitrous jet", QuantityKind.BORE)
                .figures("Fuel jet", QuantityKind.BORE)
                .figures("Nitrous flow", QuantityKind.MASS_FLOW)
                .figures("Power", QuantityKind.POWER)
                .figures("Lambda", QuantityKind.RATIO)
                .row("recommended", 1.575e-3, 0.787e-3, 0.0363, 581_000, 0.81)
                .row("one step down", 1.524e-3, 0.762e-3, 0.0340, 572_000, 0.82)
                .build();
    }

    private static Listing limits() {
        Listing.Builder rows = Listing.titled("Limits")
                .words("Limit")
                .mixed("Value")
                .mixed("Bound")
                .words("Verdict");
        for (Limit limit : Samples.margins().limits()) {
            rows.row(
                    limit.name(),
                    new Cell.Figure(limit.value(), limit.kind()),
                    new Cell.Figure(limit.bound(), limit.kind()),
                    limit.verdict());
        }
        return rows.build();
    }

    private static Listing steps() {
        Listing.Builder rows = Listing.titled("Step-up plan")
                .words("Step")
                .figures("Nitrous jet", QuantityKind.BORE)
                .figures("Expected power", QuantityKind.POWER)
                .words("Go on when")
                .words("Stop when");
        for (int i = 1; i <= 5; i++) {
            rows.row(
                    "step " + i,
                    (0.8 + 0.15 * i) * 1e-3,
                    (440 + 28 * i) * 1e3,
                    "lambda 0.78 to 0.82, plugs clean",
                    "lambda above 0.84, knock, fuel pressure 5 % low");
        }
        return rows.build();
    }

    static Listing reasons() {
        Listing.Builder rows = Listing.titled("Ledger")
                .words("Figure")
                .mixed("Value")
                .words("Known as")
                .words("Basis")
                .words("Source");
        for (int i = 0; i < 40; i++) {
            rows.row(
                    "flow " + i + " through a hole, as long a name as such figures have",
                    new Cell.Figure(0.03 + 0.001 * i, QuantityKind.MASS_FLOW),
                    "calculated",
                    "homogeneous equilibrium: the greatest flow along the isentrope from the state before the jet",
                    i % 2 == 0 ? "API Standard 520 Part I, annex C" : "common practice, no source");
        }
        return rows.build();
    }
}
