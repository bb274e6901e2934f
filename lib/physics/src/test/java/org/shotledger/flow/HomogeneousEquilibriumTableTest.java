package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;

/** The table against the exact model, which is itself held by a published equation of state and an outside table. */
class HomogeneousEquilibriumTableTest {
    private static final int STATES = 3000;
    private static final double STATED_ERROR = 1e-5;

    private static void agrees(long seed, EnumSet<Choking> met, Function<SplittableRandom, FluidState> maker) {
        SplittableRandom random = new SplittableRandom(seed);
        EnumSet<Choking> seen = EnumSet.noneOf(Choking.class);
        for (int i = 0; i < STATES; i++) {
            FluidState state = maker.apply(random);
            Throat exact = HomogeneousEquilibrium.criticalFlux(state);
            seen.add(exact.choking());
            double ratio = HomogeneousEquilibriumTable.criticalFlux(state) / exact.massFlux();
            assertEquals(1, ratio, STATED_ERROR, () -> "from " + state);
        }
        assertEquals(met, seen);
    }

    @Test
    void mixturesOfAnyQuality() {
        agrees(
                1,
                EnumSet.of(Choking.SONIC),
                random -> NitrousOxide.mixture(
                        random.nextDouble(205, NitrousOxide.CRITICAL_TEMPERATURE), random.nextDouble()));
    }

    @Test
    void saturatedLiquidAndMixturesCloseToIt() {
        agrees(
                2,
                EnumSet.of(Choking.SONIC),
                random -> NitrousOxide.mixture(
                        random.nextDouble(205, NitrousOxide.CRITICAL_TEMPERATURE),
                        random.nextInt(4) == 0 ? 0 : Math.pow(10, random.nextDouble(-6, -1))));
    }

    @Test
    void subcooledLiquidOnBothSidesOfTheFirstBubbleKink() {
        agrees(3, EnumSet.of(Choking.SONIC, Choking.FLASH_INCEPTION), random -> {
            double t = random.nextDouble(215, 307);
            double above = random.nextBoolean() ? random.nextDouble(10, 4e5) : random.nextDouble(0, 8e6);
            return NitrousOxide.atTemperaturePressure(t, SaturationCurve.pressure(t) + above);
        });
    }

    @Test
    void denseFluidAboveTheCriticalTemperature() {
        agrees(4, EnumSet.of(Choking.FLASH_INCEPTION), random -> {
            double t = random.nextDouble(310, 320);
            return NitrousOxide.atTemperatureDensity(t, random.nextDouble(680, 850));
        });
    }

    @Test
    void vapourFromTheDewLineToLargeSuperheat() {
        agrees(5, EnumSet.of(Choking.SONIC, Choking.FLASH_INCEPTION), random -> {
            double dew = random.nextDouble(215, 300);
            double share = random.nextDouble();
            double p = SaturationCurve.pressure(dew);
            return NitrousOxide.atTemperaturePressure(dew + 1e-3 + 0.5 * (dew - 210) * share, p);
        });
    }

    @Test
    void whatLiesOutsideIsRefusedWithTheRange() {
        FluidState[] outside = {
            NitrousOxide.mixture(200, 0.5),
            NitrousOxide.atTemperaturePressure(200, 5e6),
            NitrousOxide.atTemperaturePressure(500, 1e6),
            NitrousOxide.atTemperaturePressure(310, 7.4e6)
        };
        for (FluidState state : outside) {
            IllegalArgumentException error =
                    assertThrows(IllegalArgumentException.class, () -> HomogeneousEquilibriumTable.criticalFlux(state));
            assertTrue(error.getMessage().contains("205 to"), error.getMessage());
        }
        assertThrows(IllegalArgumentException.class, () -> HomogeneousEquilibriumTable.mixtureFlux(290, Double.NaN));
        assertThrows(
                IllegalArgumentException.class, () -> HomogeneousEquilibriumTable.singlePhaseFlux(Double.NaN, 500));
    }
}
