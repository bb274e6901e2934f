package org.shotledger.bottle;

import java.util.SplittableRandom;

/** A bottle as somebody may really own it, or overfill it, with anything a jet may take; drawn from a seed. */
record RandomBottle(long seed, Charge charge, Outflow outflow, String jet, HeatInput heat, double seconds) {
    private static final double POUND = 0.45359237;
    private static final double LEGAL = 680;

    static RandomBottle of(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double volume = 1e-4 * Math.pow(600, random.nextDouble());
        double shell = random.nextInt(6) == 0 ? 0 : volume * (600 + 1400 * random.nextDouble());
        Bottle bottle = new Bottle(volume, shell, random.nextBoolean() ? 900 : 480);
        double temperature = 250 + 85 * random.nextDouble();
        Charge charge = charge(bottle, temperature, random);
        double gone = Math.pow(10, 4 * random.nextDouble());
        double flow = random.nextInt(8) == 0 ? 0 : Math.min(1000, charge.mass() / gone);
        int law = random.nextInt(3);
        Outflow outflow = law == 0 ? Outflow.constant(flow) : jet(flow, charge, law == 1 ? 1e5 : 4e5);
        return new RandomBottle(
                seed,
                charge,
                outflow,
                law + " " + flow,
                heat(random, temperature),
                Math.pow(10, 4 * random.nextDouble()));
    }

    /** From 0.2 lb to the legal fill; one in five is overfilled, up to what the equation of state covers. */
    private static Charge charge(Bottle bottle, double temperature, SplittableRandom random) {
        double volume = bottle.waterCapacity();
        double least = Math.min(0.2 * POUND, 0.5 * LEGAL * volume);
        double most = LEGAL * volume;
        if (random.nextInt(5) == 0) {
            double dense = Math.min(1200, 1130 - 3.6 * (temperature - 250)) * volume;
            return bottle.charged(most + (dense - most) * random.nextDouble(), temperature);
        }
        return bottle.charged(least * Math.pow(most / least, random.nextDouble()), temperature);
    }

    private static Outflow jet(double flow, Charge full, double behind) {
        double scale = Math.sqrt(full.outlet().density() * Math.max(1e5, full.pressure() - behind));
        return (time, outlet) -> flow * Math.sqrt(outlet.density() * Math.max(0, outlet.pressure() - behind)) / scale;
    }

    private static HeatInput heat(SplittableRandom random, double temperature) {
        HeatInput around = new HeatInput(
                random.nextInt(5) == 0 ? 0 : Math.pow(10, 6 * random.nextDouble()) * 0.99,
                random.nextInt(20) == 0 ? 9.9e5 : 40 * random.nextDouble(),
                temperature + 30 * random.nextGaussian(),
                0,
                0,
                0);
        if (random.nextInt(3) > 0) {
            return around;
        }
        double off = 3e6 + 6e6 * random.nextDouble();
        double power = random.nextInt(10) == 0 ? 9e5 : 1000 * random.nextDouble();
        return around.withHeater(power, off, off * (random.nextInt(4) == 0 ? 1 : 0.95));
    }

    Emptying task() {
        return Emptying.of(charge, outflow)
                .withHeat(heat)
                .withDuration(seconds)
                .withBand(45e5, 70e5)
                .throughVapour();
    }
}
