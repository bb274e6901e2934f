package org.shotledger.pass;

import java.util.List;
import org.shotledger.drive.Driveline;

/** An invented turbocharged car with a lagging turbocharger and a shot, for the tests of a whole pass. */
final class PassExample {
    static final RollingCar CAR =
            new RollingCar(1_620, 0.7, 0.015, RollingCar.Axle.REAR, 0.52, 2.7, 0.52, 0.33, 1.15, 2.4, 1.8);
    static final double LAG = 0.6;
    static final double SHOT = 75e3;

    private PassExample() {}

    static DrivenPass pass(Arming arming) {
        Transmission gears = new Transmission(
                List.of(3.62, 2.19, 1.54, 1.18, 1.00, 0.83),
                3.2,
                List.of(7_200.0, 7_200.0, 7_200.0, 7_200.0, 7_200.0, 7_500.0),
                0.25,
                new Driveline("rear drive", 5, 0.13),
                0.22,
                4_000);
        return new DrivenPass(CAR, gears, engine(), arming, bottle(), Strip.quarterMile(1.18), 0, 0.02);
    }

    static Arming arming() {
        return new Arming(3_500, 3_200, 7_000, 7_150, 5, 0.7, 0.5, 2, 0.1, 0.4, 0.6, true);
    }

    /** Torque over engine speed, half of it without boost; the shot adds power. */
    static PassEngine engine() {
        return new PassEngine() {
            @Override
            public double torque(double rpm, double throttleSeconds, double turbo, double nitrous) {
                double shape = Math.max(0.2, 1 - Math.pow((rpm - 4_800) / 5_200, 2));
                return 560 * shape * (0.5 + 0.5 * turbo) + nitrous * SHOT / (Math.PI * rpm / 30);
            }

            @Override
            public double turboAtStart() {
                return 0.3;
            }

            @Override
            public double turboRate(double rpm, double throttleSeconds, double turbo, double nitrous) {
                return TurboLag.firstOrder(turbo, throttleSeconds > 0 ? 1 : 0.8, LAG);
            }
        };
    }

    static NitrousSupply bottle() {
        return new NitrousSupply() {
            @Override
            public double massFlow(double used) {
                return 0.04 * strength(used);
            }

            @Override
            public double strength(double used) {
                return 1 - 0.1 * used;
            }
        };
    }
}
