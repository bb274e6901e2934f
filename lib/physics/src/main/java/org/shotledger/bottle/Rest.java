package org.shotledger.bottle;

/** What happens to the closed bottle between two passes. */
public sealed interface Rest {
    /**
     * The bottle is brought to a temperature, however long that takes.
     *
     * @param temperature temperature of shell and contents at the next start, K
     */
    record BackTo(double temperature) implements Rest {
        @Override
        public Charge after(Charge charge) {
            return charge.bottle().charged(charge.mass(), temperature);
        }

        @Override
        public double seconds() {
            return Double.NaN;
        }
    }

    /**
     * The bottle stands for a time in given surroundings, heated or not.
     *
     * @param seconds time, s, above 0 to 1e7
     * @param heat surroundings and heater
     */
    record Timed(double seconds, HeatInput heat) implements Rest {
        @Override
        public Charge after(Charge charge) {
            return Emptying.of(charge, Outflow.none())
                    .withHeat(heat)
                    .withDuration(seconds)
                    .until()
                    .equilibrium()
                    .left();
        }
    }

    /**
     * The bottle after the rest.
     *
     * @param charge bottle and contents before
     * @return bottle and contents after
     */
    Charge after(Charge charge);

    /**
     * How long it takes.
     *
     * @return time, s; NaN when it takes as long as is needed ({@link HeaterTime} tells that)
     */
    double seconds();
}
