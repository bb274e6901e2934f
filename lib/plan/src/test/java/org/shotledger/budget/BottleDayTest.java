package org.shotledger.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.bottle.Charge;
import org.shotledger.build.Build;

/** Laws that a day of passes must obey, on the invented demonstration build. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BottleDayTest {
    private static final Path HERON = Path.of("../../data/heron");
    private static final Build BUILD = Build.load(HERON);
    private static final Budget BUDGET = Budget.plan(BUILD);
    private static final BottleDay DAY = BottleDay.of(BUDGET);

    @Test
    void it_counts_the_passes_that_the_budget_counts() {
        long full = DAY.passes().stream().filter(BottleDay.Pass::full).count();
        assertEquals(Math.min(BUDGET.bottle().passes(), BUDGET.wish().passes() + 1), full);
    }

    @Test
    void each_pass_begins_where_the_last_one_ended_and_never_at_more_pressure() {
        for (int i = 1; i < DAY.passes().size(); i++) {
            assertEquals(DAY.passes().get(i - 1).endMass(), DAY.passes().get(i).startMass(), 1e-9);
            assertTrue(DAY.passes().get(i - 1).startPressure()
                    >= DAY.passes().get(i).startPressure() - 1);
        }
    }

    /** First law: all of the heater's work cannot warm shell and contents faster than this, and not slower than with no air at all. */
    @Test
    void reheating_takes_the_time_that_the_energy_balance_asks_for() {
        BottleDay.Pass pass = DAY.passes().get(0);
        Charge cold = BUILD.bottle().vessel().charged(pass.endMass(), pass.endTemperature());
        Charge warm =
                BUILD.bottle().vessel().charged(pass.endMass(), BUILD.bottle().startTemperature());
        double contents =
                pass.endMass() * (warm.state().internalEnergy() - cold.state().internalEnergy());
        double rise = BUILD.bottle().startTemperature() - pass.endTemperature();
        double shell = 7.1 * 900 * rise;
        double least = contents / (BUILD.bottle().heaterPower() + 8 * 0.5 * 40);
        double most = (contents + shell) / BUILD.bottle().heaterPower();
        assertTrue(
                pass.reheat() > least && pass.reheat() < 1.15 * most, pass.reheat() + " s, " + least + " to " + most);
    }

    @Test
    void a_bottle_without_a_heater_in_cooler_air_never_gets_there() throws IOException {
        String text = Files.readString(HERON.resolve("build.yaml"))
                .replace("heater-power: 350 W", "heater-power: 0 W")
                .replaceFirst("    bottle-heater: \\{part.*\n", "");
        Budget cold = Budget.plan(Build.read(text, HERON));
        assertTrue(Double.isNaN(BottleDay.of(cold).warmUp()));
        assertEquals(1, BottleDay.of(cold).passes().size());
    }
}
