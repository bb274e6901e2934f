package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.Orifice;
import org.shotledger.flow.Tube;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

class TabulatedOutflowTest {
    // large jets behind a small solenoid, and the other way round
    @ParameterizedTest
    @CsvSource({"1.2e-3, 2.6e-3", "2.4e-3, 1.6e-3"})
    void agreesWithThePathBetweenItsNodes(double jet, double solenoid) {
        FeedPath path = path(jet, solenoid);
        Outflow table = Outflow.tabulated(path, 2.8e5, 200, 309.3);
        for (double t = 205; t < 309.3; t += 0.61) {
            FluidState liquid = NitrousOxide.saturatedLiquid(t);
            assertEquals(1, table.massFlow(0, liquid) / path.massFlow(liquid, 2.8e5), 1e-3, t + " K");
        }
    }

    // liquid that flashed after superheating, as the two-node bottle gives it
    @ParameterizedTest
    @CsvSource({"1.2e-3, 2.6e-3", "2.4e-3, 1.6e-3"})
    void agreesWithThePathForWetOutlets(double jet, double solenoid) {
        FeedPath path = path(jet, solenoid);
        Outflow table = Outflow.tabulated(path, 2.8e5, 250, 306);
        for (double t = 255; t < 303; t += 6.7) {
            for (double x = 0.004; x < 0.2; x *= 2.3) {
                FluidState wet = NitrousOxide.mixture(t, x);
                assertEquals(1, table.massFlow(0, wet) / path.massFlow(wet, 2.8e5), 1.2e-2, t + " K " + x);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"1.2e-3, 2.6e-3", "2.4e-3, 1.6e-3"})
    void aNarrowRangeIsAsGoodAndBeyondItThePathAnswers(double jet, double solenoid) {
        FeedPath path = path(jet, solenoid);
        Outflow table = Outflow.tabulated(path, 2.8e5, 284, 299);
        for (double t = 275; t < 306; t += 0.37) {
            FluidState liquid = NitrousOxide.saturatedLiquid(t);
            FluidState wet = NitrousOxide.mixture(t, 0.05);
            boolean inside = t > 284 && t < 299;
            assertEquals(1, table.massFlow(0, liquid) / path.massFlow(liquid, 2.8e5), inside ? 1e-3 : 1e-12, t + " K");
            assertEquals(1, table.massFlow(0, wet) / path.massFlow(wet, 2.8e5), inside ? 1.2e-2 : 1e-12, t + " K wet");
        }
    }

    @Test
    void passesOtherStatesOnToThePath() {
        FeedPath path = path(1.2e-3, 2.6e-3);
        FluidState vapour = NitrousOxide.saturatedVapour(280);
        assertEquals(
                path.massFlow(vapour, 2.8e5),
                Outflow.tabulated(path, 2.8e5, 270, 300).massFlow(0, vapour));
    }

    private static FeedPath path(double jet, double solenoid) {
        NitrousJet seat = new NitrousJet("solenoid", solenoid, 2, Edge.SQUARE, 0.8);
        return FeedPath.of(Tube.level("hose", 3.2, 8.7e-3), new Orifice(seat, 8.7e-3), NitrousJet.of(jet));
    }
}
