package org.shotledger.session;

import java.util.List;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/** A page of help: what can be typed, and what it gives. */
public final class Help implements Displayable {
    private static final List<Topic> TOPICS = List.of(
            new Topic(
                    "Load a job and plan it",
                    "var job = Job.load(file(\"data/whimbrel/job.yaml\"));\nvar plan = Plan.find(job);",
                    "setup, verdict and limits over all cases; type plan in a cell to see them"),
            new Topic(
                    "Begin with your own car",
                    "help(\"bottle.charge\")\nhelp(\"bottle\")\njob.unusual()",
                    "what a field of the sheet is, its usual range, how to get it, what it changes; what in a sheet is unusual;"
                            + " ./shotledger new DIR writes a sheet to begin with"),
            new Topic(
                    "Look at one part",
                    "plan.setup()\nplan.stated()\nplan.limits()\nplan.stated().pass().get()\nplan.attainable()",
                    "each shows itself as a table, with a chart where that says more"),
            new Topic(
                    "Run a setup of your own",
                    "analyse(job, plan.setup().withJets(thou(42), thou(22)).withBoost(barGauge(1.2)))\n"
                            + "Evaluate.of(job.car(), plan.setup(), job.caseNamed(\"event\").withVoltage(12.5))",
                    "the same car with another setup in every case of the job; or one setup in a case of your own"),
            new Topic(
                    "See what could go wrong",
                    "DriftMap.of(plan)\nBoostReference.of(plan)\nForgiving.of(plan)\nNitrousWindow.of(plan)\n"
                            + "Faults.of(plan).and(Fault.sudden(\"regulator at 2.8 bar\", s -> s.withFuelPressure(2.8e5)))",
                    "how far pressures may stray, the jets that bear most, when the nitrous may be on, and what catches a fault"),
            new Topic(
                    "Read a log",
                    "var log = EngineLog.read(file(\"data/whimbrel/logs/pull-with-nitrous.csv\"))\n"
                            + "Reconciliation.of(plan.stated(), log.findings())",
                    "what is wrong with the log, and how far it lies off the plan"),
            new Topic(
                    "Know the jets better",
                    "feed(plan)\nFlowTestAdvice.of(plan)\njob.flowTests()\n"
                            + "Plan.of(job.with(job.car().with(job.car().nitrous().withFlowLaw(OrificeLaw.EQUILIBRIUM))), plan.setup())",
                    "which part chokes with each jet and what a filter, a hose or a missed purge moves, which flow test to make first and what it is worth, what those in the sheet told, the same plan by another law"),
            new Topic(
                    "Move things by hand",
                    "explore(plan)\nexplore(job)\nvar boost = slider(\"boost\", psi(10), psi(30));\n"
                            + "controls(boost, menu(\"fuel\", \"E30\", \"E85\")).show(v -> v.of(boost).gauge())",
                    "a plan under sliders, with verdict, power and limits at each move; sliders, menus, boxes and fields for a function of"
                            + " your own"),
            new Topic(
                    "Ask why",
                    "why(plan, \"nitrous-flow\")",
                    "the figure, its equation and source, and everything it rests on, down to the inputs"),
            new Topic(
                    "Write quantities",
                    "psi(950)\nhp(780)\nthou(62)\ndegF(88)\nlbPerMin(5)",
                    "a quantity with its unit"),
            new Topic(
                    "Choose the units shown",
                    "units(Shown.SI)",
                    "from now on results are shown so; Shown.BOTH puts US and SI side by side"),
            new Topic(
                    "Draw and go on",
                    "Charts.of(plan, UnitSystem.US).chart()\nLimitTables.of(plan.limits()).in(Shown.SI).table()",
                    "the XChart object and the tablesaw table behind what you see"),
            new Topic(
                    "Write the customer's document",
                    "document(plan).write(Path.of(\"out\"), \"plan\", Paper.A4)",
                    "one HTML page and a PDF of the same"));
    private static final String CAUTION =
            "Every figure is an estimate: prove it in small steps, from the smallest jets upward.";

    private Help() {}

    /** What can be typed, and what it gives. */
    private record Topic(String purpose, String code, String gives) {}

    static Help page() {
        return new Help();
    }

    @Override
    public String toText() {
        StringBuilder out = new StringBuilder();
        for (Topic topic : TOPICS) {
            out.append(topic.purpose).append('\n');
            topic.code.lines().forEach(line -> out.append("    ").append(line).append('\n'));
            out.append("  gives ").append(topic.gives).append("\n\n");
        }
        return out.append(CAUTION).toString();
    }

    @Override
    public String toHtml() {
        StringBuilder out = new StringBuilder("<dl>");
        for (Topic topic : TOPICS) {
            out.append("<dt>").append(Display.escapeHtml(topic.purpose)).append("</dt><dd><pre>");
            out.append(Display.escapeHtml(topic.code)).append("</pre>gives ");
            out.append(Display.escapeHtml(topic.gives)).append("</dd>");
        }
        return out.append("</dl><p>").append(CAUTION).append("</p>").toString();
    }

    @Override
    public String toString() {
        return toText();
    }
}
