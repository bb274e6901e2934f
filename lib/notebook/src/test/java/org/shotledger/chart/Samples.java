package org.shotledger.chart;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Made-up numbers of a plausible size, to look at every kind of chart; they come from no engine. */
public final class Samples {
    private static final double HP = 745.69987158227022;

    private Samples() {}

    /** Every kind of chart. */
    public static List<ChartPicture> all(UnitSystem system) {
        return List.of(
                power().picture(system),
                boost().picture(system),
                mixture().picture(system),
                margins().picture(system),
                flow().picture(system),
                pass().picture(system),
                compressor().picture(system),
                drift().picture(system),
                tradeOff().picture(system),
                tornado().picture(system),
                cylinder().picture(system),
                log().picture(system),
                logBySpeed().picture(system));
    }

    static PowerChart power() {
        double[] rpm = steps(3000, 8000, 41);
        double[] on = steps(5800, 7800, 21);
        double[] with = map(on, n -> boost(n) + HP * (225 - 0.008 * (n - 5800)));
        return new PowerChart(
                new PowerChart.Curve(rpm, map(rpm, Samples::boost)),
                new PowerChart.Curve(on, with),
                map(with, w -> 0.95 * w),
                map(with, w -> 1.02 * w),
                780 * HP,
                430);
    }

    private static double boost(double rpm) {
        return 560 * HP * Math.exp(-Math.pow((rpm - 6900) / 2900, 2));
    }

    static BoostChart boost() {
        double[] rpm = steps(3000, 8000, 11);
        return new BoostChart(
                rpm,
                map(rpm, n -> 1.6e5 - 4 * Math.abs(n - 5000)),
                map(rpm, n -> n < 5800 ? 0.9e5 : 0.9e5 + 25 * (n - 5800)),
                1.85e5,
                5800,
                7800);
    }

    static PassMixtureChart mixture() {
        double[] t = steps(0, 10, 21);
        return new PassMixtureChart(
                List.of(
                        new PassMixtureChart.Trace("event", t, map(t, x -> 0.79 - 0.004 * x)),
                        new PassMixtureChart.Trace("hot", t, map(t, x -> 0.80 - 0.004 * x))),
                0.70,
                0.85);
    }

    /** Some limits. */
    public static MarginChart margins() {
        return new MarginChart(List.of(
                limit("peak cylinder pressure", QuantityKind.ABSOLUTE_PRESSURE, 118e5, 125e5, Side.AT_MOST),
                limit("torque at the crank", QuantityKind.TORQUE, 870, 900, Side.AT_MOST),
                limit("rotor speed of the compressor", QuantityKind.ROTATION, 112_000, 118_000, Side.AT_MOST),
                limit("injector duty", QuantityKind.FRACTION, 0.91, 0.85, Side.AT_MOST),
                limit("pump flow at the lowest voltage", QuantityKind.VOLUME_FLOW, 1.2e-4, 0.9e-4, Side.AT_LEAST),
                limit(
                        "bottle pressure at the end of the pass",
                        QuantityKind.ABSOLUTE_PRESSURE,
                        55e5,
                        50e5,
                        Side.AT_LEAST)));
    }

    static Limit limit(String name, QuantityKind kind, double value, double bound, Side side) {
        return new Limit(
                name.replace(' ', '-'),
                name,
                kind,
                value,
                bound,
                side,
                false,
                "stop",
                Provenance.ASSUMED,
                "made up",
                "7,000 rpm",
                "hot",
                Math.abs(bound));
    }

    static FeedFlowChart flow() {
        double[] p = steps(45e5, 75e5, 31);
        double[] n2o = map(p, x -> 0.0362 * Math.sqrt(x / 62e5));
        double[] fuel = map(p, x -> 0.0071);
        return new FeedFlowChart(
                "Bottle pressure",
                QuantityKind.ABSOLUTE_PRESSURE,
                p,
                n2o,
                map(n2o, x -> 0.9 * x),
                map(n2o, x -> 1.22 * x),
                fuel,
                map(fuel, x -> 0.96 * x),
                map(fuel, x -> 1.04 * x),
                20);
    }

    static PassChart pass() {
        double[] t = steps(0, 19, 96);
        double[] p = map(t, x -> x < 4 ? 62e5 : 62e5 - 0.62e5 * (x - 4));
        double[] power = map(t, x -> HP * (x < 4 ? 300 + 60 * x : 760 - 20 * Math.abs(Math.sin(1.1 * x))));
        return new PassChart("The bottle and the power over a pass", t, p, power, 52e5);
    }

    static CompressorMapChart compressor() {
        List<CompressorMapChart.SpeedLine> lines = new ArrayList<>();
        for (double speed : new double[] {60e3, 75e3, 90e3, 100e3, 110e3, 118e3}) {
            double k = speed / 118e3;
            double[] flow = steps(0.06 + 0.2 * k * k, 0.16 + 0.46 * k, 15);
            double surge = flow[0];
            double width = flow[14] - flow[0];
            lines.add(new CompressorMapChart.SpeedLine(
                    speed, flow, map(flow, w -> 1 + 2.6 * k * k * (1 - 0.35 * Math.pow((w - surge) / width, 3)))));
        }
        double[] surgeFlow = lines.stream().mapToDouble(l -> l.flow()[0]).toArray();
        double[] surgeRatio = lines.stream().mapToDouble(l -> l.ratio()[0]).toArray();
        double[] rpm = steps(3000, 8000, 11);
        return new CompressorMapChart(
                lines,
                surgeFlow,
                surgeRatio,
                map(rpm, n -> 0.12 + 0.40 * (n - 3000) / 5000),
                map(rpm, n -> 1.8 + 1.0 * Math.min(1, (n - 3000) / 1500)),
                rpm);
    }

