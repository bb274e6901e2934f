package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** Lines and losses beside the balances they stand for, solved here in small steps and by halving. */
class LineFiguresTest {
    private static final int STEPS = 400;

    // Colebrook's equation 1/sqrt(f) = -2 lg(e/3.7 + 2.51/(Re sqrt(f))), J. Inst. Civ. Eng. 11 (1939) 133, solved by
    // repetition;
    // Churchill's follows it within 2.2 %
    @ParameterizedTest
    @CsvSource({"1e4, 0", "1e4, 0.01", "1e4, 0.05", "1e5, 0.001", "1e6, 1e-4", "1e6, 0.01", "1e7, 0", "1e7, 0.05"})
    void frictionFollowsColebrook(double reynolds, double roughness) {
        double f = 0.02;
        for (int i = 0; i < 60; i++) {
            f = Math.pow(-2 * Math.log10(roughness / 3.7 + 2.51 / reynolds / Math.sqrt(f)), -2);
        }
        assertEquals(f, Friction.churchill(reynolds, roughness), 0.022 * f);
    }

    // between laminar and turbulent by hand: Re 3000, smooth: A = 1.0826e18, B = 3.598e17,
    // 8 ((8/3000)^12 + 1.4424e18^-1.5)^(1/12) = 0.04297; Re 2300: 0.03084
    @Test
    void frictionBetweenLaminarAndTurbulent() {
        assertEquals(0.042975, Friction.churchill(3000, 0), 1e-6);
        assertEquals(0.047949, Friction.churchill(3000, 0.01), 1e-6);
        assertEquals(0.030840, Friction.churchill(2300, 0), 1e-6);
    }

    // the formulas worked out by hand, in mPa s and uPa s; vapour at 200 K beside 10.0 uPa s of the CRC Handbook (from
    // memory)
    @ParameterizedTest
    @CsvSource({
        "150, 0.461915, 9.44232",
        "182.33, 0.461915, 9.44232",
        "200, 0.286137, 10.33874",
        "250, 0.109304, 13.28894",
        "280, 0.070032, 15.90236",
        "309, 0.035800, 24.12092",
        "350, 0.035800, 24.12092",
    })
    void viscosities(double temperature, double liquid, double vapour) {
        assertEquals(1e-3 * liquid, Viscosity.liquid(temperature), 1e-9);
        assertEquals(1e-6 * vapour, Viscosity.vapour(temperature), 1e-10);
        if (temperature == 200) {
            assertEquals(10.0e-6, Viscosity.vapour(temperature), 0.4e-6);
        }
    }

