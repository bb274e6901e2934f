package org.shotledger.bottle;

/**
 * What one pass takes from the bottle and what must hold while it does.
 *
 * @param outflow what is taken
 * @param seconds time of a pass under nitrous, s, above 0 to 1e4
 * @param band bottle pressures between which it counts
 * @param heat heat during the pass
 * @param rest what follows each pass
 * @param model model of the bottle
 * @param rows time between rows of each pass's history, s; zero for the integrator's own steps
 */
public record PassTask(
        Outflow outflow, double seconds, WorkingBand band, HeatInput heat, Rest rest, BottleModel model, double rows) {
    private static final double LONGEST = 1e4;

    /**
     * Checks the time.
     *
     * @throws IllegalArgumentException when it lies outside its range
     */
    public PassTask {
        if (!(seconds > 0 && seconds <= LONGEST)) {
            throw new IllegalArgumentException(
                    "Pass: the time is " + seconds + " s; allowed are above 0 to " + LONGEST + " s.");
        }
    }

    /**
     * A pass whose bottle is brought back to a temperature after each; the model is the bottle's own ({@link BottleModel#of}).
     *
     * @param bottle the bottle
     * @param outflow what is taken
     * @param seconds time of a pass, s
     * @param band working band
     * @param air temperature of the air, K
     * @param temperature temperature at each further start, K
     * @return the task
     */
    public static PassTask of(
            Bottle bottle, Outflow outflow, double seconds, WorkingBand band, double air, double temperature) {
        return new PassTask(
                outflow,
                seconds,
                band,
                HeatInput.surroundings(air),
                new Rest.BackTo(temperature),
                BottleModel.of(bottle),
                0);
    }

    /**
     * The same with another rest.
     *
     * @param value what follows each pass
     * @return new task
     */
    public PassTask withRest(Rest value) {
        return new PassTask(outflow, seconds, band, heat, value, model, rows);
    }

    /**
     * The same with evenly spaced rows.
     *
     * @param spacing time between rows, s
     * @return new task
     */
    public PassTask withRows(double spacing) {
        return new PassTask(outflow, seconds, band, heat, rest, model, spacing);
    }

    /**
     * Runs one pass; it ends early where the band is left or the siphon draws vapour.
     *
     * @param charge bottle and contents at its start
     * @return the pass
     */
    public Pass run(Charge charge) {
        History history = model.run(Emptying.of(charge, outflow)
                .withHeat(heat)
                .withBand(band.low(), band.high())
                .withDuration(seconds)
                .withRows(rows)
                .until(
                        BottleEvent.Kind.LIQUID_UNCOVERED,
                        BottleEvent.Kind.PRESSURE_BELOW,
                        BottleEvent.Kind.PRESSURE_ABOVE));
        return new Pass(charge, history, PassEnd.of(history));
    }
}
