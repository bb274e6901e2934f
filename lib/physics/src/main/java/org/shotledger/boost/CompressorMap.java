package org.shotledger.boost;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shotledger.curve.Bracket;
import org.shotledger.curve.Curve;
import org.shotledger.units.Require;

/**
 * A compressor map: speed lines joined by shape-preserving cubics, along each line over its own flow range and between
 * lines at equal places of that range. Outside the outermost lines and beyond surge and choke it refuses to answer.
 *
 * <p>Lines may come in any order; they are sorted by speed.
 */
public final class CompressorMap {
    private static final int PLACES = 129;

    private final String name;
    private final MapReference reference;
    private final List<SpeedLine> lines;
    private final double maximumRpm;
    private final Curve[] flow = new Curve[PLACES];
    private final Curve[] ratio = new Curve[PLACES];
    private final Curve[] efficiency = new Curve[PLACES];

    /**
     * Makes a map.
     *
     * @param name what it is called
     * @param reference the state its flows and speeds are corrected to
     * @param lines at least two, with different speeds
     * @param maximumRpm highest allowed physical wheel speed, rpm
     * @throws IllegalArgumentException when lines are missing or cross each other at surge or choke
     */
    public CompressorMap(String name, MapReference reference, List<SpeedLine> lines, double maximumRpm) {
        this.name = Require.named("compressor map", name);
        this.reference = Require.given("reference state of the map " + name, reference);
        this.maximumRpm = Require.within("maximum wheel speed of " + name, maximumRpm, 10_000, 400_000, "rpm");
        this.lines = lines.stream()
                .sorted(Comparator.comparingDouble(SpeedLine::correctedRpm))
                .toList();
        if (lines.size() < 2) {
            throw new IllegalArgumentException(
                    "The compressor map " + name + " has " + lines.size() + " speed lines; give at least two.");
        }
        checkOrder();
        layGrid();
    }

    private void checkOrder() {
        for (int i = 1; i < lines.size(); i++) {
            SpeedLine slow = lines.get(i - 1);
            SpeedLine fast = lines.get(i);
            boolean apart = fast.correctedRpm() > slow.correctedRpm()
                    && fast.surge().pressureRatio() > slow.surge().pressureRatio()
                    && fast.choke().correctedFlow() > slow.choke().correctedFlow();
            if (!apart) {
                throw new IllegalArgumentException(
                        "The lines at " + slow.correctedRpm() + " and " + fast.correctedRpm()
                                + " rpm of the compressor map " + name
                                + " cross or coincide; the faster one must start at a higher pressure ratio and end at a higher flow.");
            }
        }
    }

    private void layGrid() {
        int n = lines.size();
        double[] speeds = lines.stream().mapToDouble(SpeedLine::correctedRpm).toArray();
        double[][] w = new double[PLACES][n];
        double[][] p = new double[PLACES][n];
        double[][] e = new double[PLACES][n];
        for (int j = 0; j < n; j++) {
            SpeedLine line = lines.get(j);
            double[] flows = line.flows();
            Curve ratios = column(line, flows, SpeedLine.Point::pressureRatio);
            Curve efficiencies = column(line, flows, SpeedLine.Point::efficiency);
            for (int i = 0; i < PLACES; i++) {
                double along = i / (PLACES - 1.0);
                w[i][j] = Math.min(flows[0] + along * (flows[flows.length - 1] - flows[0]), flows[flows.length - 1]);
                p[i][j] = ratios.at(w[i][j]);
                e[i][j] = efficiencies.at(w[i][j]);
            }
        }
        for (int i = 0; i < PLACES; i++) {
            flow[i] = Curve.of("corrected flow of " + name, speeds, w[i]);
            ratio[i] = Curve.of("pressure ratio of " + name, speeds, p[i]);
            efficiency[i] = Curve.of("efficiency of " + name, speeds, e[i]);
        }
    }

