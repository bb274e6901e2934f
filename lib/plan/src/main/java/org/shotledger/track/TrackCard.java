package org.shotledger.track;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.curve.Bracket;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.StandardAtmosphere;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * What a tuner looks at between passes: the day, the bottle, and what a hotter hour changes.
 *
 * @param plan the plan
 * @param density of the air, kg/m3
 * @param densityAltitude height in the standard atmosphere at which the air is as thin, m
 * @param bottlePressure vapour pressure at the bottle temperature to aim at, Pa absolute
 * @param left passes that are left, by the nitrous oxide on the scale
 * @param hotter the same setup on the same day, hotter by {@link #HOTTER}
 */
public record TrackCard(
        Plan plan, double density, double densityAltitude, double bottlePressure, List<Left> left, Outcome hotter) {
    /** By how much the day gets hotter on the card, K: our choice, a morning and an afternoon. */
    public static final double HOTTER = 10;

    /** Warmest that a bottle is evaluated at, K: just below the critical temperature. */
    private static final double WARMEST = 308;

    /** Geometric altitudes between which a density is looked for, m: our choice within the standard atmosphere. */
    private static final double LOWEST = -1_000;

    private static final double HIGHEST = 10_900;

    public TrackCard {
        left = List.copyOf(left);
    }

    /**
     * Passes that a bottle still gives.
     *
     * @param charge nitrous oxide in it by the scale, kg
     * @param passes whole passes and the share of the one that is cut short, counted to one more than asked for
     */
    public record Left(double charge, double passes) {}

    /**
     * The card of a plan on the day of its target.
     *
     * @param plan the plan
     * @return the card
     */
    public static TrackCard of(Plan plan) {
        MoistAir air = plan.stated().at().air();
        double density = air.density();
        double altitude = density > StandardAtmosphere.density(LOWEST)
                ? LOWEST
                : Bracket.root(h -> StandardAtmosphere.density(h) - density, LOWEST, HIGHEST, 0.1);
        return new TrackCard(
                plan,
                density,
                altitude,
                NitrousOxide.saturationPressure(plan.setup().bottle().startTemperature()),
                left(plan),
                Evaluate.of(
                        plan.car(), hotterSetup(plan), hotterCase(plan.stated().at())));
    }

    private static List<Left> left(Plan plan) {
        List<Left> list = new ArrayList<>();
        double charge = plan.setup().bottle().charge();
        double used = plan.stated().pass().map(PassOutcome::massUsed).orElse(0.0);
        for (int i = 0; used > 0 && i <= plan.setup().passes().count() && charge > used / 2; i++) {
            Setup setup = plan.setup()
                    .withBottle(new BottleFill(charge, plan.setup().bottle().startTemperature()));
            Outcome outcome = i == 0
                    ? plan.stated()
                    : Evaluate.of(plan.car(), setup, plan.stated().at());
            double passes = outcome.pass().map(PassOutcome::given).orElse(0.0);
            list.add(new Left(charge, passes));
            charge -= used;
        }
        return list;
    }

    private static Case hotterCase(Case at) {
        MoistAir air = at.air();
        double temperature = air.temperature() + HOTTER;
        MoistAir wet = new MoistAir(air.pressure(), temperature, 1);
        // the same water in hotter air
        double humidity = Math.min(1, air.vapourPressure() / wet.vapourPressure());
        return at.named(at.name() + ", hotter").withAir(new MoistAir(air.pressure(), temperature, humidity));
    }

    /** No heater cools a bottle: in air that is warmer than the bottle is to be, it is as warm as the air. */
    private static Setup hotterSetup(Plan plan) {
        double air = plan.stated().at().air().temperature() + HOTTER;
        BottleFill fill = plan.setup().bottle();
        return plan.setup()
                .withBottle(new BottleFill(fill.charge(), Math.min(WARMEST, Math.max(fill.startTemperature(), air))));
    }
}
