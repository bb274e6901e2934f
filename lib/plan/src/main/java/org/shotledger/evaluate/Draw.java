package org.shotledger.evaluate;

import org.shotledger.bottle.Outflow;
import org.shotledger.car.Car;
import org.shotledger.flow.FeedPath;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.setup.Setup;

/**
 * What the feed path takes from a bottle during a pass, told by all that it depends on: equal draws have the same flows.
 *
 * @param path from the bottle to the jets
 * @param downstream pressure behind the jets, that of the boost of the fastest nitrous, Pa
 * @param coldest lowest boiling temperature that a pass goes through, K
 * @param warmest temperature where the table of flows ends, K
 */
record Draw(FeedPath path, double downstream, double coldest, double warmest) {
    /** The integrator looks a little below the pressure at which it stops, K of boiling temperature: our choice. */
    private static final double BELOW = 2;
    /** Distance of the warm ends of tables, K: our choice, so that starts close to each other share one. */
    private static final double WARM_STEP = 10;
    /** A band that begins above this leaves no range to tabulate, Pa. */
    private static final double HIGHEST_LOW = 6e6;

    /**
     * The draw of a setup with jets.
     *
     * @param ambient pressure of the air, Pa
     */
    static Draw of(Car car, Setup setup, double ambient) {
        double low = Math.max(car.limits().bottlePressureLow(), NitrousOxide.TRIPLE_PRESSURE);
        double start = setup.bottle().startTemperature();
        double warmest = Math.max(start, car.bottle().reheated(start));
        return new Draw(
                car.nitrous().nitrousPath(setup.jets().orElseThrow()),
                ambient + setup.boost().armed().at(setup.arming().rpmHigh()),
                NitrousOxide.saturationTemperature(Math.min(low, HIGHEST_LOW)) - BELOW,
                WARM_STEP * Math.ceil(warmest / WARM_STEP));
    }

    /** Its flows, tabulated over temperature. */
    Outflow outflow() {
        return Outflow.tabulated(path, downstream, coldest, warmest);
    }
}