    static DriftMapChart drift() {
        double[] x = steps(45e5, 80e5, 36);
        double[] y = steps(2.0e5, 5.0e5, 31);
        double[][] lambda = new double[y.length][x.length];
        boolean[][] safe = new boolean[y.length][x.length];
        double[][] lean = new double[y.length][x.length];
        for (int j = 0; j < y.length; j++) {
            for (int i = 0; i < x.length; i++) {
                lambda[j][i] = 0.80 * Math.sqrt(x[i] / 62e5) / Math.sqrt(y[j] / 3.5e5);
                safe[j][i] = lambda[j][i] > 0.68 && lambda[j][i] < 0.86 && x[i] < 76e5;
                lean[j][i] = 0.86 - lambda[j][i];
            }
        }
        return new DriftMapChart(
                x,
                y,
                new DriftMapChart.Field(
                        "Mixture when pressures drift, and where every limit is kept",
                        "\u03bb ",
                        QuantityKind.RATIO,
                        lambda,
                        new double[] {0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95}),
                safe,
                62e5,
                3.5e5,
                3e5,
                0.15e5,
                List.of(new DriftMapChart.Bound("mixture, lean side", lean)));
    }

    static TradeOffChart tradeOff() {
        List<TradeOffChart.Choice> choices = new ArrayList<>();
        java.util.Random random = new java.util.Random(7);
        for (int i = 0; i < 120; i++) {
            double x = 0.1 + 0.35 * random.nextDouble();
            double y = 0.30 * x * (0.6 + random.nextDouble());
            choices.add(new TradeOffChart.Choice(
                    "", x, y, x < 0.2 ? TradeOffChart.Place.REJECTED : TradeOffChart.Place.BETTERED));
        }
        double[] front = {0.22, 0.26, 0.31, 0.37, 0.44};
        for (double x : front) {
            choices.add(new TradeOffChart.Choice(
                    "jets " + Math.round(200 * x) + "/" + Math.round(100 * x),
                    x,
                    0.2 * Math.sqrt(x),
                    x == 0.31 ? TradeOffChart.Place.CHOSEN : TradeOffChart.Place.FRONT));
        }
        return new TradeOffChart(
                "Share of power from nitrous oxide",
                QuantityKind.FRACTION,
                "Least margin of all limits",
                QuantityKind.FRACTION,
                choices);
    }

    static TornadoChart tornado() {
        return new TornadoChart(
                "Power at the wheels",
                QuantityKind.POWER,
                780 * HP,
                List.of(
                        new TornadoChart.Input(
                                "discharge coefficient of the nitrous jet, 0.75 to 0.85", 762 * HP, 799 * HP),
                        new TornadoChart.Input("bottle temperature, 20 \u00b0C to 32 \u00b0C", 758 * HP, 795 * HP),
                        new TornadoChart.Input("volumetric efficiency, \u22122 % to +2 %", 768 * HP, 792 * HP),
                        new TornadoChart.Input("driveline loss, 16 % to 12 %", 762 * HP, 798 * HP),
                        new TornadoChart.Input("ethanol content of the fuel, 70 % to 82 %", 783 * HP, 777 * HP)));
    }

    static CylinderPressureChart cylinder() {
        double[] a = steps(-60, 120, 181);
        return new CylinderPressureChart(
                a, map(a, x -> pressure(x, 88e5, 15)), map(a, x -> pressure(x, 117e5, 13)), 125e5);
    }

    static LogOverlayChart log() {
        double[] t = steps(0, 16, 161);
        java.util.Random random = new java.util.Random(11);
        double[] plan = map(t, x -> 62e5 - 0.60e5 * x);
        double[] fitted = map(t, x -> 61.6e5 - 0.68e5 * x);
        double[] logged = map(fitted, x -> x + 0.25e5 * random.nextGaussian());
        for (int i = 70; i < 85; i++) {
            logged[i] = Double.NaN;
        }
        return new LogOverlayChart(
                "Bottle pressure", QuantityKind.ABSOLUTE_PRESSURE, LogOverlayChart.Along.TIME, t, logged, plan, fitted);
    }

    static LogOverlayChart logBySpeed() {
        double[] rpm = steps(4200, 7700, 36);
        java.util.Random random = new java.util.Random(13);
        double[] plan = map(rpm, n -> n < 5850 ? 0.80 : 0.76);
        double[] fitted = map(rpm, n -> n < 5850 ? 0.80 : 0.785);
        double[] logged = map(fitted, x -> x + 0.003 * random.nextGaussian());
        return new LogOverlayChart(
                "Lambda", QuantityKind.RATIO, LogOverlayChart.Along.ENGINE_SPEED, rpm, logged, plan, fitted);
    }

    private static double pressure(double angle, double peak, double at) {
        double compression = 40e5 * Math.exp(-Math.pow(angle / 34, 2));
        double fire = (peak - 33e5) * Math.exp(-Math.pow((angle - at) / (angle < at ? 14 : 34), 2));
        return 2.6e5 + compression + fire;
    }

    static Scale axis() {
        return new Scale("Flow", QuantityKind.MASS_FLOW, UnitSystem.SI);
    }

    static double[] steps(double from, double to, int n) {
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            out[i] = from + (to - from) * i / (n - 1);
        }
        return out;
    }

    static double[] map(double[] in, java.util.function.DoubleUnaryOperator f) {
        double[] out = new double[in.length];
        for (int i = 0; i < in.length; i++) {
            out[i] = f.applyAsDouble(in[i]);
        }
        return out;
    }
}
