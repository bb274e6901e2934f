package org.shotledger.nitrous;

import java.util.List;
import java.util.Optional;
import org.shotledger.curve.Curve;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;

/** An invented nitrous system in which lines and solenoids are wide against the jets. */
final class InventedKit {
    static final double AMBIENT = 1e5;
    static final PumpGroup PUMPS = pumps();
    static final NitrousCircuit NITROUS =
            new NitrousCircuit(4, 12e-3, 1, 0, new Solenoid(6e-3, 0.8, 0.01, 0.01), 6e-3, 0.1, Double.NaN);
    static final FuelCircuit FUEL = new FuelCircuit(
            Optional.of(new FuelCell(PUMPS, 6e-3)), new Solenoid(20e-3, 0.8, 0.01, 0.01), FuelJet.stated(0.8));

    private InventedKit() {}

    private static PumpGroup pumps() {
        double[] rise = {0, 10e5};
        Pump.Line line = new Pump.Line(
                12, Curve.of("flow", rise, new double[] {400e-6, 200e-6}), Curve.of("current", rise, new double[] {5, 12
                }));
        return new PumpGroup("pumps", List.of(new Pump("pump", List.of(line))), PumpGroup.Arrangement.PARALLEL, 0);
    }

    static WetKit kit(int nozzles) {
        return new WetKit(
                NozzlePosition.PLENUM, nozzles, NITROUS, FUEL, JetLadder.thousandths(14, 100, 2), Optional.empty());
    }
}
