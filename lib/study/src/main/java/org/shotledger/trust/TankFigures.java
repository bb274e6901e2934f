package org.shotledger.trust;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.bottle.BoilingLaw;
import org.shotledger.bottle.Bottle;
import org.shotledger.bottle.Emptying;
import org.shotledger.bottle.HeatInput;
import org.shotledger.bottle.History;
import org.shotledger.bottle.Outflow;
import org.shotledger.bottle.TwoNodeBottle;
import org.shotledger.flow.FlowBand;
import org.shotledger.fluid.NitrousOxide;

/**
 * Measured pressure of three vessels that empty as liquid, each foretold with the boiling constants fitted to the other two.
 *
 * @param file the measured history
 * @param litres volume, L
 * @param fill share of the volume that is liquid
 * @param megapascal pressure at the start, MPa
 * @param runOut time until the liquid is gone, s
 * @param vapourLeft share of the mass then left
 * @param law boiling constants fitted to the two other vessels
 * @param shell coefficient between shell and fluid fitted with them, W/(m2 K)
 */
record TankFigures(
        String file,
        double litres,
        double fill,
        double megapascal,
        double runOut,
        double vapourLeft,
        BoilingLaw law,
        double shell) {
    /** Thick shells, taken as isothermal. */
    private static final double SHELL_MASS = 1e4;

    private static final double SHELL_HEAT = 900;
    private static final double BULK_RATE = 0.03;

    /** The smallest vessel's bore, m; the others are taken four bores long. */
    private static final double SMALL_BORE = 0.0254;

    /** The model's known error, root mean square; nine in ten lie within 1.645 of it if it were normal. */
    private static final double NINETY = 1.645;

    /** The constants are those of the fit with one vessel left out, which the tests of the bottle make anew. */
    private static final List<TankFigures> ALL = List.of(
            new TankFigures(
                    "blow-down-35-litres.csv", 35.4, 0.64, 4.502, 4.91, 0.1442, law(0.19932, 10.862, 0.16127), 1912.2),
            new TankFigures(
                    "blow-down-9-litres.csv", 9.29, 0.95, 4.777, 5.56, 0.1018, law(0.08546, 23.506, 0.56800), 2333.7),
            new TankFigures(
                    "blow-down-0.18-litres.csv",
                    0.18,
                    0.87,
                    4.091,
                    19.88,
                    0.115,
                    law(0.12219, 18.255, 0.28774),
                    9649.2));

    private static BoilingLaw law(double surfaceRate, double superheat, double time) {
        return new BoilingLaw(surfaceRate, BULK_RATE, superheat, time);
    }

    static List<Comparison> all(Path data) {
        List<Comparison> all = new ArrayList<>();
        ALL.forEach(tank -> tank.compare(data, all));
        return all;
    }

    private void compare(Path data, List<Comparison> all) {
        History history = TwoNodeBottle.with(law).run(task());
        double error = NINETY * TwoNodeBottle.MODEL.expectedError();
        for (List<String> row : Cells.of(data.resolve("measured").resolve(file))) {
            double time = Double.parseDouble(row.get(0));
            if (time >= 0 && time <= runOut) {
                all.add(new Comparison(
                        "AIAA 2013-4045, " + litres + " litres",
                        "pressure after " + time + " s",
                        1e6 * Double.parseDouble(row.get(1)),
                        history.at(time).pressure(),
                        new FlowBand(1 - error, 1, 1 + error)));
            }
        }
    }

    private Emptying task() {
        double volume = 1e-3 * litres;
        double temperature = NitrousOxide.saturationTemperature(1e6 * megapascal);
        double mass = volume
                * (fill * NitrousOxide.saturatedLiquid(temperature).density()
                        + (1 - fill) * NitrousOxide.saturatedVapour(temperature).density());
        double bore = volume < 1e-3 ? SMALL_BORE : Math.cbrt(volume / Math.PI);
        Bottle bottle = new Bottle(volume, SHELL_MASS, SHELL_HEAT, 4 * volume / bore, 4 * volume / bore);
        return Emptying.of(bottle.charged(mass, temperature), Outflow.constant(mass * (1 - vapourLeft) / runOut))
                .withHeat(new HeatInput(shell, 0, temperature, 0, 0, 0))
                .withDuration(1.5 * runOut)
                .withRows(runOut / 200);
    }
}
