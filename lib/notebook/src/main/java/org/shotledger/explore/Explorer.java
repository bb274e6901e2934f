package org.shotledger.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.controls.Control;
import org.shotledger.controls.Controls;
import org.shotledger.controls.Values;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.display.HasVerdict;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.study.SideBySide;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.view.SideBySideTable;
import org.shotledger.view.Viewing;

/** A plan under sliders. */
public final class Explorer {
    /** A comparison holds six columns, the plan itself is the first. */
    private static final int MOST_PINS = 5;

    private static final String HOW =
            "Exact, in this one case; \"Pin this\" works out every case of the job. \"target power\" plans"
                    + " anew when it is let go, which takes about half a second and moves what is set. An estimate, to be proven in small steps.";

    private final Plan first;
    private final Shown shown;
    private final Knobs knobs;
    private final Map<String, Plan> pins = new LinkedHashMap<>();
    private final List<String> pinned = new ArrayList<>();
    private Plan plan;
    private char nextPin = 'A';
    private boolean code;

    private Explorer(Plan plan, Shown shown) {
        this.first = plan;
        this.plan = plan;
        this.shown = shown;
        this.knobs = new Knobs(plan, shown.first());
    }

    /**
     * Shows a plan with everything that can be set, and the weather, under sliders: verdict, power, the closest limits and the pass in the
     * stated case, worked out in full at each move. Where nothing can be moved, the start and some positions of each slider are shown.
     *
     * @param plan the plan to begin with
     */
    public static void show(Plan plan) {
        Explorer explorer = new Explorer(plan, Viewing.units());
        Controls.controls(explorer.knobs.all().toArray(Control<?>[]::new))
                .button("Pin this", explorer::pin)
                .button("Clear pins", values -> explorer.clear())
                .button("As code", values -> explorer.code = !explorer.code)
                .button("Back to the plan", explorer::back)
                .positions(3, explorer::shortly)
                .show(explorer::work);
    }

    private Displayable work(Values values) {
        if (values.changed(knobs.target())) {
            plan = planned(values);
            knobs.move(plan, values, false);
        }
        return view(values);
    }

    private Plan planned(Values values) {
        Job job = first.job();
        double power = values.of(knobs.target()).value();
        return power == first.target().wheelPower()
                ? first
                : Plan.find(job.with(job.target().withWheelPower(power)));
    }

    private Displayable view(Values values) {
        Position now = knobs.read(plan, values);
        return new Page(
                new OutcomeView(now.outcome(), plan.target(), shown),
                pins.isEmpty()
                        ? Optional.empty()
                        : Optional.of(SideBySideTable.of(compared()).in(shown)),
                List.copyOf(pinned),
                code ? Optional.of(CellCode.of(first, now, shown.first())) : Optional.empty());
    }

    private SideBySide compared() {
        Map<String, Plan> plans = new LinkedHashMap<>();
        plans.put("plan", first);
        plans.putAll(pins);
        return new SideBySide(plans);
    }

    /** For a page on which nothing moves. */
    private Displayable shortly(Values values) {
        return new OutcomeLine(new OutcomeView(knobs.read(plan, values).outcome(), plan.target(), shown).verdictLine());
    }

    private void pin(Values values) {
        Position now = knobs.read(plan, values);
        String name = String.valueOf(nextPin++);
        List<Case> cases = new ArrayList<>(plan.job().cases());
        cases.set(0, now.at());
        pins.put(name, Plan.of(plan.job().withCases(cases), now.setup()));
        List<String> moved = new ArrayList<>(knobs.moved(plan, values));
        if (!plan.equals(first)) {
            moved.add(0, "planned for " + knobs.target().words(values.of(knobs.target())));
        }
        pinned.add(name + ": " + (moved.isEmpty() ? "the plan itself" : String.join(", ", moved)));
        if (pins.size() > MOST_PINS) {
            pins.remove(pins.keySet().iterator().next());
            pinned.remove(0);
        }
    }

    private void clear() {
        pins.clear();
        pinned.clear();
    }

    private void back(Values values) {
        plan = first;
        knobs.move(first, values, true);
    }

    /** One sentence. */
    private record OutcomeLine(String toText) implements Displayable {
        @Override
        public String toHtml() {
            return "<p>" + Display.escapeHtml(toText) + "</p>";
        }
    }

    /** All of what stands below the sliders. */
    private record Page(OutcomeView outcome, Optional<Listing> compared, List<String> pinned, Optional<String> code)
            implements Displayable, HasVerdict {

        @Override
        public String verdictLine() {
            return outcome.verdictLine();
        }

        @Override
        public String toText() {
            StringBuilder out = new StringBuilder(outcome.toText()).append('\n').append(HOW);
            compared.ifPresent(table ->
                    out.append("\n\n").append(table.toText()).append('\n').append(String.join("\n", pinned)));
            code.ifPresent(cell -> out.append("\n\n").append(cell));
            return out.toString();
        }

        @Override
        public String toHtml() {
            StringBuilder out = new StringBuilder(outcome.toHtml())
                    .append("<p><small>")
                    .append(Display.escapeHtml(HOW))
                    .append("</small></p>");
            code.ifPresent(
                    cell -> out.append("<pre>").append(Display.escapeHtml(cell)).append("</pre>"));
            compared.ifPresent(table -> {
                out.append("<div style=\"overflow-x:auto\">")
                        .append(table.toHtml())
                        .append("</div><ul>");
                pinned.forEach(words ->
                        out.append("<li>").append(Display.escapeHtml(words)).append("</li>"));
                out.append("</ul>");
            });
            return out.toString();
        }
    }
}
