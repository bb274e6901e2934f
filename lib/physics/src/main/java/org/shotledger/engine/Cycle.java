package org.shotledger.engine;

/**
 * What one cylinder gave in one cycle.
 *
 * @param work gross indicated work of compression and expansion strokes, J
 * @param imep that work over the cylinder's displacement, Pa
 * @param peakPressure Pa
 * @param peakAngle where it stands, deg after top dead centre
 * @param peakTemperature highest mean gas temperature, K
 * @param heatLoss to the walls between the valve events, J
 * @param exhaustTemperature mean of the gas that leaves, K
 * @param knockIntegral Livengood-Wu integral of the end gas; compare only with that of a safe base
 * @param burnedAtOpening share burned when the exhaust valve opens
 * @param endTemperature at exhaust valve opening, K
 * @param endPressure at exhaust valve opening, Pa
 */
public record Cycle(
        double work,
        double imep,
        double peakPressure,
        double peakAngle,
        double peakTemperature,
        double heatLoss,
        double exhaustTemperature,
        double knockIntegral,
        double burnedAtOpening,
        double endTemperature,
        double endPressure) {}
