package org.shotledger.evaluate;

import java.util.List;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;

/** The nitrous system with its solenoids closed. */
final class Closed {
    private Closed() {}

    static FeedFlow feed(FluidState bottleLiquid) {
        return new FeedFlow(0, "", "The nitrous is off.", List.of(), List.of(), bottleLiquid, 0, 0);
    }

    static FuelFlow fuel(double rail) {
        return new FuelFlow(0, rail, rail, 0, false);
    }
}
