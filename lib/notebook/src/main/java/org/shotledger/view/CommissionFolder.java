package org.shotledger.view;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.commission.ControllerTables;
import org.shotledger.commission.JobList;
import org.shotledger.commission.SensorChecks;
import org.shotledger.commission.StartList;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.plan.Plan;
import org.shotledger.risk.ArmingConditions;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.wiring.Importance;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.Wiring;

/**
 * Everything of a plan's commissioning in one place: a page to print, and each table as a file of comma-separated values.
 *
 * @param plan the plan
 * @param tables by the name of their file, in the order of the page
 * @param picture of the wiring; empty where the sheet describes none
 */
public record CommissionFolder(Plan plan, Map<String, Listing> tables, Optional<WiringPicture> picture) {
    private static final String HEAD = "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\">"
            + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\">"
            + "<style>body{font:14px/1.4 'Liberation Sans',Arial,sans-serif;margin:2em;max-width:75em}table{border-collapse:collapse;margin:1em 0}"
            + "th,td{border:1px solid #888;padding:.2em .5em;text-align:left;vertical-align:top}caption{font-weight:bold;text-align:left;padding:.3em 0}"
            + "svg{max-width:100%;height:auto}</style>";

    /**
     * The commissioning of a plan.
     *
     * @param plan the plan
     * @param rpm engine speeds of the controller's own table, rev/min; none for those of the boost tables
     * @return tables and picture
     */
    public static CommissionFolder of(Plan plan, double... rpm) {
        Map<String, Listing> tables = new LinkedHashMap<>();
        SensorChecks checks = SensorChecks.of(plan.job(), plan.setup());
        Optional<Wiring> wiring = plan.car().wiring();
        tables.put("first-start", CommissionTables.of(StartList.of(plan)));
        if (!checks.values().isEmpty()) {
            tables.put("readings", CommissionTables.form(checks));
        }
        wiring.ifPresent(w -> {
            tables.put("pins", PinTables.of(w.pins()));
            Listing remedies = PinTables.remedies(w.pinTask());
            if (!remedies.isEmpty()) {
                tables.put("pins-purchases", remedies);
                tables.put("pins-with-purchases", PinTables.of(w.pinTask().cheapest(Importance.COULD)));
            }
            w.safety().ifPresent(chain -> tables.put("safety-chain", PinTables.of(chain)));
            tables.put("wires", WireList.of(w));
            tables.put("sensor-errors", SensorTables.errors(w));
            for (SensorInput input : w.inputs()) {
                tables.put("sensor-" + input.name().replace(' ', '-'), SensorTables.of(input));
            }
        });
        tables.put(
                "controller",
                CommissionTables.of(rpm.length == 0 ? ControllerTables.of(plan) : ControllerTables.of(plan, rpm)));
        if (plan.setup().jets().isPresent() && !plan.stated().withNitrous().isEmpty()) {
            tables.put("arming", RiskTables.of(ArmingConditions.of(plan)));
        }
        JobList list = JobList.of(plan);
        tables.put("parts", CommissionTables.of(list, list.items()));
        return new CommissionFolder(plan, tables, wiring.map(WiringPicture::of));
    }

    /**
     * Writes the page, the picture and the tables.
     *
     * @param folder where to; it is made where it is not there
     * @param shown units of the figures
     * @return the files written, the page first
     */
    public List<Path> write(Path folder, Shown shown) {
        List<Path> files = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            files.add(Files.writeString(folder.resolve("commissioning.html"), page(shown)));
            if (picture.isPresent()) {
                files.add(Files.writeString(
                        folder.resolve("wiring.svg"), picture.get().svg()));
            }
            for (Map.Entry<String, Listing> table : tables.entrySet()) {
                files.add(Files.writeString(
                        folder.resolve(table.getKey() + ".csv"),
                        table.getValue().in(shown).csv()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The folder " + folder + " cannot be written: " + e.getMessage(), e);
        }
        return files;
    }

    private String page(Shown shown) {
        String title = "Commissioning of the " + plan.job().name();
        StringBuilder page = new StringBuilder(HEAD)
                .append("<title>")
                .append(Display.escapeHtml(title))
                .append("</title></head><body><h1>")
                .append(Display.escapeHtml(title))
                .append("</h1>");
        if (plan.car().invented()) {
            paragraph(page, "Invented data, not a real car or part.");
        }
        paragraph(page, plan.verdictLine());
        paragraph(
                page,
                "Every figure is an estimate, to be proven in small steps. Local codes, cylinder regulations and licensed practice go before this page.");
        tables.forEach((name, table) -> {
            page.append(table.in(shown).toHtml());
            if (name.equals("pins")) {
                picture.map(Displayable::toHtml).ifPresent(page::append);
            }
        });
        return page.append("</body></html>").toString();
    }

    private static void paragraph(StringBuilder page, String words) {
        page.append("<p>").append(Display.escapeHtml(words)).append("</p>");
    }
}
