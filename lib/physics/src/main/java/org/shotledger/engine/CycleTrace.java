package org.shotledger.engine;

/** Pressure, temperature and burned fraction over crank angle of one cycle, for pictures. */
public final class CycleTrace {
    private final double[] angle;
    private final double[] volume;
    private final double[] pressure;
    private final double[] temperature;
    private final double[] burned;

    CycleTrace(int points) {
        angle = new double[points];
        volume = new double[points];
        pressure = new double[points];
        temperature = new double[points];
        burned = new double[points];
    }

    void set(int i, double at, double v, double p, double t, double x) {
        angle[i] = at;
        volume[i] = v;
        pressure[i] = p;
        temperature[i] = t;
        burned[i] = x;
    }

    /**
     * Crank angles.
     *
     * @return deg after top dead centre
     */
    public double[] angle() {
        return angle.clone();
    }

    /**
     * Cylinder volumes.
     *
     * @return m3
     */
    public double[] volume() {
        return volume.clone();
    }

    /**
     * Cylinder pressures.
     *
     * @return Pa
     */
    public double[] pressure() {
        return pressure.clone();
    }

    /**
     * Mean gas temperatures.
     *
     * @return K
     */
    public double[] temperature() {
        return temperature.clone();
    }

    /**
     * Burned fractions.
     *
     * @return 0 to 1
     */
    public double[] burned() {
        return burned.clone();
    }
}