    /** Pressure behind a loss, by halving: p1 - p2 = K G^2 / 2 times the mean volume of both ends. */
    private static double behindLoss(FluidState inlet, double head) {
        double low = 0.6 * inlet.pressure();
        double high = inlet.pressure();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            double after = 1
                    / NitrousOxide.atPressureEnthalpy(middle, inlet.enthalpy()).density();
            if (inlet.pressure() - middle > head * (1 / inlet.density() + after) / 2) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    @Test
    void aLossOfAMixtureIsThatOfTheMeanVolume() {
        FluidState wet = NitrousOxide.mixture(290, 0.05);
        LocalLoss loss = new LocalLoss("bend", 5e-3, 2);
        for (double flow : new double[] {0.05, 0.2, 0.3}) {
            double flux = flow / (Math.PI / 4 * 25e-6);
            double expected = behindLoss(wet, flux * flux);
            assertTrue(expected < 0.999 * wet.pressure(), "a loss worth telling");
            assertEquals(expected, loss.outletPressure(wet, flow), 1e-7 * expected);
        }
        FlowValve valve = new FlowValve("valve", 0.6, 0.5, 0);
        // half of Kv 0.6 passes 0.3 m3/h of water at 1 bar: lost per volume is 1e5 (m 3600 / 0.3)^2 / 1000
        double head = 1e5 * Math.pow(0.1 * 3600 / 0.3, 2) / 1000;
        double expected = behindLoss(wet, head);
        assertEquals(expected, valve.outletPressure(wet, 0.1), 1e-7 * expected);
    }

    // the loss law ends where 0.4 of the pressure is lost at the inlet's volume: m = A sqrt(0.8 p rho / K); nine tenths
    // of it is
    // the estimate of what passes
    @Test
    void aLossFallsShortByWhatIsBeyondItsLaw() {
        FluidState liquid = NitrousOxide.atTemperaturePressure(280, 6e6);
        LocalLoss loss = new LocalLoss("bend", 4e-3, 1.5);
        double most = Math.PI / 4 * 16e-6 * Math.sqrt(0.8 * 6e6 * liquid.density() / 1.5);
        assertEquals(0.9 * most - 3, loss.shortfall(liquid, 3), 1e-9);
        assertEquals(-1e-6 * 0.5 * most, loss.shortfall(liquid, 0.5 * most), 1e-12);
        FlowValve valve = FlowValve.open("valve", 0.5);
        double area = 0.5 / 3600 * Math.sqrt(1000 / 2e5);
        double open = area * Math.sqrt(0.8 * 6e6 * liquid.density());
        assertEquals(0.9 * open - 9, valve.shortfall(liquid, 9), 1e-9);
        assertTrue(Double.isNaN(valve.outletPressure(liquid, 1.01 * open)));
        assertEquals("", valve.blocked());
        assertEquals("valve is closed.", new FlowValve("valve", 0.5, 0, 0).blocked());
    }

    /** A tube's march in small steps: the outlet pressure and the length reached; its velocity head is lost at the end. */
    private static double[] marched(FluidState inlet, Tube tube, double flow) {
        double flux = flow / (Math.PI / 4 * tube.bore() * tube.bore());
        double p = entry(inlet, flux);
        double floor = 0.35 * inlet.pressure();
        double step = (p - floor) / STEPS / 4;
        double z = 0;
        double v = moving(inlet, p, flux, 1 / inlet.density());
        while (p > floor) {
            double next = moving(inlet, p - step, flux, v);
            double middle = (v + next) / 2;
            double quality = NitrousOxide.atPressureEnthalpy(
                            p - step / 2, inlet.enthalpy() - Math.pow(flux * middle, 2) / 2)
                    .quality();
            double t = NitrousOxide.saturationTemperature(p - step / 2);
            double x = Double.isNaN(quality) ? 0 : quality;
            double viscosity = 1 / (x / Viscosity.vapour(t) + (1 - x) / Viscosity.liquid(t));
            double friction = Friction.churchill(flux * tube.bore() / viscosity, tube.roughness() / tube.bore());
            double slope =
                    friction * flux * flux * middle / 2 / tube.bore() + 9.80665 * tube.rise() / tube.length() / middle;
            double dz = (step - flux * flux * (next - v)) / slope;
            if (dz <= 0) {
                return new double[] {Double.NaN, z};
            }
            if (z + dz >= tube.length()) {
                return new double[] {p - step * (tube.length() - z) / dz, tube.length()};
            }
            z += dz;
            p -= step;
            v = next;
        }
        return new double[] {Double.NaN, z};
    }

    private static double entry(FluidState inlet, double flux) {
        double low = HomogeneousEquilibrium.criticalFlux(inlet).pressure();
        double high = inlet.pressure();
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            FluidState there = NitrousOxide.atPressureEntropy(middle, inlet.entropy());
            if (there.density() * Math.sqrt(2 * Math.max(0, inlet.enthalpy() - there.enthalpy())) > flux) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double moving(FluidState inlet, double p, double flux, double guess) {
        double v = guess;
        for (int i = 0; i < 4; i++) {
            v = 1
                    / NitrousOxide.atPressureEnthalpy(p, inlet.enthalpy() - Math.pow(flux * v, 2) / 2)
                            .density();
        }
        return v;
    }

    @ParameterizedTest
    @CsvSource({
        "290, 0.05, 2, 0.004, 0, 0.06",
        "290, 0.05, 2, 0.004, 1.8, 0.06",
        "290, 0.05, 2, 0.004, -1.8, 0.06",
        "280, 0.6, 0.5, 0.003, 0, 0.02",
        "285, 0, 5, 0.005, 0, 0.1",
        "290, 0.1, 0.03, 0.002, 0, 0.025",
    })
    void aTubeOfBoilingLiquidIsItsBalanceInSmallSteps(
            double t, double x, double length, double bore, double rise, double flow) {
        FluidState inlet = NitrousOxide.mixture(t, x);
        Tube tube = new Tube("tube", length, bore, 5e-6, rise);
        double expected = marched(inlet, tube, flow)[0];
        assertTrue(expected < 0.99 * inlet.pressure(), "a loss worth telling: " + expected);
        assertEquals(expected, tube.outletPressure(inlet, flow), 2e-3 * (inlet.pressure() - expected));
    }

    // friction and length go about as the square of the flow: the flow that just passes is as the root of the length
    // reached
    @Test
    void aTubeThatChokesFallsShortByTheLengthItReaches() {
        FluidState inlet = NitrousOxide.mixture(290, 0.05);
        Tube tube = Tube.level("tube", 12, 0.004);
        double[] reached = marched(inlet, tube, 0.1);
        assertTrue(Double.isNaN(reached[0]) && reached[1] > 0.3 && reached[1] < 8, "chokes inside: " + reached[1]);
        assertTrue(Double.isNaN(tube.outletPressure(inlet, 0.1)));
        double expected = 0.1 * (Math.sqrt(reached[1] / 12) - 1);
        assertEquals(expected, tube.shortfall(inlet, 0.1), 0.04 * -expected);
        double most = HomogeneousEquilibrium.criticalFlux(inlet).massFlux() * Math.PI / 4 * 16e-6;
        assertTrue(Double.isNaN(tube.outletPressure(inlet, 1.01 * most)));
        assertEquals(most - 0.9, tube.shortfall(inlet, 0.9), 1e-9);
        assertEquals(-1e-6 * 0.01, tube.shortfall(inlet, 0.01), 1e-15, "it passes that");
    }

    @Test
    void aBlockLosesNothingAndPassesWhatItsBranchesPass() {
        FluidState liquid = NitrousOxide.saturatedLiquid(290);
        NitrousJet small = NitrousJet.of(0.8e-3);
        NitrousJet large = NitrousJet.of(1.1e-3);
        Tube line = Tube.level("line", 0.3, 0.004);
        Manifold block = new Manifold("block", 0, List.of(FeedPath.of(small), FeedPath.of(large)));
        assertEquals(liquid.pressure(), block.outletPressure(liquid, 0.1));
        double most = small.massFlow(liquid, 0) + large.massFlow(liquid, 0);
        assertEquals(most - 1, block.shortfall(liquid, 1), 1e-5 * most);
        assertEquals(0, block.shortfall(liquid, 0.5 * most));
        assertNull(block.commonBranch(), "two kinds");
        Manifold equal = Manifold.equal("block", 3, line, small);
        assertSame(equal.branches().get(0), equal.commonBranch());
        assertNull(Manifold.equal("block", 3, line).commonBranch(), "no jet at its end");
        assertNull(Manifold.equal("block", 3, line, small.withBore(0)).commonBranch(), "closed");
        assertEquals(
                "Manifold block has no branch; give it at least one.",
                assertThrows(IllegalArgumentException.class, () -> new Manifold("block", 0, List.of()))
                        .getMessage());
    }
}
