package org.shotledger.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shotledger.comm.CommMessage;
import org.shotledger.comm.Comms;
import org.shotledger.display.Display;
import org.shotledger.display.DisplaySink;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.session.Session;
import org.shotledger.snippet.CellResult;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;
import org.shotledger.table.Shown;
import org.shotledger.units.Quantities;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.view.Viewing;

/** Moves the sliders by the messages a page would send, and holds what is shown against what the library says for the same setup. */
class ExplorerTest {
    private static final Plan PLAN = Plan.find(Job.load(Path.of("../../data/whimbrel")));

    private final Map<String, String> ids = new LinkedHashMap<>();
    private final Map<String, Object> told = new LinkedHashMap<>();
    private final List<Map<String, Object>> shown = new ArrayList<>();
    private final Comms comms = new Comms((type, comm, message) -> {
        Object state = message.data().get("state");
        if (state instanceof Map<?, ?> keys && type.equals("comm_open")) {
            keys.forEach((key, value) -> {
                if (key.equals("tooltip") || key.equals("description")) {
                    ids.put(String.valueOf(value), comm.id());
                }
            });
        } else if (state instanceof Map<?, ?> keys
                && "update".equals(message.data().get("method"))) {
            told.put(comm.id(), keys.values().iterator().next());
        }
    });

    @BeforeEach
    void aPage() {
        Comms.install(comms);
        Display.install(new DisplaySink() {
            @Override
            public void show(Map<String, Object> bundle, String id) {
                shown.add(bundle);
            }

            @Override
            public void update(Map<String, Object> bundle, String id) {
                shown.add(bundle);
            }

            @Override
            public void clear(boolean whenNextArrives) {}

            @Override
            public String ask(String prompt, boolean hidden) {
                throw new IllegalStateException("nobody is there");
            }
        });
    }

    @AfterEach
    void noPage() {
        Comms.install(null);
        Display.install(null);
        Viewing.choose(Shown.US);
    }

    @Test
    void untouchedItIsThePlan() {
        Explorer.show(PLAN);
        assertTrue(text().contains(new OutcomeView(PLAN.stated(), PLAN.target(), Shown.US).toText()));
        Position start = Start.of(PLAN, PLAN.setup().jets().orElseThrow());
        assertSame(PLAN.stated(), start.outcome());
        assertTrue(
                String.valueOf(shown.get(0).get(Display.HTML)).contains("<details>"),
                "positions for a page without controls");
    }

    @Test
    void aMovedSliderShowsWhatEvaluateSaysForTheSameSetup() {
        Explorer.show(PLAN);
        move("highest boost, psi gauge", "value", 15.2);
        expect(Evaluate.of(
                PLAN.car(),
                PLAN.setup().withHighestBoost(Quantities.psiGauge(15.2)),
                PLAN.job().stated()));
        move("air, °F", "value", 95.0);
        move("ethanol, %", "value", 70.0);
        expect(Evaluate.of(
                PLAN.car(),
                PLAN.setup().withHighestBoost(Quantities.psiGauge(15.2)),
                PLAN.job().stated().withAirTemperature(Quantities.degF(95)).withFuel(0.70)));
        click("Back to the plan");
        expect(PLAN.stated());
        assertEquals(
                17.1, (Double) told.get(ids.get("highest boost, psi gauge")), 1e-9, "the page is told where it stands");
    }

    @Test
    void whatStandsBetweenTwoStepsStaysExactUntilItIsMoved() {
        Explorer.show(PLAN);
        move("highest boost, psi gauge", "value", 17.1);
        expect(PLAN.stated());
    }

    @Test
    void jetsMoveAlongTheLadder() {
        double[] rungs = PLAN.car().nitrous().ladder().bores();
        Explorer.show(PLAN);
        move("nitrous jet", "index", 20.0);
        double fuel = PLAN.setup().jets().orElseThrow().fuelBore();
        expect(Evaluate.of(
                PLAN.car(),
                PLAN.setup().withJets(new JetPair(rungs[20], fuel)),
                PLAN.job().stated()));
        move("nitrous", "value", false);
        expect(Evaluate.of(PLAN.car(), PLAN.setup().withoutJets(), PLAN.job().stated()));
    }

