package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Rates of a bottle's contents against the first law by hand: the lever rule, heat through the wetted and the dry wall, and what boiling
 * takes from the liquid. States are those of the saturation line, which is tested against published tables.
 */
class ContentsFiguresTest {
    private static final double WATER = 6.7e-3;
    private static final double SHELL = 7.1 * 900;
    private static final Bottle BOTTLE = new Bottle(WATER, 7.1, 900);
    private static final double MASS = 3;
    private static final double KELVIN = 295;
    private static final double FLOW = 0.1;
    private static final double WALL = 301;
    private static final double AIR = 310;
    private static final double COEFFICIENT = 400;
    private static final double OUTSIDE = 8;
    private static final HeatInput HEAT = new HeatInput(COEFFICIENT, OUTSIDE, AIR, 0, 0, 0);
    private static final Emptying TASK =
            Emptying.of(BOTTLE.charged(MASS, KELVIN), Outflow.constant(FLOW)).withHeat(HEAT);

    private final FluidState liquid = NitrousOxide.saturatedLiquid(KELVIN);
    private final FluidState vapour = NitrousOxide.saturatedVapour(KELVIN);
    /** By the lever rule on the specific volumes. */
    private final double quality =
            (WATER / MASS - 1 / liquid.density()) / (1 / vapour.density() - 1 / liquid.density());

    private final double wetted = (1 - quality) * MASS / liquid.density() / WATER;
    private final double fromAir = OUTSIDE * BOTTLE.outerArea() * (AIR - WALL);
    private final double throughWet = wetted * COEFFICIENT * BOTTLE.wallArea();
    private final double throughDry = HeatInput.GAS_SHARE * (1 - wetted) * COEFFICIENT * BOTTLE.wallArea();

    private static double[] contents(double mass, double energy) {
        double[] y = new double[Layout.SIZE];
        y[Layout.MASS] = mass;
        y[Layout.ENERGY] = mass * energy;
        y[Layout.SHELL] = SHELL * WALL;
        return y;
    }

    private double[] boiling() {
        return contents(MASS, quality * vapour.internalEnergy() + (1 - quality) * liquid.internalEnergy());
    }

    private static void same(double expected, double actual) {
        assertEquals(expected, actual, 1e-6 * Math.abs(expected));
    }

    @Test
    void liquidAndVapourTogether() {
        MixedBody body = new MixedBody(TASK, new Exchange(TASK));
        double[] y = boiling();
        same(liquid.pressure(), body.pressure(y));
        same(KELVIN, body.temperature(y));
        same((1 - quality) * MASS, body.liquidMass(y));
        same(1 - quality, body.liquidShare(y));
        double[] rates = body.rates(0, y);
        double toContents = (throughWet + throughDry) * (WALL - KELVIN);
        assertEquals(-FLOW, rates[Layout.MASS]);
        assertEquals(FLOW, rates[Layout.OUT]);
        same(FLOW * liquid.enthalpy(), rates[Layout.OUT_ENTHALPY]);
        same(toContents - FLOW * liquid.enthalpy(), rates[Layout.ENERGY]);
        same(fromAir - toContents, rates[Layout.SHELL]);
        same(fromAir, rates[Layout.HEAT]);
        body.uncovered = true;
        same(FLOW * vapour.enthalpy(), body.rates(0, y)[Layout.OUT_ENTHALPY]);
    }

    @Test
    void liquidThatFillsTheBottleTouchesAllOfItsWall() {
        MixedBody body = new MixedBody(TASK, new Exchange(TASK));
        FluidState dense = NitrousOxide.atTemperaturePressure(KELVIN, 90e5);
        double mass = dense.density() * WATER;
        double[] y = contents(mass, dense.internalEnergy());
        same(90e5, body.pressure(y));
        same(mass, body.liquidMass(y));
        same(1 - dense.density() / liquid.density(), body.room(y));
        double toContents = COEFFICIENT * BOTTLE.wallArea() * (WALL - KELVIN);
        double[] rates = body.rates(0, y);
        same(toContents - rates[Layout.OUT_ENTHALPY], rates[Layout.ENERGY]);
    }

    @Test
    void gasAloneTouchesItsWallAsGasAndIsDrawn() {
        MixedBody body = new MixedBody(TASK, new Exchange(TASK));
        FluidState gas = NitrousOxide.atTemperaturePressure(KELVIN, 20e5);
        double mass = gas.density() * WATER;
        double[] y = contents(mass, gas.internalEnergy());
        assertEquals(0, body.liquidMass(y));
        same(NitrousOxide.saturationTemperature(20e5) / KELVIN - 1, body.liquidShare(y));
        body.uncovered = true;
        double[] rates = body.rates(0, y);
        double toContents = HeatInput.GAS_SHARE * COEFFICIENT * BOTTLE.wallArea() * (WALL - KELVIN);
        same(FLOW * gas.enthalpy(), rates[Layout.OUT_ENTHALPY]);
        same(toContents - FLOW * gas.enthalpy(), rates[Layout.ENERGY]);
    }

