package org.shotledger.causes;

import java.util.OptionalDouble;
import java.util.Random;
import org.shotledger.fuel.Fuel;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.NitrousCircuit;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Factor;
import org.shotledger.supply.Regulator;

/** Faults of the trade, planted by changing the part that has them; sizes are drawn, 3 % and more. */
enum Plants {
    FUEL_JETS(Cause.FUEL_JETS) {
        @Override
        Planted plant(Planted p, Random r) {
            double bore = 1 + sign(r) * (0.025 + 0.035 * r.nextDouble());
            return p.setup(s -> s.withJets(new JetPair(
                    s.jets().orElseThrow().nitrousBore(),
                    bore * s.jets().orElseThrow().fuelBore())));
        }
    },
    NITROUS_JETS(Cause.NITROUS_JETS) {
        @Override
        Planted plant(Planted p, Random r) {
            double bore = 1 + sign(r) * (0.025 + 0.035 * r.nextDouble());
            return p.setup(s -> s.withJets(new JetPair(
                    bore * s.jets().orElseThrow().nitrousBore(),
                    s.jets().orElseThrow().fuelBore())));
        }
    },
    LAMBDA_SENSOR(Cause.LAMBDA_SENSOR) {
        @Override
        Planted plant(Planted p, Random r) {
            return p.lambda(1 + sign(r) * (0.03 + 0.03 * r.nextDouble()));
        }
    },
    REFERENCE(Cause.NITROUS_FUEL_REFERENCE) {
        @Override
        Planted plant(Planted p, Random r) {
            return p.setup(s -> s.withNitrousRegulator(new Regulator(
                    s.nitrousRegulator().name(), s.nitrousRegulator().basePressure(), 0)));
        }
    },
    FUEL_PRESSURE(Cause.NITROUS_FUEL_PRESSURE) {
        @Override
        Planted plant(Planted p, Random r) {
            double share = 1 + sign(r) * (0.06 + 0.1 * r.nextDouble());
            return p.setup(s -> s.withNitrousRegulator(new Regulator(
                    s.nitrousRegulator().name(),
                    share * s.nitrousRegulator().basePressure(),
                    s.nitrousRegulator().boostReference())));
        }
    },
    BOTTLE(Cause.BOTTLE) {
        @Override
        Planted plant(Planted p, Random r) {
            double colder = 3 + 6 * r.nextDouble();
            return p.setup(s ->
                    s.withBottle(new BottleFill(s.bottle().charge(), s.bottle().startTemperature() - colder)));
        }
    },
    PUMP(Cause.NITROUS_FUEL_PUMP) {
        @Override
        Planted plant(Planted p, Random r) {
            return p.pump(p.at().voltage() - 2 - 1.2 * r.nextDouble());
        }
    },
    SUPPLY(Cause.SUPPLY_VOLTAGE) {
        @Override
        Planted plant(Planted p, Random r) {
            return p.world(c -> c.withVoltage(c.voltage() - 1.5 - 2 * r.nextDouble()));
        }
    },
    BOOST(Cause.BOOST) {
        @Override
        Planted plant(Planted p, Random r) {
            double more = -(0.08 + 0.2 * r.nextDouble()) * 1e5;
            return p.setup(s -> s.withBoost(s.boost().map(g -> g + more)));
        }
    },
    WORK(Cause.ENGINE_WORK) {
        @Override
        Planted plant(Planted p, Random r) {
            return p.times(Factor.ENGINE_WORK, 0.97 - 0.05 * r.nextDouble());
        }
    },
    SOLENOID(Cause.NITROUS_SOLENOID) {
        @Override
        Planted plant(Planted p, Random r) {
            double left = 0.35 + 0.2 * r.nextDouble();
            return p.car(c -> c.with(kit(
                    c.nitrous(),
                    n -> new NitrousCircuit(
                            n.valve(),
                            n.hoseBore(),
                            n.hoseLength(),
                            n.filterLoss(),
                            new Solenoid(
                                    n.solenoid().bore() * Math.sqrt(left),
                                    n.solenoid().dischargeCoefficient(),
                                    n.solenoid().openingDelay(),
                                    n.solenoid().closingDelay()),
                            n.lineBore(),
                            n.lineLength(),
                            n.jet()))));
        }
    },
    FILTER(Cause.NITROUS_FILTER) {
        @Override
        Planted plant(Planted p, Random r) {
            double blocked = 0.8 + 0.1 * r.nextDouble();
            return p.car(c -> c.with(kit(c.nitrous(), n -> n.withFilterBlocked(blocked))));
        }
    },
    FUEL_FILTER(Cause.FUEL_RESTRICTED) {
        @Override
        Planted plant(Planted p, Random r) {
            double left = 0.3 + 0.2 * r.nextDouble();
            return p.car(c -> {
                Solenoid s = c.nitrous().fuel().solenoid();
                return c.with(c.nitrous()
                        .withFuel(c.nitrous()
                                .fuel()
                                .withSolenoid(new Solenoid(
                                        s.bore() * Math.sqrt(left),
                                        s.dischargeCoefficient(),
                                        s.openingDelay(),
                                        s.closingDelay()))));
            });
        }
    },
    CONTENT_FOLLOWED(Cause.FUEL_CONTENT) {
        @Override
        Planted plant(Planted p, Random r) {
            double share = p.car().fuels().blend().orElseThrow().ethanol() + sign(r) * (0.08 + 0.07 * r.nextDouble());
            return p.world(c -> c.withFuel(share));
        }
    },
    CONTENT_SAME_VOLUME(Cause.FUEL_CONTENT) {
        @Override
        Planted plant(Planted p, Random r) {
            double share = p.car().fuels().blend().orElseThrow().ethanol() + sign(r) * (0.08 + 0.07 * r.nextDouble());
            double t = p.car().fuels().temperature();
            Fuel was = p.car().fuels().main();
            Fuel is = p.car().fuels().with(OptionalDouble.of(share)).main();
            double metered = is.stoichiometricAirFuel() * is.density(t) / was.stoichiometricAirFuel() / was.density(t);
            return p.world(c -> c.withFuel(share)).times(Factor.MAIN_FUEL, metered);
        }
    },
    MAIN_FUEL(Cause.MAIN_FUEL) {
        @Override
        Planted plant(Planted p, Random r) {
            return p.times(Factor.MAIN_FUEL, 1 + sign(r) * (0.03 + 0.03 * r.nextDouble()));
        }
    },
    BOTTLE_GAUGE(Cause.BOTTLE_GAUGE) {
        @Override
        Planted plant(Planted p, Random r) {
            return p.bottleGauge(sign(r) * (3 + 3 * r.nextDouble()) * 1e5);
        }
    };

    private final Cause cause;

    Plants(Cause cause) {
        this.cause = cause;
    }

    Cause cause() {
        return cause;
    }

    abstract Planted plant(Planted p, Random r);

    private static double sign(Random r) {
        return r.nextBoolean() ? 1 : -1;
    }

    private static WetKit kit(WetKit kit, java.util.function.UnaryOperator<NitrousCircuit> change) {
        return new WetKit(
                kit.position(), kit.nozzles(), change.apply(kit.nitrous()), kit.fuel(), kit.ladder(), kit.passages());
    }
}
