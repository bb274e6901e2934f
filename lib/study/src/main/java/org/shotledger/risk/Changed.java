package org.shotledger.risk;

import org.shotledger.build.Build;
import org.shotledger.build.FuelStreams;
import org.shotledger.build.Tune;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.nitrous.WetKit;
import org.shotledger.supply.Regulator;

/** A build with one part not as the sheet says; the sheet's text stays that of the sound build. */
final class Changed {
    private Changed() {}

    static Build tune(Build b, Tune tune) {
        return b.withParts(b.fuels(), tune, b.wetKit());
    }

    static Build fuels(Build b, FuelStreams fuels) {
        return b.withParts(fuels, b.tune(), b.wetKit());
    }

    static Build regulator(Build b, Regulator regulator) {
        FuelCircuit old = b.wetKit().fuel();
        return fuel(b, new FuelCircuit(old.pumps(), regulator, old.solenoid(), old.jet(), old.cellVolume()));
    }

    static Build fuelSolenoid(Build b, Solenoid solenoid) {
        FuelCircuit old = b.wetKit().fuel();
        return fuel(b, new FuelCircuit(old.pumps(), old.regulator(), solenoid, old.jet(), old.cellVolume()));
    }

    private static Build fuel(Build b, FuelCircuit fuel) {
        WetKit kit = b.wetKit();
        return b.withParts(
                b.fuels(),
                b.tune(),
                new WetKit(
                        kit.position(),
                        kit.nozzles(),
                        kit.nitrous(),
                        fuel,
                        kit.ladder(),
                        kit.window(),
                        kit.passages()));
    }
}
