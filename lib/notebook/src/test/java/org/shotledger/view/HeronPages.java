package org.shotledger.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shotledger.budget.Budget;
import org.shotledger.build.Build;
import org.shotledger.chart.ChartPicture;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.Paper;
import org.shotledger.units.UnitSystem;

/** Writes the document and the pictures of the invented demonstration build, to be looked at and shown. */
public final class HeronPages {
    private HeronPages() {}

    /**
     * Writes the pages.
     *
     * @param arguments the build's folder, the folder to write to
     * @throws IOException when a picture cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Budget budget = Budget.plan(Build.load(Path.of(arguments[0])));
        Path out = Path.of(arguments[1]);
        CustomerDocument document = BudgetDocument.of(budget, Issue.first("A", "2026-06-20"));
        document.write(out, "heron", Paper.A4);
        document.write(out, "heron-letter", Paper.LETTER);
        picture(out, Charts.of(budget.split(), UnitSystem.US));
        picture(out, Charts.of(budget.limits(), UnitSystem.US));
        picture(out, Charts.of(budget.bottle(), UnitSystem.US));
        picture(out, Charts.of(budget.candidates(), budget.peak().gaugePressure(), UnitSystem.US));
        System.out.println(document.verdictLine());
        System.out.println(Tables.of(budget.limits()).toText());
    }

    private static void picture(Path out, ChartPicture picture) throws IOException {
        Files.write(out.resolve(picture.key() + ".png"), picture.png(1140));
        Files.writeString(out.resolve(picture.key() + ".svg"), picture.svg());
    }
}
