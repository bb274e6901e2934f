package org.shotledger.nitrous;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.curve.Bracket;
import org.shotledger.flow.FlowBand;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;
import org.shotledger.units.Require;

/**
 * The fuel side of a nitrous system: solenoid and jets, behind a cell with pumps and a regulator of its own or behind the rail of the
 * engine's injectors.
 *
 * <p>The fuel stays liquid, so solenoid and jets are incompressible orifices in series,
 * {@code mdot = sqrt(2 rho (p_rail - p_nozzle)) / sqrt(1/(Cd A)_solenoid^2 + 1/(n Cd A_jet)^2)} (Bernoulli with
 * discharge coefficients); a passage behind a jet adds its own {@code 1/(n Cd A)^2}. The regulator holds the rail while the pumps can follow; where they cannot, the rail settles
 * at the pressure at which pump and jets pass the same flow. On the main rail the injectors take fuel from the same pumps: how far
 * that rail falls is {@link SharedRail}'s to say.
 *
 * @param cell what feeds this circuit alone; empty when it draws from the main rail
 * @param solenoid its solenoid
 * @param jet what kind of hole a fuel jet, and the passage behind it, is
 */
public record FuelCircuit(Optional<FuelCell> cell, Solenoid solenoid, FuelJet jet) {
    /** Dynamic viscosity of fuels at 20 degC, Pa s: gasoline 0.5e-3, ethanol 1.2e-3 (handbook values); twice as much is 1 % of flow. */
    private static final double VISCOSITY = 0.8e-3;

    /** Within which the pressure is found at which pumps and holes pass the same, Pa. */
    static final double SETTLED = 1e-6;

    /** Passes of the coefficient's dependence on the flow through the Reynolds number; it is weak. */
    private static final int PASSES = 2;

    public FuelCircuit {
        Require.given("supply of the nitrous fuel", cell);
        Require.given("fuel solenoid", solenoid);
        Require.given("fuel jet", jet);
    }

    /**
     * Whether the fuel comes from the rail of the engine's injectors.
     *
     * @return false when it has a cell of its own
     */
    public boolean onMainRail() {
        return cell.isEmpty();
    }

    /**
     * The same circuit with another kind of jet, such as one that was flow-tested.
     *
     * @param other the kind of jet
     * @return new circuit
     */
    public FuelCircuit withJet(FuelJet other) {
        return new FuelCircuit(cell, solenoid, other);
    }

    /**
     * The same circuit with another solenoid.
     *
     * @param other the solenoid
     * @return new circuit
     */
    public FuelCircuit withSolenoid(Solenoid other) {
        return new FuelCircuit(cell, other, jet);
    }

    /**
     * The jets in use.
     *
     * @param count number of jets, at least 1
     * @param bore hole diameter of each, m
     * @param passage diameter of the nozzle's passage behind each, m; infinite when there is nothing narrow
     */
    public record Jets(int count, double bore, double passage) {}

    /**
     * The pressures around the circuit.
     *
     * @param ambient ambient pressure, Pa absolute
     * @param plenum plenum pressure, which a boost-referenced regulator follows, Pa absolute
     * @param nozzle pressure at the nozzle, Pa absolute
     */
    public record Pressures(double ambient, double plenum, double nozzle) {}

    /**
     * What the circuit passes.
     *
     * @param massFlow fuel through all jets, kg/s
     * @param railPressure pressure after the regulator, Pa absolute
     * @param jetPressure pressure just before the jets, Pa absolute
     * @param pumpCapacity what the pumps could pass through this circuit at the regulated pressure, kg/s; infinite where nobody has asked
     *     the main rail's pumps yet
     * @param pumpLimited true when the pumps cannot hold the regulated pressure
     */
    public record FuelFlow(
            double massFlow, double railPressure, double jetPressure, double pumpCapacity, boolean pumpLimited) {

        /**
         * The same circuit passing a share of its flow, as when it is pulsed; the pressures are left as they are.
         *
         * @param share 0 or more
         * @return the scaled flow
         */
        public FuelFlow times(double share) {
            return new FuelFlow(share * massFlow, railPressure, jetPressure, pumpCapacity, pumpLimited);
        }

        /**
         * The same openings with another pressure before them: flow and drops go as {@code m ~ sqrt(p_rail - p_nozzle)}.
         *
         * @param rail pressure at the rail, Pa absolute; at or below the nozzle nothing flows
         * @param nozzle pressure at the nozzle, Pa absolute, below the rail pressure of this flow
         * @return the flow at that pressure, its pumps as before
         */
        public FuelFlow at(double rail, double nozzle) {
            double drops = Math.max(0, rail - nozzle) / (railPressure - nozzle);
            double before = rail - drops * (railPressure - jetPressure);
            return new FuelFlow(Math.sqrt(drops) * massFlow, rail, before, pumpCapacity, pumpLimited);
        }
    }

