package org.shotledger.budget;

import java.util.List;
import org.shotledger.build.Build;
import org.shotledger.build.BuilderLimits;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.units.QuantityKind;

/** Holds the wet kit and its bottle against what they can pass and bear, with the nitrous on. */
final class KitLimits {
    /** Pressure of a bottle 1 K below the critical temperature, above which there is no liquid, Pa. */
    private static final double WARMEST_LIQUID = NitrousOxide.saturationPressure(NitrousOxide.CRITICAL_TEMPERATURE - 1);
    /** Share of the fuel cell that the pump can take out: common practice, no source. */
    private static final double USABLE_CELL = 0.9;

    private KitLimits() {}

    static void add(
            Build build, double bottlePressure, double inletPressure, FuelFlow fuel, JetPair pair, List<Limit> to) {
        fuel(build, fuel, to);
        holes(build, pair, to);
        bottle(build, bottlePressure, to);
        to.add(LimitSheet.atMost(
                "feed-loss",
                "pressure lost before the nitrous jets",
                QuantityKind.FRACTION,
                1 - inletPressure / bottlePressure,
                build.limits().feedLoss(),
                "the lines, not the jets, set the flow; more of it boils before the jets"));
        window(build, to);
    }

    private static void fuel(Build build, FuelFlow fuel, List<Limit> to) {
        to.add(LimitSheet.atMost(
                "kit-pump",
                "nitrous fuel pump",
                QuantityKind.MASS_FLOW,
                fuel.massFlow(),
                fuel.pumpCapacity() * (1 - build.limits().pumpReserve()),
                "nitrous fuel pressure falls: the mixture goes lean"));
        double density = build.fuels().nitrous().density(build.fuels().temperature());
        to.add(LimitSheet.atMost(
                "fuel-cell",
                "nitrous fuel of one pass from its cell",
                QuantityKind.VOLUME,
                fuel.massFlow() * build.target().passSeconds() / density,
                build.wetKit().fuel().cellVolume() * USABLE_CELL,
                "the pump draws air: the mixture goes lean at full nitrous"));
    }

    private static void holes(Build build, JetPair pair, List<Limit> to) {
        int nozzles = build.wetKit().nozzles();
        to.add(share(
                "nitrous-solenoid",
                "nitrous jets against their solenoid",
                nozzles,
                pair.nitrousBore(),
                build.wetKit().nitrous().solenoid(),
                build.limits(),
                "the solenoid, not the jets, sets the flow"));
        to.add(share(
                "fuel-solenoid",
                "fuel jets against their solenoid",
                nozzles,
                pair.fuelBore(),
                build.wetKit().fuel().solenoid(),
                build.limits(),
                "the solenoid, not the jets, sets the fuel"));
        build.wetKit().passages().ifPresent(passages -> {
            to.add(passage("nitrous", pair.nitrousBore(), passages.nitrousBore(), build.limits()));
            to.add(passage("fuel", pair.fuelBore(), passages.fuelBore(), build.limits()));
        });
    }

    private static Limit share(
            String key,
            String name,
            int nozzles,
            double bore,
            Solenoid solenoid,
            BuilderLimits allowed,
            String consequence) {
        double jets = nozzles * bore * bore / (solenoid.bore() * solenoid.bore());
        return LimitSheet.atMost(key, name, QuantityKind.FRACTION, jets, allowed.solenoidShare(), consequence);
    }

    private static Limit passage(String side, double jet, double passage, BuilderLimits allowed) {
        return LimitSheet.atMost(
                side + "-passage",
                side + " jet against the nozzle's own passage",
                QuantityKind.FRACTION,
                jet * jet / (passage * passage),
                allowed.passageShare(),
                "the nozzle, not the jet, sets the flow: larger jets change nothing");
    }

    private static void bottle(Build build, double bottle, List<Limit> to) {
        BuilderLimits allowed = build.limits();
        to.add(LimitSheet.atLeast(
                "bottle-low",
                "bottle pressure, low side",
                QuantityKind.ABSOLUTE_PRESSURE,
                bottle,
                allowed.bottlePressureLow(),
                "too little nitrous oxide: rich and weak"));
        to.add(LimitSheet.atMost(
                "bottle-high",
                "bottle pressure, high side",
                QuantityKind.ABSOLUTE_PRESSURE,
                bottle,
                allowed.bottlePressureHigh(),
                "too much nitrous oxide: lean"));
        to.add(LimitSheet.atMost(
                "bottle-hot",
                "bottle near its critical point",
                QuantityKind.ABSOLUTE_PRESSURE,
                bottle,
                WARMEST_LIQUID,
                "no liquid is left: pressure without flow, and no figure here holds"));
        to.add(LimitSheet.atMost(
                "relief-disc",
                "hottest full bottle against its relief disc",
                QuantityKind.ABSOLUTE_PRESSURE,
                build.bottle().hottestPressure(),
                build.bottle().reliefPressure() * allowed.reliefShare(),
                "the disc bursts and empties the bottle into the car"));
    }

    /** The room is counted from the window's own lower end: 100 rpm are little at 8000 and much in a narrow window. */
    private static void window(Build build, List<Limit> to) {
        var window = build.wetKit().window();
        double red = build.engine().redLineRpm();
        to.add(LimitSheet.atMost(
                "rpm-window",
                "nitrous window under the red line",
                QuantityKind.FRACTION,
                (window.rpmHigh() - window.rpmLow()) / (red - window.rpmLow()),
                1,
                "the nitrous is still on when the engine meets its limiter: fuel is cut, nitrous is not"));
    }
}
