package org.shotledger.explore;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.chart.MarginChart;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.display.HasVerdict;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.setup.Target;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.view.Charts;

/**
 * One outcome at a glance: verdict, figures, the limits that are closest, power over engine speed, and the pass.
 *
 * @param outcome what happens
 * @param target what is asked
 * @param shown the units
 */
record OutcomeView(Outcome outcome, Target target, Shown shown) implements Displayable, HasVerdict {
    private static final int LIMITS = 8;
    /** A bar is full at half of the bound: our choice, so that the close ones can be told apart. */
    private static final double FULL_BAR = 0.5;
    /** Beyond twice a bound the figure says nothing more. */
    private static final double FAR = 1;
    /** Half a page wide, so that the words in a chart can still be read on a phone. */
    private static final int CHART = 520;

    @Override
    public String verdictLine() {
        Limit first = outcome.limits().first().orElseThrow();
        double power = outcome.power();
        return String.format(
                Locale.ROOT,
                "%s at the wheels%s, case '%s' as set. Limits: %s; the closest is %s, %s.",
                QuantityKind.POWER.text(power, system()),
                target.reachedBy(power)
                        ? ""
                        : " of the " + QuantityKind.POWER.text(target.wheelPower(), system()) + " asked",
                outcome.at().name(),
                outcome.limits().verdict().word(),
                first.name(),
                room(first));
    }

    private static String room(Limit limit) {
        double margin = limit.relativeMargin();
        if (!Double.isFinite(margin) || margin < -FAR) {
            return "far beyond it";
        }
        return String.format(Locale.ROOT, "%.1f %% %s", Math.abs(100 * margin), margin < 0 ? "beyond it" : "left");
    }

    private UnitSystem system() {
        return shown.first();
    }

    private Listing figures() {
        Listing.Builder rows =
                Listing.titled("Where power is highest").words("Figure").mixed("Value");
        outcome.strongest().ifPresent(best -> {
            row(rows, "engine speed", best.rpm(), QuantityKind.ROTATION);
            row(rows, "boost there", best.gaugePressure(), QuantityKind.GAUGE_PRESSURE);
            row(rows, "crank torque there", best.crankTorque(), QuantityKind.TORQUE);
            row(rows, "lambda, all streams", best.lambda(), QuantityKind.RATIO);
            row(rows, "nitrous flow", best.nitrous().massFlow(), QuantityKind.MASS_FLOW);
            row(rows, "peak cylinder pressure", best.cylinder().peakPressure(), QuantityKind.ABSOLUTE_PRESSURE);
        });
        alone().ifPresent(alone -> row(rows, "power on boost alone", alone, QuantityKind.POWER));
        outcome.pass()
                .ifPresent(pass -> row(
                        rows,
                        "passes from one bottle, " + target.passes() + " asked",
                        Math.min(pass.wholePasses(), target.passes()),
                        QuantityKind.COUNT));
        return rows.build().in(shown);
    }

    private Optional<Double> alone() {
        return outcome.off().stream().map(OperatingPoint::wheelPower).max(Comparator.naturalOrder());
    }

    private static void row(Listing.Builder rows, String name, double value, QuantityKind kind) {
        rows.row(name, new Cell.Figure(value, kind));
    }

    private List<Limit> closest() {
        return outcome.limits().all().stream()
                .sorted(Comparator.comparingDouble(limit ->
                        Double.isNaN(limit.relativeMargin()) ? Double.NEGATIVE_INFINITY : limit.relativeMargin()))
                .limit(LIMITS)
                .toList();
    }

    @Override
    public String toText() {
        StringBuilder out =
                new StringBuilder(verdictLine()).append('\n').append(figures().toText());
        closest().forEach(limit -> out.append('\n').append(MarginChart.words(limit, system())));
        return out.toString();
    }

    @Override
    public String toHtml() {
        StringBuilder out = new StringBuilder("<div style=\"display:flex;flex-wrap:wrap;gap:4px 28px\">");
        column(out, 1, bars() + figures().toHtml());
        String pass = outcome.pass()
                .map(run -> Charts.of(run, outcome.car().limits().bottlePressureLow(), system(), CHART)
                        .svg())
                .orElse("");
        column(out, 2, Charts.of(outcome, target.wheelPower(), system(), CHART).svg() + pass);
        return "<p>" + Display.escapeHtml(verdictLine()) + "</p>" + out.append("</div>");
    }

    private static void column(StringBuilder out, int weight, String html) {
        out.append("<div style=\"flex:")
                .append(weight)
                .append(" 1 ")
                .append(weight == 1 ? 300 : 340)
                .append("px;min-width:0\">")
                .append(html)
                .append("</div>");
    }

    /** Bars of HTML, whose words keep their size on a narrow page. */
    private String bars() {
        StringBuilder out = new StringBuilder("<p style=\"margin:0\"><strong>Room left to the closest limits</strong>"
                + " (full bar: half of the bound)</p>");
        for (Limit limit : closest()) {
            double margin = limit.relativeMargin();
            double width = limit.verdict() == Verdict.BROKEN || Double.isNaN(margin)
                    ? 100
                    : Math.min(100, 100 * margin / FULL_BAR);
            out.append("<div style=\"margin:5px 0\">")
                    .append(Display.escapeHtml(MarginChart.words(limit, system())))
                    .append(", ")
                    .append(room(limit))
                    .append("<div style=\"height:7px;background:#DDDDDD\"><div style=\"height:7px;width:")
                    .append(String.format(Locale.ROOT, "%.1f", width))
                    .append("%;background:")
                    .append(paint(limit.verdict()))
                    .append("\"></div></div></div>");
        }
        return out.toString();
    }

    /** The colours and hatchings of the chart of margins. */
    private static String paint(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "#009E73";
            case TIGHT -> "repeating-linear-gradient(135deg,#E69F00 0 6px,#222222 6px 7px)";
            case BROKEN -> "repeating-linear-gradient(135deg,#D55E00 0 3px,#222222 3px 4px)";
        };
    }
}