    /**
     * Flow at given pressures.
     *
     * @param density fuel density, kg/m3
     * @param jets the jets with the passages behind them
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @param voltage supply voltage at the pump's wiring, V
     * @return the flow; zero when the rail is not above the nozzle; on the main rail that with the regulated pressure held
     */
    public FuelFlow flow(double density, Jets jets, Pressures at, Regulator regulator, double voltage) {
        double rail = regulator.railPressure(at.ambient(), at.plenum());
        double area = effectiveArea(jets, density, rail - at.nozzle());
        double wanted = flow(density, area, rail, at.nozzle());
        double capacity = cell.map(own -> density * own.pumps().capacity(rail - at.ambient(), voltage))
                .orElse(Double.POSITIVE_INFINITY);
        if (wanted <= capacity) {
            return state(density, rail, wanted, capacity, false);
        }
        double settled = settle(density, area, at, rail, voltage);
        return state(density, settled, flow(density, area, settled, at.nozzle()), capacity, true);
    }

    /**
     * What solenoid, jets and passages pass over a factor on the jets, for a flow test at a flowing pressure that was read at the rail.
     *
     * @param density density of the liquid, kg/m3
     * @param jets the jets with the passages behind them
     * @param drop pressure at the rail over that behind the nozzles, Pa, above 0
     * @return flow, kg/s, over the factor relative to the best estimate of shape or sheet
     */
    public DoubleUnaryOperator flowOfFactor(double density, Jets jets, double drop) {
        return factor -> {
            FuelCircuit with = withJet(jet.at(0).withMeasured(FlowBand.EXACT.times(factor)));
            return flow(density, with.effectiveArea(jets, density, drop), drop, 0);
        };
    }

    /**
     * The jet that passes a wanted flow while the regulator holds the rail.
     *
     * @param massFlow fuel through all jets, kg/s, positive
     * @param density fuel density, kg/m3
     * @param jets number of jets and the passages behind them; their bore does not matter
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @return hole diameter of each jet, m
     * @throws IllegalArgumentException when solenoid and passages alone let less pass
     */
    public double boreFor(double massFlow, double density, Jets jets, Pressures at, Regulator regulator) {
        double drop = regulator.railPressure(at.ambient(), at.plenum()) - at.nozzle();
        double passage = jets.count() * hole(jets.passage(), density, drop);
        double rest = 1 / square(solenoid.effectiveArea()) + 1 / square(passage);
        double through = drop > 0 ? Math.sqrt(2 * density * drop / rest) : 0;
        if (!(massFlow < through)) {
            String narrow = Double.isInfinite(jets.passage())
                    ? "its solenoid alone passes"
                    : "its solenoid and the" + " nozzles' passages alone pass";
            throw new IllegalArgumentException("The fuel circuit must pass " + Require.shown(massFlow) + " kg/s, but "
                    + narrow + " " + Require.shown(through) + " kg/s at a pressure drop of " + Require.shown(drop / 1e3)
                    + " kPa; use a larger solenoid, wider nozzles or more fuel pressure.");
        }
        double whole = massFlow / Math.sqrt(2 * density * drop);
        double area = 1 / Math.sqrt(1 / (whole * whole) - rest) / jets.count();
        double bore = Math.sqrt(4 * area / (jet.coefficient(Double.POSITIVE_INFINITY) * Math.PI));
        for (int i = 0; i < PASSES; i++) {
            bore = Math.sqrt(4 * area / (jet.coefficient(reynolds(bore, density, drop)) * Math.PI));
        }
        return bore;
    }

    /** Reynolds number of the velocity that the whole drop would give. */
    private static double reynolds(double bore, double density, double drop) {
        return bore * Math.sqrt(2 * density * Math.max(0, drop)) / VISCOSITY;
    }

    private double hole(double bore, double density, double drop) {
        return Double.isInfinite(bore)
                ? Double.POSITIVE_INFINITY
                : jet.coefficient(reynolds(bore, density, drop)) * Math.PI / 4 * bore * bore;
    }

    private FuelFlow state(double density, double rail, double flow, double capacity, boolean limited) {
        double drop = square(flow / solenoid.effectiveArea()) / (2 * density);
        return new FuelFlow(flow, rail, rail - drop, capacity, limited);
    }

    private double effectiveArea(Jets jets, double density, double drop) {
        double jetArea = jets.count() * hole(jets.bore(), density, drop);
        double passage = jets.count() * hole(jets.passage(), density, drop);
        return 1 / Math.sqrt(1 / square(solenoid.effectiveArea()) + 1 / square(jetArea) + 1 / square(passage));
    }

    /**
     * Area of one jet that counts for flow.
     *
     * @param bore hole diameter, m
     * @return discharge coefficient at high Reynolds numbers times area, m2
     */
    public double jetArea(double bore) {
        return jet.coefficient(Double.POSITIVE_INFINITY) * Math.PI / 4 * bore * bore;
    }

    private static double flow(double density, double area, double rail, double nozzle) {
        return rail > nozzle ? area * Math.sqrt(2 * density * (rail - nozzle)) : 0;
    }

    private double settle(double density, double area, Pressures at, double rail, double voltage) {
        PumpGroup pumps = cell.orElseThrow().pumps();
        return Bracket.root(
                p -> flow(density, area, p, at.nozzle()) - density * pumps.capacity(p - at.ambient(), voltage),
                at.nozzle(),
                rail,
                SETTLED);
    }

    private static double square(double x) {
        return x * x;
    }
}
