package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.flow.JetFlow;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Mixture;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.JetPair;

/**
 * Mass, oxygen and energy on two thousand seeded cars, each balance drawn up anew from atomic masses, Bernoulli's equation, the
 * ideal-gas law and enthalpies, none of it taken from the code that made the figures.
 */
class ConservationTest {
    private static final int CARS = 300;
    /** Atomic masses, IUPAC 2021 abridged, g/mol. */
    private static final double C = 12.011;

    private static final double H = 1.008;
    private static final double O = 15.999;
    private static final double N = 14.007;
    private static final double GAS_CONSTANT = 8.314462618;
    /** Dry air by volume (ISO 2533, carbon dioxide and the rest with nitrogen and argon). */
    private static final double AIR_O2 = 0.20948;

    private static final double AIR_AR = 0.00934;
    private static final double AIR_N2 = 1 - AIR_O2 - AIR_AR;

    @Test
    void mass_oxygen_and_energy_are_kept_on_seeded_cars() {
        SeededCars cars = new SeededCars(20261125);
        int refused = 0;
        int made = 0;
        while (made < CARS) {
            SeededCars.Drawn drawn = cars.next().withoutBackPressure();
            OperatingPoint point;
            try {
                point = drawn.point();
            } catch (NoAnswerException outside) {
                // beyond the compressor map or too cold to balance: refused in words, which is an answer
                refused++;
                continue;
            }
            made++;
            mass(drawn, point);
            oxygen(point);
            energy(point);
        }
        assertTrue(refused < CARS / 2, "refused " + refused + " of " + (CARS + refused));
    }

    private static void mass(SeededCars.Drawn drawn, OperatingPoint point) {
        Mixture m = point.charge().mixture();
        double jets =
                point.nitrous().jets().stream().mapToDouble(JetFlow::massFlow).sum();
        assertEquals(jets, m.nitrous(), 1e-6 * jets, "the jets' nitrous is the charge's");
        assertEquals(
                point.compressor().flow(), m.dryAir() + m.waterVapour(), 1e-8, "the compressor's air is the charge's");
        assertEquals(fuel(drawn, point), m.nitrousFuelFlow(), 1e-6 * m.nitrousFuelFlow(), "Bernoulli over two holes");
        double moles = 1e3 * m.dryAir() / (AIR_O2 * 2 * O + AIR_N2 * 2 * N + AIR_AR * 39.95)
                + 1e3 * m.waterVapour() / (2 * H + O)
                + 1e3 * drawn.car().fuels().warming().nitrousEvaporated() * m.nitrous() / (2 * N + O)
                + vapour(m.mainFuel(), m.mainFlow(), point.charge().mainEvaporated())
                + vapour(m.nitrousFuel(), m.nitrousFuelFlow(), point.charge().nitrousEvaporated());
        double volume = drawn.car().engine().breathedVolume(point.rpm());
        assertEquals(
                point.plenumPressure() * volume,
                moles * GAS_CONSTANT * point.charge().temperature(),
                1e-3 * moles * GAS_CONSTANT * point.charge().temperature(),
                "p V = n R T of the charge");
    }

    private static double vapour(Fuel fuel, double flow, double share) {
        return share * flow / fuel.molarMass();
    }

    /** While the pumps follow: the regulator's pressure drives the fuel through solenoid and jets in series. */
    private static double fuel(SeededCars.Drawn drawn, OperatingPoint point) {
        FuelCircuit circuit = drawn.car().nitrous().fuel();
        JetPair jets = drawn.jets();
        double density = point.charge()
                .mixture()
                .nitrousFuel()
                .density(drawn.car().fuels().temperature());
        double ambient = point.air().pressure();
        double plenum = point.plenumPressure();
        double rail = point.nitrousFuel().pumpLimited()
                ? point.nitrousFuel().railPressure()
                : ambient
                        + drawn.setup().nitrousRegulator().basePressure()
                        + drawn.setup().nitrousRegulator().boostReference() * (plenum - ambient);
        double solenoid = 0.65 * Math.PI / 4 * Math.pow(circuit.solenoid().bore(), 2);
        double jet = drawn.car().nitrous().nozzles() * circuit.jetArea(jets.fuelBore());
        double resistance = 1 / (solenoid * solenoid) + 1 / (jet * jet);
        return rail <= plenum ? 0 : Math.sqrt(2 * density * (rail - plenum) / resistance);
    }

    private static void oxygen(OperatingPoint point) {
        Mixture m = point.charge().mixture();
        double air = AIR_O2 * 2 * O / (AIR_O2 * 2 * O + AIR_N2 * 2 * N + AIR_AR * 39.95);
        double supplied = air * m.dryAir() + O / (2 * N + O) * m.nitrous();
        double demanded = m.mainFlow() * demand(m.mainFuel()) + m.nitrousFuelFlow() * demand(m.nitrousFuel());
        assertEquals(supplied / demanded, point.lambda(), 1.5e-3, "oxygen from atomic masses");
    }

    /** Oxygen to burn a kilogram to carbon dioxide and water, from the atoms in it. */
    private static double demand(Fuel fuel) {
        var e = fuel.elements();
        return e.carbon() / C * 2 * O + e.hydrogen() / H * O / 2 - e.oxygen();
    }

    private static void energy(OperatingPoint point) {
        var p = point.power();
        assertEquals(
                p.indicated(), p.brake() + p.friction() + p.pumping(), 1e-9 * p.indicated(), "indicated power divides");
        Mixture m = point.charge().mixture();
        // 82.05 kJ/mol: standard enthalpy of formation of nitrous oxide (NIST-JANAF)
        // heating values count from liquid fuel; the charge burns as vapour, with its heat of vaporisation
        double vapour = m.mainFlow() * m.mainFuel().vaporisationHeat(298.15)
                + m.nitrousFuelFlow() * m.nitrousFuel().vaporisationHeat(298.15);
        double most = m.fuelPower() + vapour + m.nitrous() / (2 * N + O) * 1e3 * 82.05e3;
        // at constant volume the work of more moles stays inside: a hundredth of the heat at most
        assertTrue(point.heat() <= 1.01 * most, "no more heat than fuel and nitrous oxide hold");
        assertTrue(p.indicated() < point.heat(), "no more work than heat");
        assertTrue(point.wheelPower() <= p.brake(), "no more at the wheels than at the crankshaft");
    }
}
