package org.shotledger.budget;

import org.shotledger.boost.CompressorPoint;
import org.shotledger.boost.ShaftBalance;
import org.shotledger.engine.Charge;
import org.shotledger.engine.Power;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fuel.HeatRelease;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;

/**
 * One operating point: every flow, state and power.
 *
 * @param rpm engine speed, rev/min
 * @param conditions what surrounds the engine
 * @param demand what is asked of it
 * @param compressor the compressor's operating point
 * @param airAfterCooler air temperature before fuel and nitrous are added, K
 * @param charge the mixed charge
 * @param nitrous what the nitrous feed path passes; with no flow when the nitrous is off
 * @param nitrousFuel what the fuel circuit of the kit passes; with no flow when the nitrous is off
 * @param main how hard the main injection works
 * @param heat heat released, W
 * @param shaft balance of turbine and compressor
 * @param cylinder load of one cylinder
 * @param power power at the crankshaft
 * @param wheelPower power at the wheels, W
 */
public record Evaluation(
        double rpm,
        Conditions conditions,
        Demand demand,
        CompressorPoint compressor,
        double airAfterCooler,
        Charge charge,
        FeedFlow nitrous,
        FuelFlow nitrousFuel,
        MainFuel main,
        HeatRelease heat,
        ShaftBalance shaft,
        CylinderLoad cylinder,
        Power power,
        double wheelPower) {

    /**
     * How hard the main injection works.
     *
     * @param massFlow main fuel, kg/s
     * @param duty share of the cycle each injector is open; above 1 it cannot
     * @param railPressure pressure at the rail, Pa absolute
     * @param pumpCapacity what the pumps could pass at that pressure, kg/s
     */
    public record MainFuel(double massFlow, double duty, double railPressure, double pumpCapacity) {}

    /**
     * Load of one cylinder.
     *
     * @param peakPressure peak pressure, Pa absolute
     * @param peakAngle crank angle of it, deg after top dead centre
     * @param knockIntegral Livengood-Wu integral of the end gas; to be compared only with that of a safe base
     * @param retard spark retard from the builder's own timing, crank degrees
     * @param indicatedEfficiency gross indicated work over released heat
     */
    public record CylinderLoad(
            double peakPressure, double peakAngle, double knockIntegral, double retard, double indicatedEfficiency) {}

    /**
     * Mixture of all streams.
     *
     * @return oxygen supplied over oxygen demanded
     */
    public double lambda() {
        return charge.mixture().lambda();
    }

    /**
     * Plenum pressure above ambient.
     *
     * @return gauge pressure, Pa
     */
    public double gaugePressure() {
        return demand.plenumPressure() - conditions.air().pressure();
    }

    /**
     * Torque at the crankshaft.
     *
     * @return torque, N m
     */
    public double crankTorque() {
        return power.torque();
    }

    /**
     * Tells whether the nitrous is on.
     *
     * @return true when nitrous oxide flows
     */
    public boolean nitrousOn() {
        return nitrous.massFlow() > 0;
    }
}
