package org.shotledger.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shotledger.chart.ChartPicture;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.Paper;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.units.UnitSystem;

/** Writes the document and the pictures of the invented demonstration job, to be looked at and shown. */
public final class DemoPages {
    private DemoPages() {}

    /**
     * Writes the pages.
     *
     * @param arguments the job's folder, the folder to write to
     * @throws IOException when a picture cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Plan plan = Plan.find(Job.load(Path.of(arguments[0])));
        Path out = Files.createDirectories(Path.of(arguments[1]));
        CustomerDocument document = PlanDocument.of(plan, Issue.first("A", "2026-06-20"));
        document.write(out, "plan", Paper.A4);
        document.write(out, "plan-letter", Paper.LETTER);
        picture(out, Charts.of(plan, UnitSystem.US));
        picture(out, Charts.of(plan.limits(), UnitSystem.US));
        picture(out, Charts.boost(plan, UnitSystem.US));
        picture(out, Charts.mixture(plan, UnitSystem.US));
        picture(out, Charts.alternatives(plan, UnitSystem.US));
        picture(out, Charts.map(plan.stated(), UnitSystem.US));
        picture(out, EngineCharts.cylinder(plan.stated(), UnitSystem.SI));
        picture(out, FlowCharts.overBottlePressure(plan.stated(), UnitSystem.US));
        picture(
                out,
                Charts.of(
                        plan.stated().pass().orElseThrow(), plan.car().limits().bottlePressureLow(), UnitSystem.US));
        System.out.println(document.verdictLine());
        System.out.println(LimitTables.of(plan.limits()).toText());
    }

    private static void picture(Path out, ChartPicture picture) throws IOException {
        Files.write(out.resolve(picture.key() + ".png"), picture.png(1140));
        Files.writeString(out.resolve(picture.key() + ".svg"), picture.svg());
    }
}
