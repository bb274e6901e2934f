package org.shotledger.fuel;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.units.Require;

/**
 * How much of a fuel can be vapour in a cold charge: vapour pressures by Antoine's equation and Raoult's law, so a flash of the
 * fuel's components into the gas that is there. Constants are those of the NIST Chemistry WebBook (from memory; each gives the
 * handbook's boiling point within 0.5 K, tested), continued below their fits, where they are good to some 20 %.
 *
 * <p>A fuel's alcohol follows from its oxygen, ethanol up to 34.7 % by mass and methanol beyond. Its hydrocarbons are counted as
 * a petrol of butane, pentane, iso-octane, toluene and decane, 6 : 24 : 35 : 25 : 10 by mole, which gives 53 kPa at
 * 37.8 C, a summer petrol: our choice. Alcohol and petrol are taken as ideal together, which holds too much alcohol back
 * in blends with little of it: the real share of vapour is above the one given.
 */
public final class FuelVapour {
    private static final double BAR = 1e5;
    private static final double ETHANOL_OXYGEN = 0.3473;
    private static final double METHANOL_OXYGEN = 0.4993;

    /** Components with {@code lg(p/bar) = a - b/(T + c)} and molar mass. */
    enum Component {
        BUTANE(4.35576, 1175.581, -2.071, 58.12e-3, 0.06),
        PENTANE(3.98920, 1070.617, -40.454, 72.15e-3, 0.24),
        ISO_OCTANE(3.93679, 1257.840, -52.415, 114.23e-3, 0.35),
        TOLUENE(4.07827, 1343.943, -53.773, 92.14e-3, 0.25),
        DECANE(4.07857, 1501.268, -78.670, 142.28e-3, 0.10),
        ETHANOL(5.24677, 1598.673, -46.424, 46.07e-3, 0),
        METHANOL(5.20409, 1581.341, -33.500, 32.04e-3, 0);

        private final double a;
        private final double b;
        private final double c;
        private final double molarMass;
        private final double ofPetrol;

        Component(double a, double b, double c, double molarMass, double ofPetrol) {
            this.a = a;
            this.b = b;
            this.c = c;
            this.molarMass = molarMass;
            this.ofPetrol = ofPetrol;
        }

        /** Vapour pressure, Pa. */
        double pressure(double temperature) {
            return BAR * Math.pow(10, a - b / (temperature + c));
        }
    }

    private static final double PETROL_MASS = petrolMass();

    private record Amount(Component component, double moles) {}

    private FuelVapour() {}

    /**
     * Share of all fuel that must stay liquid.
     *
     * @param mixture fuels and gases; the nitrous oxide counts as gas
     * @param temperature of gas and liquid, K, 180 to 420
     * @param pressure of all, Pa, above zero
     * @return share of the fuel's mass, 0 to 1; 0 without fuel
     */
    public static double liquidShare(Mixture mixture, double temperature, double pressure) {
        Require.within("temperature of the charge", temperature, 180, 420, "K");
        Require.positive("pressure of the charge", pressure, "Pa");
        List<Amount> fuel = new ArrayList<>();
        add(fuel, mixture.mainFuel(), mixture.mainFlow());
        add(fuel, mixture.nitrousFuel(), mixture.nitrousFuelFlow());
        double all = fuel.stream().mapToDouble(Amount::moles).sum();
        if (all == 0) {
            return 0;
        }
        double gas = mixture.dryAir() / Oxidisers.DRY_AIR_MOLAR_MASS
                + mixture.waterVapour() / Oxidisers.WATER_MOLAR_MASS
                + mixture.nitrous() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS;
        double liquid = liquid(fuel, all, gas, temperature, pressure);
        double mass = 0;
        double stays = 0;
        for (Amount part : fuel) {
            double k = part.component.pressure(temperature) / pressure;
            double share = liquid / (liquid + k * (gas + all - liquid));
            mass += part.moles * part.component.molarMass;
            stays += share * part.moles * part.component.molarMass;
        }
        return stays / mass;
    }

    /** Moles of liquid at which its mole fractions add up to one, by bisection; zero where everything can be vapour. */
    private static double liquid(List<Amount> fuel, double all, double gas, double temperature, double pressure) {
        double low = 0;
        double high = all;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            double sum = 0;
            for (Amount part : fuel) {
                double k = part.component.pressure(temperature) / pressure;
                sum += part.moles / (middle + k * (gas + all - middle));
            }
            if (sum > 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high < 1e-9 * all ? 0 : (low + high) / 2;
    }

    private static void add(List<Amount> to, Fuel fuel, double mass) {
        if (mass == 0) {
            return;
        }
        double oxygen = fuel.elements().oxygen();
        double methanol = Math.min(1, Math.max(0, (oxygen - ETHANOL_OXYGEN) / (METHANOL_OXYGEN - ETHANOL_OXYGEN)));
        double ethanol = methanol > 0 ? 1 - methanol : oxygen / ETHANOL_OXYGEN;
        double petrol = Math.max(0, 1 - ethanol - methanol);
        to.add(new Amount(Component.ETHANOL, mass * ethanol / Component.ETHANOL.molarMass));
        to.add(new Amount(Component.METHANOL, mass * methanol / Component.METHANOL.molarMass));
        for (Component c : Component.values()) {
            to.add(new Amount(c, mass * petrol * c.ofPetrol / PETROL_MASS));
        }
    }

    private static double petrolMass() {
        double mass = 0;
        for (Component c : Component.values()) {
            mass += c.ofPetrol * c.molarMass;
        }
        return mass;
    }
}
