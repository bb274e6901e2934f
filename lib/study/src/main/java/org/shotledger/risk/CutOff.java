package org.shotledger.risk;

import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.nitrous.NitrousCircuit;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.plan.Plan;
import org.shotledger.units.Require;

/**
 * How fast a cut-off acts once a sensor has answered: the controller decides, the nitrous solenoid closes, and what stands in the
 * lines behind it flows out. The fuel stays in its lines, so the last of the nitrous comes without fuel.
 *
 * @param controller time from a reading to the switched output, s
 * @param closing closing delay of the nitrous solenoid, s
 * @param emptying time in which the lines behind the solenoid would empty at the planned flow, s: an upper bound of the flow and
 *     so a lower bound of the time
 */
public record CutOff(double controller, double closing, double emptying) {
    /** One pass of the control loop and one reading to confirm: common practice, no source. */
    private static final double USUAL_CONTROLLER = 0.02;

    public CutOff {
        Require.notNegative("time of the controller", controller, "s");
        Require.notNegative("closing delay", closing, "s");
        Require.notNegative("emptying time", emptying, "s");
    }

    /**
     * The cut-off of a plan.
     *
     * @param plan the plan
     * @return its times
     */
    public static CutOff of(Plan plan) {
        NitrousCircuit circuit = plan.car().nitrous().nitrous();
        Solenoid solenoid = circuit.solenoid();
        OperatingPoint peak = plan.stated().strongest().orElseThrow();
        double bore = circuit.lineBore();
        double volume = plan.car().nitrous().nozzles() * Math.PI / 4 * bore * bore * circuit.lineLength();
        double density = peak.nitrous().jetInlet().density();
        return new CutOff(
                USUAL_CONTROLLER,
                solenoid.closingDelay(),
                volume * density / peak.nitrous().massFlow());
    }

    /**
     * The whole time.
     *
     * @return from a sensor's answer to the end of nitrous flow, s
     */
    public double time() {
        return controller + closing + emptying;
    }
}
