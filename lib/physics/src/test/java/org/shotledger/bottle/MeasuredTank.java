package org.shotledger.bottle;

import static org.shotledger.flow.CsvTable.number;

import java.util.List;
import java.util.Map;
import org.shotledger.flow.CsvTable;
import org.shotledger.fluid.NitrousOxide;

/**
 * A published blow-down history: G. Zimmerman, B. Waxman, B. Cantwell, G. Zilliac, AIAA 2013-4045, digitised. Volume, liquid share, start
 * pressure and time to liquid run-out as printed there; the mean flow follows from the mass and the vapour left (equilibrium). The shells are
 * thick: taken as isothermal.
 *
 * @param name name of the test in the file
 * @param litres volume, L
 * @param fill share of the volume that is liquid
 * @param megapascal start pressure, MPa
 * @param runOut time to liquid run-out, s
 * @param vapourLeft share of the mass then left
 */
record MeasuredTank(String name, double litres, double fill, double megapascal, double runOut, double vapourLeft) {
    static final List<MeasuredTank> ALL = List.of(
            new MeasuredTank("zilliac_karabeyoglu", 35.4, 0.64, 4.502, 4.91, 0.1442),
            new MeasuredTank("prince_ground", 9.29, 0.95, 4.777, 5.56, 0.1018),
            // adiabatic equilibrium would leave 9.1 %; with the shell's heat it leaves 11.5 %
            new MeasuredTank("zimmerman_low", 0.18, 0.87, 4.091, 19.88, 0.115));

    private static final List<Map<String, String>> ROWS =
            CsvTable.read(MeasuredTank.class, "tank-pressure-histories.csv");

    Emptying task(double fluidCoefficient) {
        double volume = 1e-3 * litres;
        double temperature = NitrousOxide.saturationTemperature(1e6 * megapascal);
        double mass = volume
                * (fill * NitrousOxide.saturatedLiquid(temperature).density()
                        + (1 - fill) * NitrousOxide.saturatedVapour(temperature).density());
        // the smallest vessel has a bore of 25.4 mm; the others are taken four bores long
        double bore = volume < 1e-3 ? 0.0254 : Math.cbrt(volume / Math.PI);
        Bottle bottle = new Bottle(volume, 1e4, 900, 4 * volume / bore, 4 * volume / bore);
        return Emptying.of(bottle.charged(mass, temperature), Outflow.constant(mass * (1 - vapourLeft) / runOut))
                .withHeat(new HeatInput(fluidCoefficient, 0, temperature, 0, 0, 0))
                .withDuration(1.5 * runOut)
                .withRows(runOut / 200);
    }

    /** Root mean square of the relative error of pressure up to liquid run-out. */
    double error(History history) {
        double sum = 0;
        int count = 0;
        for (Map<String, String> row : ROWS) {
            double time = number(row, "time_s");
            if (row.get("test").equals(name) && time >= 0 && time <= runOut) {
                double error = history.at(time).pressure() / (1e6 * number(row, "tank_pressure_MPa")) - 1;
                sum += error * error;
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }

    @Override
    public String toString() {
        return name;
    }
}
