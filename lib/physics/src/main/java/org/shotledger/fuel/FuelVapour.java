package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * How much of two fuels can be vapour in a cold charge: vapour pressures by Antoine's equation and Raoult's law, so a flash of the
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
    private static final double LN_TEN = Math.log(10);
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
            return BAR * Math.exp(LN_TEN * (a - b / (temperature + c)));
        }
    }

    private static final Component[] COMPONENTS = Component.values();
    private static final double PETROL_MASS = petrolMass();
    private static final int MOST_STEPS = 60;
    /** A last step of this share of the fuel leaves a miss of its square. */
    private static final double SETTLED = 1e-6;
    /** So cold that next to nothing of a fuel is vapour, K. */
    public static final double COLDEST = 180;

    private static final double HOTTEST = 420;

    /** Moles of each component in a kilogram of fuel. */
    private final double[] main;

    private final double[] extra;

    /**
     * Shares of two fuels that can be vapour, by mass.
     *
     * @param main of the main fuel, 0 to 1; 1 where there is none
     * @param extra of the other fuel, 0 to 1; 1 where there is none
     */
    public record Shares(double main, double extra) {
        static final Shares ALL = new Shares(1, 1);
    }

    private FuelVapour(Fuel main, Fuel extra) {
        this.main = moles(main);
        this.extra = main.equals(extra) ? this.main : moles(extra);
    }

    /**
     * Two fuels that meet in one gas.
     *
     * @param main main fuel
     * @param extra fuel of the nitrous circuit
     * @return what can be asked how much of them evaporates
     */
    public static FuelVapour of(Fuel main, Fuel extra) {
        return new FuelVapour(main, extra);
    }

    /**
     * Shares of both fuels that a gas can hold as vapour: with {@code n} of each component, {@code K = p_sat/p} and {@code G} of
     * gas with the vapour in it, the liquid {@code L} is where {@code sum n/(L + K G) = 1}.
     *
     * @param mainFlow main fuel, kg/s
     * @param extraFlow the other fuel, kg/s
     * @param gas all gas, fuel vapour included, mol/s
     * @param temperature of gas and liquid, K, 180 or more; everything is vapour from 420 on
     * @param pressure of all, Pa, above zero
     * @return the shares
     */
    public Shares possible(double mainFlow, double extraFlow, double gas, double temperature, double pressure) {
        return room(gas, temperature, pressure).possible(mainFlow, extraFlow);
    }

    /**
     * The room that a gas has for vapour of these fuels, for several flows of them.
     *
     * @param gas all gas, fuel vapour included, mol/s
     * @param temperature of gas and liquid, K, 180 or more; everything is vapour from 420 on
     * @param pressure of all, Pa, above zero
     * @return the room
     */
    public Room room(double gas, double temperature, double pressure) {
        if (temperature >= HOTTEST) {
            return (mainFlow, extraFlow) -> Shares.ALL;
        }
        Require.within("temperature of the charge", temperature, COLDEST, HOTTEST, "K");
        Require.positive("pressure of the charge", pressure, "Pa");
        double[] held = new double[COMPONENTS.length];
        for (int i = 0; i < held.length; i++) {
            if (main[i] > 0 || extra[i] > 0) {
                held[i] = COMPONENTS[i].pressure(temperature) / pressure * gas;
            }
        }
        return (mainFlow, extraFlow) -> possible(mainFlow, extraFlow, held);
    }

    /** What a gas can hold of two fuels. */
    @FunctionalInterface
    public interface Room {
        /**
         * Shares of both fuels that can be vapour.
         *
         * @param mainFlow main fuel, kg/s
         * @param extraFlow the other fuel, kg/s
         * @return the shares
         */
        Shares possible(double mainFlow, double extraFlow);
    }

    private Shares possible(double mainFlow, double extraFlow, double[] held) {
        double[] fuel = new double[COMPONENTS.length];
        for (int i = 0; i < fuel.length; i++) {
            fuel[i] = mainFlow * main[i] + extraFlow * extra[i];
        }
        double liquid = liquid(fuel, held);
        if (liquid == 0) {
            return Shares.ALL;
        }
        double ofMain = share(main, held, liquid);
        return new Shares(ofMain, main == extra ? ofMain : share(extra, held, liquid));
    }

    /**
     * Moles of liquid at which its mole fractions add up to one, by Newton's method on one over their sum from all of it: of a single
     * component that is a straight line, of several a concave one, so the first step lands at or below the root and the next ones rise
     * to it.
     */
    private static double liquid(double[] fuel, double[] held) {
        double all = 0;
        double none = -1;
        for (int i = 0; i < fuel.length; i++) {
            if (fuel[i] > 0) {
                all += fuel[i];
                none += fuel[i] / held[i];
            }
        }
        if (none <= 0) {
            return 0;
        }
        double liquid = all;
        for (int step = 0; step < MOST_STEPS; step++) {
            double sum = 0;
            double slope = 0;
            for (int i = 0; i < fuel.length; i++) {
                if (fuel[i] > 0) {
                    double one = 1 / (liquid + held[i]);
                    double part = fuel[i] * one;
                    sum += part;
                    slope += part * one;
                }
            }
            double change = sum * (sum - 1) / slope;
            liquid = Math.max(0, liquid + change);
            if (Math.abs(change) < SETTLED * all) {
                break;
            }
        }
        return liquid;
    }

    /** Share of a fuel's mass that is vapour beside a liquid. */
    private static double share(double[] moles, double[] held, double liquid) {
        double mass = 0;
        for (int i = 0; i < moles.length; i++) {
            if (moles[i] > 0) {
                mass += moles[i] * COMPONENTS[i].molarMass * held[i] / (liquid + held[i]);
            }
        }
        return mass;
    }

    private static double[] moles(Fuel fuel) {
        double oxygen = fuel.elements().oxygen();
        double methanol = Math.min(1, Math.max(0, (oxygen - ETHANOL_OXYGEN) / (METHANOL_OXYGEN - ETHANOL_OXYGEN)));
        double ethanol = methanol > 0 ? 1 - methanol : oxygen / ETHANOL_OXYGEN;
        double petrol = Math.max(0, 1 - ethanol - methanol);
        double[] moles = new double[COMPONENTS.length];
        for (int i = 0; i < moles.length; i++) {
            Component c = COMPONENTS[i];
            moles[i] = switch (c) {
                case ETHANOL -> ethanol / c.molarMass;
                case METHANOL -> methanol / c.molarMass;
                default -> petrol * c.ofPetrol / PETROL_MASS;
            };
        }
        return moles;
    }

    private static double petrolMass() {
        double mass = 0;
        for (Component c : COMPONENTS) {
            mass += c.ofPetrol * c.molarMass;
        }
        return mass;
    }
}
