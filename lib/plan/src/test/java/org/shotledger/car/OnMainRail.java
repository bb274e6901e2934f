package org.shotledger.car;

import java.util.List;
import java.util.Optional;
import org.shotledger.curve.Curve;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;

/** A car and a setup with the nitrous fuel taken from the main rail. */
public final class OnMainRail {
    private OnMainRail() {}

    /** The car behind one pump whose flow falls in a straight line from the free one, m3/s, to nothing at 9 bar. */
    public static Car car(Car car, double free) {
        Curve flow = Curve.of("pump flow", new double[] {0, 9e5}, new double[] {free, 0});
        Curve current = Curve.of("pump current", new double[] {0, 9e5}, new double[] {5, 12});
        Pump pump = new Pump("pump", List.of(new Pump.Line(8, flow, current), new Pump.Line(16, flow, current)));
        PumpGroup one = new PumpGroup("one", List.of(pump), PumpGroup.Arrangement.PARALLEL, 0);
        Injection old = car.injection();
        FuelCircuit fuel = car.nitrous().fuel();
        return car.with(new Injection(old.injector(), old.count(), one, old.voltage()))
                .with(car.nitrous().withFuel(new FuelCircuit(Optional.empty(), fuel.solenoid(), fuel.jet())));
    }

    /** The setup without a regulator of the nitrous fuel's own. */
    public static Setup setup(Setup setup) {
        return new Setup(
                setup.boost(),
                setup.jets(),
                setup.mainRegulator(),
                Optional.empty(),
                setup.mixture(),
                setup.retard(),
                setup.arming(),
                setup.bottle(),
                setup.passes());
    }
}