    @Test
    void contentsDenserThanTheCriticalPointCountAsLiquid() {
        MixedBody body = new MixedBody(TASK, new Exchange(TASK));
        FluidState hot = NitrousOxide.atTemperatureDensity(320, 1.1 * NitrousOxide.CRITICAL_DENSITY);
        double mass = hot.density() * WATER;
        double[] y = contents(mass, hot.internalEnergy());
        assertEquals(0.1, body.liquidShare(y), 1e-6);
        same(mass, body.liquidMass(y));
    }

    private double[] apart(ApartBody body) {
        double[] y = boiling();
        body.part(y, quality, KELVIN);
        return y;
    }

    /** d(value)/dT along the saturated liquid, by a central difference. */
    private static double slope(DoubleUnaryOperator value) {
        return (value.applyAsDouble(KELVIN + 0.01) - value.applyAsDouble(KELVIN - 0.01)) / 0.02;
    }

    private static double capacity(double pressure) {
        return slope(t -> NitrousOxide.saturatedLiquid(t).internalEnergy())
                + pressure * slope(t -> 1 / NitrousOxide.saturatedLiquid(t).density());
    }

    /** In equilibrium nothing boils: what is drawn takes its own enthalpy along, and the wall warms what it wets. */
    @Test
    void partedContentsInEquilibrium() {
        ApartBody body = new ApartBody(TASK, new Exchange(TASK), BoilingLaw.FITTED);
        double[] y = apart(body);
        double liquidMass = (1 - quality) * MASS;
        same(liquidMass, body.liquidMass(y));
        same(1 - wetted, body.room(y));
        assertEquals(1 - ApartBody.GONE, body.liquidShare(y), 1e-12);
        assertEquals(liquid.pressure(), body.pressure(y), 1e-5 * liquid.pressure());
        double[] rates = body.rates(0, y);
        assertEquals(-FLOW, rates[Layout.LIQUID], 1e-4 * FLOW);
        assertEquals(0, rates[Layout.BUBBLES], 1e-9);
        double warming = throughWet * (WALL - KELVIN) / (liquidMass * capacity(liquid.pressure()));
        assertEquals(warming, rates[Layout.LIQUID_TEMPERATURE], 0.01 * warming);
        double toContents = (throughWet + throughDry) * (WALL - KELVIN);
        assertEquals(toContents - FLOW * liquid.enthalpy(), rates[Layout.ENERGY], 1e-3 * toContents);
        assertEquals(fromAir - toContents, rates[Layout.SHELL], 1e-3 * toContents);
    }

    /** Vapour that was taken away lowers the pressure: the liquid is too warm for it, boils and cools. */
    @Test
    void superheatedLiquidBoilsByTheLawAndPaysForIt() {
        HeatInput none = HeatInput.none();
        Emptying closed =
                Emptying.of(BOTTLE.charged(MASS, KELVIN), Outflow.constant(0)).withHeat(none);
        BoilingLaw law = BoilingLaw.FITTED;
        ApartBody body = new ApartBody(closed, new Exchange(closed), law);
        double[] y = apart(body);
        double taken = 0.2 * quality * MASS;
        y[Layout.MASS] -= taken;
        y[Layout.ENERGY] -= taken * vapour.internalEnergy();
        y[Layout.BUBBLES] = 0.4;
        double pressure = body.pressure(y);
        double boilingPoint = NitrousOxide.saturationTemperature(pressure);
        double superheat = KELVIN - boilingPoint;
        assertTrue(superheat > 2, superheat + " K");
        double liquidMass = y[Layout.LIQUID];
        double section = Math.pow(WATER, 2.0 / 3);
        double evaporated = 0.120 * section * Math.pow(superheat, 1.33) + 0.030 * 0.4 * liquidMass * superheat;
        double[] rates = body.rates(0, y);
        assertEquals(-evaporated, rates[Layout.LIQUID], 1e-4 * evaporated);
        assertEquals(0, rates[Layout.MASS], 1e-12);
        assertEquals(0, rates[Layout.ENERGY], 1e-9);
        assertEquals(0.6 * Math.pow(superheat / 12.9, 3) / 0.604, rates[Layout.BUBBLES], 1e-4);
        double each = NitrousOxide.saturatedVapour(boilingPoint).enthalpy()
                - (liquid.internalEnergy() + pressure / liquid.density());
        double cooling = -evaporated * each / (liquidMass * capacity(pressure));
        assertEquals(cooling, rates[Layout.LIQUID_TEMPERATURE], 2e-3 * Math.abs(cooling));
    }

    /** The last puddle covers less and less of the section: with a hundredth of the liquid left half of it boils. */
    @Test
    void theLastPuddleBoilsLess() {
        ApartBody body = new ApartBody(TASK, new Exchange(TASK), BoilingLaw.FITTED);
        double[] y = apart(body);
        double start = y[Layout.LIQUID];
        double left = 0.01 * start;
        double gone = start - left;
        y[Layout.LIQUID] = left;
        y[Layout.MASS] -= gone;
        y[Layout.ENERGY] -= gone * liquid.internalEnergy();
        double superheat = KELVIN - NitrousOxide.saturationTemperature(body.pressure(y));
        double evaporated = 0.5 * 0.120 * Math.pow(WATER, 2.0 / 3) * Math.pow(superheat, 1.33);
        assertEquals(-FLOW - evaporated, body.rates(0, y)[Layout.LIQUID], 1e-3 * evaporated);
    }
}
