package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;

/** The three ways to ask for a mixture are one oxygen balance. */
class MixtureGoalTest {

    private static Mixture streams(Fuel fuel, double fuelFlow) {
        return new Mixture(0.6, 0.005, 0.05, Fuels.GASOLINE, 0.05, fuel, fuelFlow);
    }

    /** Stoichiometric kg of N2O for a kg of fuel, from atom balances: C8H18 + 25 N2O, C2H5OH + 6 N2O, CH3OH + 3 N2O. */
    @ParameterizedTest
    @CsvSource({"ISO_OCTANE, 9.63", "ETHANOL, 5.73", "METHANOL, 4.12"})
    void a_stoichiometric_circuit_has_the_ratio_of_the_atom_balance(String name, double ratio) throws Exception {
        Fuel fuel = (Fuel) Fuels.class.getField(name).get(null);
        double flow = MixtureGoal.circuit(1).fuelFlow(streams(fuel, 0));
        assertEquals(ratio, 0.05 / flow, 0.006);
        assertEquals(flow, MixtureGoal.ratio(0.05 / flow).fuelFlow(streams(fuel, 0)), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"TOTAL_LAMBDA, 0.8", "CIRCUIT_RATIO, 5", "CIRCUIT_LAMBDA, 0.7"})
    void the_flow_asked_for_meets_the_goal(MixtureGoal.Kind kind, double value) {
        MixtureGoal goal = new MixtureGoal(kind, value);
        double flow = goal.fuelFlow(streams(Fuels.ETHANOL, 0));
        assertEquals(value, goal.reached(streams(Fuels.ETHANOL, flow)), 1e-12);
    }

    @Test
    void a_goal_out_of_range_is_refused_in_one_sentence() {
        var refused = assertThrows(IllegalArgumentException.class, () -> MixtureGoal.ratio(0.8));
        assertEquals(
                "The mixture wanted, nitrous oxide over nitrous fuel, by mass, is 0.8; allowed is 1.0 to 15.0.",
                refused.getMessage());
    }
}