    @Test
    void aTargetLetGoIsPlannedAnewAndMovesWhatIsSet() {
        Explorer.show(PLAN);
        move("target power, hp", "value", 650.0);
        Job job = PLAN.job();
        Plan other = Plan.find(
                job.with(job.target().withWheelPower(Quantities.hp(650).si())));
        assertTrue(text().contains(new OutcomeView(other.stated(), other.target(), Shown.US).toText()));
        double boost =
                QuantityKind.GAUGE_PRESSURE.shown(other.setup().boost().armed().highest(), UnitSystem.US);
        assertEquals(boost, (Double) told.get(ids.get("highest boost, psi gauge")), 0.05);
    }

    @Test
    void aPinIsAPlanOverAllCasesBesideTheFirst() {
        Explorer.show(PLAN);
        move("spark retard, deg", "value", 9.0);
        click("Pin this");
        Plan pinned = Plan.of(PLAN.job(), PLAN.setup().withRetard(9));
        String power = QuantityKind.POWER.text(pinned.stated().power(), UnitSystem.US);
        String line = text().lines()
                .filter(row -> row.startsWith("wheel power"))
                .findFirst()
                .orElseThrow();
        assertTrue(line.contains(power), line);
        assertTrue(text().contains("A: spark retard 9.0 deg"), text());
        click("Clear pins");
        assertTrue(text().lines().noneMatch(row -> row.startsWith("wheel power")));
    }

    /** The cell is run by a session as a notebook would run it, in both unit systems. */
    @ParameterizedTest
    @EnumSource(
            value = Shown.class,
            names = {"US", "SI"})
    void theCellRepeatsEveryFigureThatIsShown(Shown units) {
        Viewing.choose(units);
        Explorer.show(PLAN);
        boolean si = units == Shown.SI;
        move(si ? "highest boost, bar gauge" : "highest boost, psi gauge", "value", si ? 1.07 : 15.3);
        move(si ? "altitude, m" : "altitude, ft", "value", 1503.0);
        move("nitrous jet", "index", 24.0);
        move("spark retard, deg", "value", 7.5);
        move("moment", "index", 1.0);
        click("As code");
        String cell = text().substring(text().indexOf("// plan is"));
        List<String> imports =
                Session.IMPORTS.stream().map(name -> "import " + name + ";").toList();
        try (JavaSession session = new JavaSession(SessionOptions.of(imports))) {
            assertTrue(session.evaluate("var plan = Plan.find(Job.load(\"../../data/whimbrel\"))", "plan")
                    .ok());
            CellResult run = session.evaluate(cell, "cell");
            assertTrue(run.ok(), () -> cell + "\n" + run.error());
            Outcome repeated = (Outcome) run.value();
            assertNotEquals(PLAN.setup(), repeated.setup());
            assertTrue(text().startsWith(new OutcomeView(repeated, PLAN.target(), units).toText()), cell);
            assertTrue(repeated.power() > 0);
        }
    }

    private void expect(Outcome outcome) {
        assertTrue(
                text().startsWith(new OutcomeView(outcome, PLAN.target(), Shown.US).toText()),
                () -> text() + "\nis not\n" + new OutcomeView(outcome, PLAN.target(), Shown.US).toText());
    }

    private String text() {
        return String.valueOf(shown.get(shown.size() - 1).get(Display.TEXT));
    }

    private void move(String control, String key, Object value) {
        send(control, Map.of("method", "update", "state", Map.of(key, value)));
    }

    private void click(String button) {
        send(button, Map.of("method", "custom", "content", Map.of("event", "click")));
    }

    private void send(String control, Map<String, Object> data) {
        assertTrue(ids.containsKey(control), () -> control + " is not among " + ids.keySet());
        comms.received(ids.get(control), CommMessage.of(data));
        comms.settle(ExplorerTest::runs);
    }

    private static boolean runs(Runnable work) {
        work.run();
        return true;
    }
}
