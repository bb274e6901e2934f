package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * A metering hole at the end of a feed path, or any hole that passes nitrous oxide.
 *
 * @param name name in reports
 * @param bore diameter of the hole, m; zero for a plugged one
 * @param lengthToBore length over diameter, 0 to 100
 * @param edge shape of the inlet
 * @param dischargeCoefficient measured or calibrated coefficient, 0.1 to 1.2; NaN to use the default law's
 */
public record NitrousJet(String name, double bore, double lengthToBore, Edge edge, double dischargeCoefficient)
        implements FeedElement {
    /** Length over diameter of a usual jet (common practice, no source). */
    public static final double USUAL_LENGTH = 3;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public NitrousJet {
        Checks.notNegative("Nitrous jet " + name, "bore", bore, "m");
        Checks.within("Nitrous jet " + name, "length over bore", lengthToBore, 0, 100, "");
        if (!Double.isNaN(dischargeCoefficient)) {
            Checks.within("Nitrous jet " + name, "discharge coefficient", dischargeCoefficient, 0.1, 1.2, "");
        }
    }

    /**
     * A usual jet: coned inlet, three bores long, default law.
     *
     * @param bore diameter of the hole, m
     * @return the jet
     */
    public static NitrousJet of(double bore) {
        return new NitrousJet("jet", bore, USUAL_LENGTH, Edge.ROUNDED, Double.NaN);
    }

    /**
     * The same jet with a calibrated coefficient.
     *
     * @param coefficient discharge coefficient on the ideal flux, 0.1 to 1.2
     * @return new jet
     */
    public NitrousJet withDischargeCoefficient(double coefficient) {
        return new NitrousJet(name, bore, lengthToBore, edge, coefficient);
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
     * Best estimate of the flow.
     *
     * @param inlet state at rest before the hole
     * @param downstreamPressure absolute pressure behind it, Pa
     * @return mass flow, kg/s
     */
    public double massFlow(FluidState inlet, double downstreamPressure) {
        if (bore == 0 || downstreamPressure >= inlet.pressure()) {
            return 0;
        }
        return new HoleCurve(this, inlet).flow(downstreamPressure);
    }

    /**
     * The flow with the spread of the models.
     *
     * @param inlet state at rest before the hole
     * @param downstreamPressure absolute pressure behind it, Pa
     * @return best estimate and bracket
     */
    public JetFlow flow(FluidState inlet, double downstreamPressure) {
        double share = HoleLaw.liquidShare(inlet);
        double best = massFlow(inlet, downstreamPressure);
        Throat equilibrium = HomogeneousEquilibrium.throatAt(inlet, downstreamPressure);
        double frozen = HenryFauske.massFlux(inlet, downstreamPressure);
        double least = Math.min(liquidCoefficient(), flashingCoefficient());
        double most = Math.max(liquidCoefficient(), flashingCoefficient());
        String model = share > 0.5 ? HoleLaw.delayed(lengthToBore).title() : HomogeneousEquilibrium.MODEL.title();
        return new JetFlow(
                best,
                Math.min(best, least * area() * equilibrium.massFlux()),
                Math.max(best, most * area() * frozen),
                share * liquidCoefficient() + (1 - share) * flashingCoefficient(),
                HoleLaw.expectedError(share, lengthToBore),
                model,
                Double.isNaN(dischargeCoefficient) ? HoleLaw.source(share) : HoleLaw.fluxSource(share),
                equilibrium);
    }

    double liquidCoefficient() {
        return Double.isNaN(dischargeCoefficient)
                ? HoleLaw.liquidCoefficient(edge, lengthToBore)
                : dischargeCoefficient;
    }

    double flashingCoefficient() {
        return Double.isNaN(dischargeCoefficient) ? HoleLaw.FLASHING_COEFFICIENT : dischargeCoefficient;
    }

    @Override
    public double volume() {
        return area() * bore * lengthToBore;
    }

    /** {@inheritDoc} A jet ends the path: what flows through it is asked of {@link #massFlow}. */
    @Override
    public double outletPressure(FluidState inlet, double massFlow) {
        return new HoleCurve(this, inlet).pressureAt(massFlow);
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        return Math.min(0, new HoleCurve(this, inlet).largestFlow() - massFlow);
    }

    @Override
    public String blocked() {
        return bore > 0 ? "" : name + " has no hole.";
    }
}
