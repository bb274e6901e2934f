package org.shotledger.relief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shotledger.units.Quantities.hp;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Verdict;
import org.shotledger.budget.Wish;
import org.shotledger.build.Build;

/** What is recommended must do what it says: the changed build is planned again in full. */
class ReliefTest {
    private static final Build BUILD = Build.load(Path.of("../../data/heron/build.yaml"));

    @Test
    void a_target_within_reach_needs_no_change() {
        Relief none = Relief.search(BUILD, Wish.of(BUILD.target()));
        assertTrue(none.before().reached());
        assertTrue(none.attempts().isEmpty());
    }

    @Test
    void the_cheapest_change_found_lets_the_budget_be_made() {
        Build choked = BUILD.with("wet-kit.fuel.solenoid.bore", "1.5 mm");
        Wish wish = Wish.of(BUILD.target());
        Relief relief = Relief.search(choked, wish, CommonChanges.ALL, 1);
        assertFalse(relief.before().reached());
        assertTrue(
                relief.before().limit().contains("fuel jets against their solenoid")
                        || relief.before().limit().contains("jets"),
                relief.before().limit());
        Attempt cheapest = relief.cheapest().orElseThrow();
        Budget mended = Budget.plan(choked.with(cheapest.change().path(), cheapest.after()), wish);
        assertNotEquals(Verdict.BROKEN, mended.limits().verdict(), cheapest.toString());
        for (int i = 1; i < relief.attempts().size(); i++) {
            int before = relief.attempts().get(i - 1).change().cost();
            assertTrue(before <= relief.attempts().get(i).change().cost(), "tried in the order of cost");
        }
    }

    @Test
    void the_list_is_the_callers_own() {
        Change stronger = Change.times("a stronger crank", "limits.crank-torque", 1, 1.15);
        Relief relief = Relief.search(BUILD, Wish.of(BUILD.target()).withWheelPower(hp(830)), List.of(stronger), 1);
        assertEquals(1, relief.attempts().size());
        assertEquals("900 N m", relief.attempts().get(0).before());
        assertEquals("1035 N m", relief.attempts().get(0).after());
    }

    @Test
    void every_common_change_names_a_value_of_a_build_sheet() {
        for (Change change : CommonChanges.ALL) {
            assertTrue(change.fits(BUILD), change.path());
        }
    }

    @Test
    void a_change_the_sheet_refuses_is_reported_and_not_thrown() {
        Change absurd = Change.to("an absurd solenoid", "wet-kit.nitrous.solenoid.bore", 1, "4 m");
        Relief relief = Relief.search(BUILD, Wish.of(BUILD.target()).withWheelPower(hp(900)), List.of(absurd), 1);
        assertTrue(relief.attempts().get(0).limit().startsWith("refused: "), relief.toString());
    }
}
