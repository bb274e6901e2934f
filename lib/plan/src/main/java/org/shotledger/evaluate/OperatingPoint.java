package org.shotledger.evaluate;

import org.shotledger.boost.CompressorPoint;
import org.shotledger.boost.ShaftBalance;
import org.shotledger.engine.Charge;
import org.shotledger.engine.CycleInput;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.Power;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;

/**
 * One operating point: every flow, state and power.
 *
 * @param rpm engine speed, rev/min
 * @param mode what the engine is doing
 * @param wanted plenum pressure the setup asks for, Pa absolute
 * @param plenumPressure plenum pressure there is, Pa absolute; below the one asked for where the turbocharger cannot give it
 * @param air the ambient air
 * @param bottle state of the liquid at the bottle's siphon
 * @param compressor the compressor's operating point
 * @param airAfterCooler air temperature before fuel and nitrous are added, K
 * @param charge the mixed charge
 * @param nitrous what the nitrous feed path passes; with no flow when the nitrous is off
 * @param nitrousFuel what the fuel circuit of the nitrous system passes; with no flow when the nitrous is off
 * @param main how hard the main injection works
 * @param heat heat released in all cylinders, W
 * @param exhaustTemperature before the turbine, K
 * @param shaft balance of turbine and compressor
 * @param cylinder load of one cylinder
 * @param power power at the crankshaft
 * @param wheelPower power at the wheels, W
 */
public record OperatingPoint(
        double rpm,
        Mode mode,
        double wanted,
        double plenumPressure,
        MoistAir air,
        FluidState bottle,
        CompressorPoint compressor,
        double airAfterCooler,
        Charge charge,
        FeedFlow nitrous,
        FuelFlow nitrousFuel,
        MainFuel main,
        double heat,
        double exhaustTemperature,
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
     * @param pumped what the pumps must give, kg/s: the main fuel, and the nitrous fuel where it comes from the same rail
     * @param pumpCapacity what the pumps could pass at the regulated pressure, kg/s
     */
    public record MainFuel(double massFlow, double duty, double railPressure, double pumped, double pumpCapacity) {}

    /**
     * Load of one cylinder.
     *
     * @param peakPressure peak pressure, Pa absolute
     * @param peakAngle crank angle of it, deg after top dead centre
     * @param knock knock index over that of the base pull at the same speed, which is known to be safe
     * @param retard spark retard from the builder's own timing, crank degrees
     * @param base what the cylinder holds, with the burning of the base pull
     */
    public record CylinderLoad(double peakPressure, double peakAngle, double knock, double retard, CycleInput base) {}

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
        return plenumPressure - air.pressure();
    }

    /**
     * Torque at the crankshaft.
     *
     * @return torque, N m
     */
    public double crankTorque() {
        return power.torque();
    }

    /** The same point as part of another mode, with another boost asked for. */
    OperatingPoint as(Mode other, double wantedPlenum) {
        return new OperatingPoint(
                rpm,
                other,
                wantedPlenum,
                plenumPressure,
                air,
                bottle,
                compressor,
                airAfterCooler,
                charge,
                nitrous,
                nitrousFuel,
                main,
                heat,
                exhaustTemperature,
                shaft,
                cylinder,
                power,
                wheelPower);
    }
}
