package org.shotledger.engine;

/**
 * Slider-crank kinematics of an engine; angles in degrees after the top dead centre of combustion.
 *
 * @param engine the engine
 */
public record Crank(Engine engine) {
    /**
     * Piston travel from top dead centre.
     *
     * @param angle deg
     * @return m, 0 to the stroke
     */
    public double travel(double angle) {
        double a = engine.stroke() / 2;
        double l = engine.rodLength();
        double sin = Math.sin(Math.toRadians(angle));
        return l + a - a * Math.cos(Math.toRadians(angle)) - Math.sqrt(l * l - a * a * sin * sin);
    }

    /**
     * Cylinder volume.
     *
     * @param angle deg
     * @return m3
     */
    public double volume(double angle) {
        return engine.clearance() + Math.PI / 4 * engine.bore() * engine.bore() * travel(angle);
    }

    /**
     * Wall area that the gas touches: head and piston as flat discs, and the liner.
     *
     * @param angle deg
     * @return m2
     */
    public double area(double angle) {
        double bore = engine.bore();
        double head = engine.clearance() / (Math.PI / 4 * bore * bore);
        return Math.PI / 2 * bore * bore + Math.PI * bore * (travel(angle) + head);
    }
}
