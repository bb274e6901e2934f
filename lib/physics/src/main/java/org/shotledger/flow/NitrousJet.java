package org.shotledger.flow;

import java.util.Optional;
import org.shotledger.fluid.FluidState;

/**
 * A metering hole at the end of a feed path, or any hole that passes nitrous oxide.
 *
 * @param name name in reports
 * @param bore diameter of the hole, m; zero for a plugged one
 * @param lengthToBore length over diameter, 0 to 100; NaN when it is not known
 * @param edge shape of the inlet
 * @param dischargeCoefficient stated coefficient on the ideal flux, 0.1 to 1.2; NaN to use the law's
 * @param law the law that acts
 * @param measured what a flow test found, relative to the law's best estimate; empty without a test
 * @param place where in its band the hole is taken to be: -1 the lower end, 0 the best estimate, 1 the upper end; -3 to 3
 */
public record NitrousJet(
        String name,
        double bore,
        double lengthToBore,
        Edge edge,
        double dischargeCoefficient,
        OrificeLaw law,
        Optional<FlowBand> measured,
        double place)
        implements FeedElement {
    /** Length over diameter of a usual jet, for its volume only (common practice, no source). */
    private static final double USUAL_LENGTH = 3;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public NitrousJet {
        Checks.notNegative("Nitrous jet " + name, "bore", bore, "m");
        if (!Double.isNaN(lengthToBore)) {
            Checks.within("Nitrous jet " + name, "length over bore", lengthToBore, 0, 100, "");
        }
        if (!Double.isNaN(dischargeCoefficient)) {
            Checks.within("Nitrous jet " + name, "discharge coefficient", dischargeCoefficient, 0.1, 1.2, "");
        }
        Checks.within("Nitrous jet " + name, "place in its band", place, -3, 3, "");
    }

    /**
     * A hole with the default law, not tested.
     *
     * @param name name in reports
     * @param bore diameter of the hole, m; zero for a plugged one
     * @param lengthToBore length over diameter, 0 to 100; NaN when it is not known
     * @param edge shape of the inlet
     * @param dischargeCoefficient stated coefficient, 0.1 to 1.2; NaN to use the law's
     */
    public NitrousJet(String name, double bore, double lengthToBore, Edge edge, double dischargeCoefficient) {
        this(name, bore, lengthToBore, edge, dischargeCoefficient, OrificeLaw.CLASS, Optional.empty(), 0);
    }

    /**
     * A plain jet of which only the bore is known.
     *
     * @param bore diameter of the hole, m
     * @return the jet
     */
    public static NitrousJet of(double bore) {
        return new NitrousJet("jet", bore, Double.NaN, Edge.UNKNOWN, Double.NaN);
    }

    /**
     * The same kind of jet with another hole.
     *
     * @param size diameter of the hole, m
     * @return new jet
     */
    public NitrousJet withBore(double size) {
        return new NitrousJet(name, size, lengthToBore, edge, dischargeCoefficient, law, measured, place);
    }

    /**
     * The same hole under another name.
     *
     * @param other name in reports
     * @return new jet
     */
    public NitrousJet named(String other) {
        return new NitrousJet(other, bore, lengthToBore, edge, dischargeCoefficient, law, measured, place);
    }

    /**
     * The same jet by another law.
     *
     * @param other the law that shall act
     * @return new jet
     */
    public NitrousJet withLaw(OrificeLaw other) {
        return new NitrousJet(name, bore, lengthToBore, edge, dischargeCoefficient, other, measured, place);
    }

    /**
     * The same jet after a flow test.
     *
     * @param factor measured flow over the law's best estimate, with its band
     * @return new jet
     */
    public NitrousJet withMeasured(FlowBand factor) {
        return new NitrousJet(name, bore, lengthToBore, edge, dischargeCoefficient, law, Optional.of(factor), place);
    }

    /**
     * The same jet taken elsewhere in its band.
     *
     * @param there -1 the lower end, 0 the best estimate, 1 the upper end; -3 to 3
     * @return new jet
     */
    public NitrousJet at(double there) {
        return new NitrousJet(name, bore, lengthToBore, edge, dischargeCoefficient, law, measured, there);
    }

    /** Tells whether a coefficient was stated. */
    boolean hasCoefficient() {
        return !Double.isNaN(dischargeCoefficient);
    }

    /**
     * Area of the hole.
     *
     * @return area, m2
     */
    public double area() {
        return Math.PI / 4 * bore * bore;
    }

    /**
     * The flow over the pressure behind, at this jet's place in its band.
     *
     * @param inlet state at rest before the hole
     * @return the curve
     */
    public OrificeCurve curve(FluidState inlet) {
        OrificeCurve best = law.curve(this, inlet);
        return measured.isEmpty() && place == 0 ? best : best.times(band(inlet).at(place));
    }

    /** What the law's best estimate is multiplied by: a flow test's band or the law's own. */
    private FlowBand band(FluidState inlet) {
        return measured.isPresent() ? measured.get() : law.band(this, inlet);
    }

    /**
     * The flow at this jet's place in its band.
     *
     * @param inlet state at rest before the hole
     * @param downstreamPressure absolute pressure behind it, Pa
     * @return mass flow, kg/s
     */
    public double massFlow(FluidState inlet, double downstreamPressure) {
        if (bore == 0 || downstreamPressure >= inlet.pressure()) {
            return 0;
        }
        return curve(inlet).flow(downstreamPressure);
    }

    /**
     * The flow with its band and its reasons.
     *
     * @param inlet state at rest before the hole
     * @param downstreamPressure absolute pressure behind it, Pa
     * @return flow and band; the band is that of the hole alone, whatever its place in it
     */
    public JetFlow flow(FluidState inlet, double downstreamPressure) {
        double plain = bore == 0 ? 0 : law.curve(this, inlet).flow(downstreamPressure);
        FlowBand band = band(inlet);
        Throat equilibrium = HomogeneousEquilibrium.throatAt(inlet, downstreamPressure);
        double ideal = area() * equilibrium.massFlux();
        double flow = plain * band.at(place);
        return new JetFlow(
                flow,
                plain * band.low(),
                plain * band.high(),
                ideal > 0 ? flow / ideal : 0,
                law.acting(inlet).name(),
                new HoleClass(edge, Inlet.of(inlet)),
                law.source(this, inlet) + (measured.isPresent() ? "; factor from a flow test" : ""),
                MeasuredRange.outside(this, inlet),
                measured.isPresent(),
                equilibrium);
    }

    @Override
    public double volume() {
        return area() * bore * (Double.isNaN(lengthToBore) ? USUAL_LENGTH : lengthToBore);
    }

    /** {@inheritDoc} A jet ends the path: what flows through it is asked of {@link #massFlow}. */
    @Override
    public double outletPressure(FluidState inlet, double massFlow) {
        return curve(inlet).pressureAt(massFlow);
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        return Math.min(0, curve(inlet).largestFlow() - massFlow);
    }

    @Override
    public String blocked() {
        return bore > 0 ? "" : name + " has no hole.";
    }
}
