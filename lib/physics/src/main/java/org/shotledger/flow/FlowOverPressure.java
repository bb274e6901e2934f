package org.shotledger.flow;

import java.util.List;
import java.util.stream.Stream;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Flow of a path over the pressure of a bottle of saturated liquid, with its band, and what it is compared with.
 *
 * <p>Why it is flatter than a square root: with the pressure the temperature rises, so the liquid gets lighter and boils more on
 * the way; {@code liquidDensity} shows the first.
 *
 * @param pressure bottle pressures, Pa
 * @param low lower end of the band, kg/s
 * @param best best estimate, kg/s
 * @param high upper end of the band, kg/s
 * @param squareRoot flow by the square root of the pressure drop through the plan's point, kg/s
 * @param liquidDensity density of the bottle's liquid, kg/m3
 * @param measured what the measured holes of the nearest class say for the same jet area, at the pressure before the hole, and the
 *     hole at the end of a line from a bottle of boiling nitrous oxide, at the pressure of that bottle
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record FlowOverPressure(
        double[] pressure,
        double[] low,
        double[] best,
        double[] high,
        double[] squareRoot,
        double[] liquidDensity,
        List<Point> measured) {

    /**
     * A measured hole brought to this jet area and to nitrous oxide at the same reduced state.
     *
     * @param source short name of the source
     * @param pressure pressure before the hole, Pa
     * @param flow flow of the jet area, kg/s
     */
    public record Point(String source, double pressure, double flow) {}

    /**
     * The series of a path.
     *
     * @param path the feed path, ending in jets
     * @param pressure bottle pressures, Pa, between triple and critical pressure
     * @param planPressure pressure at which the square root meets the path's flow, Pa
     * @param downstreamPressure absolute pressure behind the jets, Pa
     * @return the series
     */
    public static FlowOverPressure of(
            FeedPath path, double[] pressure, double planPressure, double downstreamPressure) {
        int n = pressure.length;
        double[][] flows = new double[3][n];
        double[] root = new double[n];
        double[] density = new double[n];
        double plan = path.massFlow(saturated(planPressure), downstreamPressure);
        for (int i = 0; i < n; i++) {
            FluidState liquid = saturated(pressure[i]);
            for (int end = 0; end < 3; end++) {
                flows[end][i] = path.at(end - 1).massFlow(liquid, downstreamPressure);
            }
            double ratio = (pressure[i] - downstreamPressure) / (planPressure - downstreamPressure);
            root[i] = plan * Math.sqrt(Math.max(0, ratio));
            density[i] = liquid.density();
        }
        FluidState inlet =
                path.flow(saturated(planPressure), downstreamPressure).jetInlet();
        return new FlowOverPressure(
                pressure.clone(), flows[0], flows[1], flows[2], root, density, points(path, inlet, pressure));
    }

    private static FluidState saturated(double pressure) {
        return NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(pressure));
    }

    private static List<Point> points(FeedPath path, FluidState inlet, double[] pressure) {
        List<NitrousJet> jets = path.jets();
        if (jets.isEmpty() || pressure.length == 0) {
            return List.of();
        }
        double area = jets.stream().mapToDouble(NitrousJet::area).sum();
        double from = pressure[0];
        double to = pressure[pressure.length - 1];
        return Stream.concat(
                        MeasuredHole.nearest(jets.get(0).edge(), inlet).stream(),
                        MeasuredHole.all().stream().filter(MeasuredHole::atTheEndOfALine))
                .distinct()
                .map(hole -> point(hole, area))
                .filter(point -> point.pressure() >= Math.min(from, to) && point.pressure() <= Math.max(from, to))
                .toList();
    }

    private static Point point(MeasuredHole hole, double area) {
        double temperature = hole.reducedTemperature() * NitrousOxide.CRITICAL_TEMPERATURE;
        double pressure = hole.aboveBoiling() * NitrousOxide.saturationPressure(temperature);
        FluidState state = hole.aboveBoiling() > 1
                ? NitrousOxide.atTemperaturePressure(temperature, pressure)
                : NitrousOxide.mixture(temperature, hole.quality());
        double flux = HomogeneousEquilibrium.criticalFlux(state).massFlux();
        return new Point(hole.source(), pressure, hole.share() * flux * area);
    }
}
