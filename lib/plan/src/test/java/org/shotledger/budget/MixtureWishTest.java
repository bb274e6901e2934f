package org.shotledger.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.build.Build;
import org.shotledger.fuel.Mixture;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.Amount;
import org.shotledger.units.QuantityKind;

/** A mixture may be asked for in three ways, in the wish and in the sheet; two budgets can be held against each other. */
class MixtureWishTest {
    private static final Path SHEET = Path.of("../../data/heron/build.yaml");
    private static final Build BUILD = Build.load(SHEET);
    private static final Budget BUDGET = Budget.plan(BUILD);

    @ParameterizedTest
    @CsvSource({"TOTAL_LAMBDA, 0.79", "CIRCUIT_RATIO, 4.6", "CIRCUIT_LAMBDA, 0.74"})
    void exact_jets_meet_the_mixture_asked_for(MixtureGoal.Kind kind, double value) {
        MixtureGoal goal = new MixtureGoal(kind, value);
        Budget asked = Budget.plan(BUILD, BUDGET.wish().with(goal));
        ShotSizer sizer = ShotSizer.of(asked);
        JetPair exact = sizer.exact(asked.wish().wheelPower());
        Evaluation point = sizer.strongest(exact);
        Mixture mixture = point.charge().mixture();
        assertEquals(value, goal.reached(mixture), 1e-3 * value);
        assertEquals(asked.wish().wheelPower(), point.wheelPower(), 1e-3 * point.wheelPower());
        assertEquals(mixture.lambda(), point.lambda());
        double circuit = asked.ledger().find("circuit-lambda").orElseThrow().value();
        double ratio = asked.ledger().find("circuit-ratio").orElseThrow().value();
        assertEquals(asked.peak().charge().mixture().nitrousFuel().stoichiometricNitrousFuel() * circuit, ratio, 1e-6);
        assertTrue(
                asked.ledger().find("mixture-wanted").orElseThrow().source().contains("asked here"),
                "the sheet has another figure");
    }

    @Test
    void a_sheet_may_ask_for_a_ratio_but_not_for_two_things() throws IOException {
        String text = Files.readString(SHEET);
        String line = "  nitrous-lambda: ";
        Build ratio =
                Build.read(text.replaceFirst("(?m)^  nitrous-lambda: .*$", "  nitrous-ratio: 4.6"), SHEET.getParent());
        assertEquals(MixtureGoal.ratio(4.6), ratio.tune().goal());
        var refused = assertThrows(
                SheetException.class,
                () -> Build.read(text.replace(line, "  nitrous-ratio: 4.6\n" + line), SHEET.getParent()));
        assertTrue(refused.getMessage().contains("keep one of"), refused.getMessage());
    }

    @Test
    void the_same_budget_does_not_differ_from_itself() {
        assertEquals(0, Comparison.of(BUDGET, BUDGET).moved().lines().size());
    }

    @Test
    void a_changed_input_is_named_as_the_reason_of_what_it_moved() {
        Budget cold = Budget.plan(BUILD.with("bottle.start-temperature", "29 degC"));
        Comparison moved = Comparison.of(BUDGET, cold).moved();
        var flow = moved.lines().stream()
                .filter(l -> l.key().equals("nitrous-flow"))
                .findFirst()
                .orElseThrow();
        assertTrue(flow.because().contains("bottle temperature"), flow.toString());
        assertEquals(flow.after() - flow.before(), flow.change());
        assertTrue(moved.lines().stream().noneMatch(l -> l.key().equals("bore")), "an input left alone did not move");
    }

    @Test
    void reach_is_the_wish_where_it_is_met_and_a_limit_where_it_is_not() {
        Reach met = Reach.of(BUILD, BUDGET.wish());
        assertTrue(met.reached());
        assertEquals(BUDGET.wish().wheelPower(), met.wheelPower());
        Reach beyond = Reach.beyond(BUILD, BUDGET.wish());
        assertTrue(beyond.wheelPower() >= met.wheelPower());
        Wish more = BUDGET.wish().withWheelPower(new Amount(QuantityKind.POWER, 1.03 * beyond.wheelPower()));
        Reach stopped = Reach.of(BUILD, more);
        assertEquals(false, stopped.reached());
        // each search stops within 1 % below the edge
        assertEquals(beyond.wheelPower(), stopped.wheelPower(), 0.015 * beyond.wheelPower());
        assertTrue(assertThrows(WishException.class, () -> Budget.plan(BUILD, more))
                .getMessage()
                .contains(stopped.limit()));
    }
}
