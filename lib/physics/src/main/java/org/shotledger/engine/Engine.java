package org.shotledger.engine;

import org.shotledger.curve.Curve;
import org.shotledger.units.Require;

/**
 * A four-stroke engine as its builder describes it.
 *
 * @param name what it is called
 * @param cylinders their number, 1 to 16
 * @param bore m, 0.04 to 0.16
 * @param stroke m, 0.03 to 0.18
 * @param rodLength between the centres of the connecting rod, m, above 0.6 strokes
 * @param compressionRatio geometric, 5 to 20
 * @param volumetricEfficiency flow over displaced volume at plenum density, over rpm, each value 0.2 to 1.5
 * @param redLineRpm highest speed, rpm, 1000 to 20000
 */
public record Engine(
        String name,
        int cylinders,
        double bore,
        double stroke,
        double rodLength,
        double compressionRatio,
        Curve volumetricEfficiency,
        double redLineRpm) {

    public Engine {
        Require.named("engine", name);
        Require.within("number of cylinders of " + name, cylinders, 1, 16, "");
        Require.within("bore of " + name, bore, 0.04, 0.16, "m");
        Require.within("stroke of " + name, stroke, 0.03, 0.18, "m");
        Require.within("rod length of " + name, rodLength, 0.6 * stroke, 5 * stroke, "m");
        Require.within("compression ratio of " + name, compressionRatio, 5, 20, "");
        Require.given("volumetric efficiency of " + name, volumetricEfficiency);
        for (double value : volumetricEfficiency.ordinates()) {
            Require.within("volumetric efficiency of " + name, value, 0.2, 1.5, "");
        }
        Require.within("red line of " + name, redLineRpm, 1000, 20000, "rpm");
    }

    /**
     * Displacement of one cylinder.
     *
     * @return m3
     */
    public double cylinderDisplacement() {
        return Math.PI / 4 * bore * bore * stroke;
    }

    /**
     * Displacement of all cylinders.
     *
     * @return m3
     */
    public double displacement() {
        return cylinders * cylinderDisplacement();
    }

    /**
     * Volume of one cylinder at top dead centre.
     *
     * @return m3
     */
    public double clearance() {
        return cylinderDisplacement() / (compressionRatio - 1);
    }

    /**
     * Mean piston speed, {@code 2 stroke n}.
     *
     * @param rpm crankshaft speed
     * @return m/s
     */
    public double meanPistonSpeed(double rpm) {
        return 2 * stroke * rpm / 60;
    }

    /**
     * Displaced volume per second, half the displacement each turn.
     *
     * @param rpm crankshaft speed
     * @return m3/s
     */
    public double displacementRate(double rpm) {
        return displacement() * rpm / 120;
    }

    /**
     * Volume of charge breathed per second at plenum conditions.
     *
     * @param rpm crankshaft speed, inside the table of volumetric efficiency
     * @return m3/s
     */
    public double breathedVolume(double rpm) {
        return volumetricEfficiency.at(rpm) * displacementRate(rpm);
    }

    /**
     * The highest speed that is worked out.
     *
     * @return the red line, or the end of the table of volumetric efficiency where that comes first, rpm
     */
    public double highestRpm() {
        return Math.min(volumetricEfficiency.high(), redLineRpm);
    }

    /**
     * Mean effective pressure of a power.
     *
     * @param power W
     * @param rpm crankshaft speed, above zero
     * @return Pa
     */
    public double meanEffectivePressure(double power, double rpm) {
        return power / displacementRate(rpm);
    }

    /**
     * Torque of a power.
     *
     * @param power W
     * @param rpm crankshaft speed, above zero
     * @return N m
     */
    public static double torque(double power, double rpm) {
        return power / (Math.PI * rpm / 30);
    }
}
