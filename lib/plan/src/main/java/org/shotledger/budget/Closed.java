package org.shotledger.budget;

import java.util.List;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;

/** The wet kit with its solenoids closed. */
final class Closed {
    private Closed() {}

    static FeedFlow feed(FluidState bottleLiquid) {
        return new FeedFlow(0, "", "The nitrous is off.", List.of(), List.of(), bottleLiquid, 0, 0);
    }

    static FuelFlow fuel(double ambient) {
        return new FuelFlow(0, ambient, ambient, 0, false);
    }
}