    /**
     * Finds the place of a flow and a pressure ratio.
     *
     * @param correctedFlow kg/s
     * @param pressureRatio total to total
     * @return the place with its speed, efficiency and borders
     * @throws OutsideMapException beyond surge, choke, the fastest or the slowest line
     */
    public MapPoint locate(double correctedFlow, double pressureRatio) {
        Require.positive("corrected flow", correctedFlow, "kg/s");
        Require.positive("pressure ratio", pressureRatio, "");
        double surge = surgeFlow(pressureRatio, correctedFlow);
        if (correctedFlow < surge) {
            throw outside(
                    MapEdge.SURGE,
                    correctedFlow,
                    pressureRatio,
                    "surge lies at " + surge + " kg/s. Raise the flow or lower" + " the pressure ratio.");
        }
        double low = lines.get(0).correctedRpm();
        double high = lines.get(lines.size() - 1).correctedRpm();
        double slowest = ratioAt(low, correctedFlow);
        if (pressureRatio < slowest) {
            throw outside(
                    MapEdge.SLOWEST,
                    correctedFlow,
                    pressureRatio,
                    "the slowest line, " + low + " rpm, gives " + slowest
                            + " there. Add slower lines or ask for more boost.");
        }
        double fastest = ratioAt(high, correctedFlow);
        if (pressureRatio > fastest) {
            boolean choked = correctedFlow > chokeFlow(high);
            throw outside(
                    choked ? MapEdge.CHOKE : MapEdge.OVERSPEED,
                    correctedFlow,
                    pressureRatio,
                    "the fastest line, " + high
                            + " rpm, gives " + Math.max(fastest, 0) + " there and chokes at " + chokeFlow(high)
                            + " kg/s. Use a larger compressor or less boost.");
        }
        double rpm = speedFor(correctedFlow, pressureRatio, low, high);
        int between = flow[0].interval(rpm);
        double along = placeOn(rpm, between, correctedFlow);
        if (along > 1) {
            throw outside(
                    MapEdge.CHOKE,
                    correctedFlow,
                    pressureRatio,
                    "the line at " + rpm + " rpm chokes at " + chokeFlow(rpm)
                            + " kg/s. Use a larger compressor or less flow.");
        }
        return new MapPoint(
                correctedFlow,
                pressureRatio,
                rpm,
                blend(efficiency, along, rpm, between),
                along,
                surge,
                chokeFlow(rpm));
    }

    /**
     * The flow at the surge line.
     *
     * @param pressureRatio total to total; below the slowest line's the slowest line's flow stands
     * @return corrected flow, kg/s
     * @throws OutsideMapException above the fastest line's surge point
     */
    public double surgeFlow(double pressureRatio) {
        return surgeFlow(pressureRatio, Double.NaN);
    }

    private double surgeFlow(double pressureRatio, double correctedFlow) {
        double low = lines.get(0).correctedRpm();
        double high = lines.get(lines.size() - 1).correctedRpm();
        Curve start = ratio[0];
        if (pressureRatio > start.at(high)) {
            throw outside(
                    MapEdge.OVERSPEED,
                    correctedFlow,
                    pressureRatio,
                    "its highest pressure ratio is " + start.at(high) + ". Use another compressor or less boost.");
        }
        if (pressureRatio <= start.at(low)) {
            return flow[0].at(low);
        }
        double rpm = Bracket.root(speed -> start.at(speed) - pressureRatio, low, high, 1e-9 * high);
        return flow[0].at(rpm);
    }

    /**
     * The flow at the choke end of a speed.
     *
     * @param correctedRpm corrected wheel speed inside the map
     * @return corrected flow, kg/s
     */
    public double chokeFlow(double correctedRpm) {
        return flow[PLACES - 1].at(correctedRpm);
    }

    private double speedFor(double correctedFlow, double pressureRatio, double from, double to) {
        return Bracket.root(rpm -> ratioAt(rpm, correctedFlow) - pressureRatio, from, to, 1e-10 * to);
    }

    /** Pressure ratio of a speed at a flow: 0 beyond choke, the surge value before surge, so that it grows with speed. */
    private double ratioAt(double rpm, double correctedFlow) {
        // asked for most of all, and all of these curves stand over the speeds of the lines
        int between = flow[0].interval(rpm);
        double along = placeOn(rpm, between, correctedFlow);
        return along > 1 ? 0 : blend(ratio, Math.max(along, 0), rpm, between);
    }

    private double placeOn(double rpm, int between, double correctedFlow) {
        double first = flow[0].at(rpm, between);
        return (correctedFlow - first) / (flow[PLACES - 1].at(rpm, between) - first);
    }

    private static double blend(Curve[] grid, double along, double rpm, int between) {
        double at = along * (PLACES - 1);
        int i = (int) Math.min(at, PLACES - 2.0);
        double t = at - i;
        return (1 - t) * grid[i].at(rpm, between) + t * grid[i + 1].at(rpm, between);
    }

    private static Curve column(SpeedLine line, double[] flows, ToDoubleFunction<SpeedLine.Point> of) {
        return Curve.of(
                "speed line at " + line.correctedRpm() + " rpm",
                flows,
                line.points().stream().mapToDouble(of).toArray());
    }

    private OutsideMapException outside(MapEdge edge, double correctedFlow, double pressureRatio, String allowed) {
        return new OutsideMapException(name, edge, correctedFlow, pressureRatio, allowed);
    }

    /**
     * The state its flows and speeds are corrected to.
     *
     * @return the reference
     */
    public MapReference reference() {
        return reference;
    }

    /**
     * The speed lines.
     *
     * @return sorted by speed
     */
    public List<SpeedLine> lines() {
        return lines;
    }

    /**
     * The highest allowed physical wheel speed.
     *
     * @return rpm
     */
    public double maximumRpm() {
        return maximumRpm;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CompressorMap map
                && name.equals(map.name)
                && reference.equals(map.reference)
                && lines.equals(map.lines)
                && maximumRpm == map.maximumRpm;
    }

    @Override
    public int hashCode() {
        return lines.hashCode();
    }

    @Override
    public String toString() {
        return "compressor map " + name + ", " + lines.size() + " speed lines";
    }
}
