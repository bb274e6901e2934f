package org.shotledger.car;

/**
 * What the builder allows. Where the trade has only habits, the sheet's default is one and says so.
 *
 * @param peakPressure highest cylinder pressure, Pa absolute
 * @param crankTorque highest torque at the crankshaft, N m
 * @param pistonSpeed highest mean piston speed, m/s
 * @param lambdaLow richest mixture of all streams
 * @param lambdaHigh leanest mixture of all streams
 * @param injectorDuty largest share of the cycle an injector may be open, 0 to 1
 * @param pumpReserve share of a pump group's flow that must stay unused, 0 to 1
 * @param surgeMargin smallest share of the compressor flow that must lie between the point and surge
 * @param chokeMargin smallest share of the compressor flow that must lie between the point and choke
 * @param bottlePressureLow lowest bottle pressure at which the jets are trusted, Pa absolute
 * @param bottlePressureHigh highest bottle pressure at which the nitrous may be opened, Pa absolute
 * @param solenoidShare largest share of a solenoid's flow area that the jets behind it may have, 0 to 1
 * @param feedLoss largest share of the bottle pressure that valve, hose, filter and solenoid may take before the jets, 0 to 1
 * @param passageShare largest share of a nozzle passage's area that the jet before it may have, 0 to 1
 * @param exhaustTemperature hottest exhaust before the turbine, K; infinite where the builder sets none
 * @param reliefShare largest share of the relief disc's pressure that the full bottle may reach at its hottest, 0 to 1
 */
public record BuilderLimits(
        double peakPressure,
        double crankTorque,
        double pistonSpeed,
        double lambdaLow,
        double lambdaHigh,
        double injectorDuty,
        double pumpReserve,
        double surgeMargin,
        double chokeMargin,
        double bottlePressureLow,
        double bottlePressureHigh,
        double solenoidShare,
        double feedLoss,
        double passageShare,
        double exhaustTemperature,
        double reliefShare) {}
