package org.shotledger.engine;

/** Volume and pressure over crank angle of one cycle, for pictures. */
public final class CycleTrace {
    private final double[] angle;
    private final double[] volume;
    private final double[] pressure;

    CycleTrace(int points) {
        angle = new double[points];
        volume = new double[points];
        pressure = new double[points];
    }

    void set(int i, double at, double v, double p) {
        angle[i] = at;
        volume[i] = v;
        pressure[i] = p;
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
}
