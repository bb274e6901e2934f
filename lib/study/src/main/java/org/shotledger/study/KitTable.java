package org.shotledger.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Course;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Limit;
import org.shotledger.budget.LimitSheet;
import org.shotledger.build.Build;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.JetPair;

/** The flows of the wet kit for every setting of its own axes, each solved once by the budget's own code. */
final class KitTable {
    private static final double SAME_FLOW = 1e-9;
    private static final Set<String> FUEL_LIMITS = Set.of(Figures.PUMP, "fuel-solenoid", "fuel-passage", "fuel-cell");

    /**
     * One setting of the nitrous side.
     *
     * @param offset what it adds to the index
     * @param flow nitrous flow, choked, kg/s
     * @param temperature of the bottle, K
     * @param enthalpy of its liquid, J/kg
     * @param margin smallest margin of the limits that concern it alone
     * @param key the key of that limit
     */
    record Nitrous(long offset, double flow, double temperature, double enthalpy, double margin, String key) {}

    /**
     * One fuel circuit with every fuel jet.
     *
     * @param build the build with that circuit
     * @param course its course
     * @param jets fuel bores, m
     * @param offsets what each adds to the index
     */
    @SuppressWarnings("ArrayRecordComponent") // columns of a table, read only and never compared
    record Circuit(Build build, Course course, double[] jets, long[] offsets) {
        /** What a jet passes at a plenum pressure. */
        FuelFlow flow(int jet, double plenum) {
            return course.evaluator()
                    .nitrousFuel(course.conditions(), Demand.boost(plenum).with(new JetPair(jets[jet], jets[jet])));
        }

        /**
         * The flow at a plenum pressure over that at another: the same for every jet while the pump can follow, and where it
         * cannot a combination gets no figures.
         */
        DoubleUnaryOperator share(double reference) {
            double whole = flow(0, reference).massFlow();
            return plenum -> flow(0, plenum).massFlow() / whole;
        }

        boolean steady(double low, double high) {
            return Math.abs(flow(0, low).massFlow() / flow(0, high).massFlow() - 1) < SAME_FLOW;
        }

        /** The closest of the limits that a fuel jet answers for; far broken where the pump cannot hold the pressure. */
        Limit closest(int jet, FuelFlow passed) {
            JetPair pair = new JetPair(jets[jet], jets[jet]);
            double anyBottle = 5e6;
            return LimitSheet.ofKit(build, anyBottle, anyBottle, passed, pair).all().stream()
                    .filter(l -> FUEL_LIMITS.contains(l.key()))
                    .min(java.util.Comparator.comparingDouble(Limit::relativeMargin))
                    .orElseThrow();
        }
    }

    private final Space space;
    private final Courses courses;
    private final Map<Object, double[]> flows = new LinkedHashMap<>();

    KitTable(Space space, Courses courses) {
        this.space = space;
        this.courses = courses;
    }

    /** Every setting of the nitrous side under one engine side. */
    List<Nitrous> nitrous(long engine) {
        List<Nitrous> all = new ArrayList<>();
        Product settings = new Product(space, Role.NITROUS_SIDE, Role.NITROUS_JET);
        for (int i = 0; i < settings.size(); i++) {
            long offset = settings.offset(i);
            Combination combination = space.at(engine + offset);
            all.add(nitrous(offset, courses.of(combination), combination.jets()));
        }
        return all;
    }

    private Nitrous nitrous(long offset, Course course, JetPair pair) {
        Conditions at = course.conditions();
        Build build = course.evaluator().build();
        double plenum = at.air().pressure() + build.turbo().boostCeiling();
        double temperature = at.bottleLiquid().temperature();
        List<Object> same =
                List.of(build.wetKit().nitrous(), build.wetKit().nozzles(), pair.nitrousBore(), temperature, plenum);
        double[] solved = flows.computeIfAbsent(same, any -> {
            FeedFlow feed = course.evaluator().feed(at, Demand.boost(plenum).with(pair));
            return new double[] {choked(feed, pair), feed.jetInlet().pressure()};
        });
        FuelFlow none = new FuelFlow(0, plenum, plenum, Double.MAX_VALUE, false);
        Limit closest = LimitSheet.ofKit(
                        build, at.bottleLiquid().pressure(), solved[1], none, new JetPair(pair.nitrousBore(), 1e-6))
                .first()
                .orElseThrow();
        return new Nitrous(
                offset, solved[0], temperature, at.bottleLiquid().enthalpy(), closest.relativeMargin(), closest.key());
    }

    private static double choked(FeedFlow feed, JetPair pair) {
        if (!feed.choked()) {
            throw new StudyException("The nitrous flow through jets of " + 1e3 * pair.nitrousBore()
                    + " mm does not choke at full boost (" + feed.reason()
                    + "), so it has no table; warm the bottle, or evaluate these combinations one by one.");
        }
        return feed.massFlow();
    }

    /** Every fuel circuit under one engine side. */
    List<Circuit> circuits(long engine) {
        Product sides = new Product(space, Role.FUEL_SIDE);
        Product jets = new Product(space, Role.FUEL_JET);
        List<Circuit> all = new ArrayList<>();
        for (int s = 0; s < sides.size(); s++) {
            double[] bores = new double[jets.size()];
            long[] offsets = new long[jets.size()];
            Course course = courses.of(space.at(engine + sides.offset(s)));
            for (int j = 0; j < bores.length; j++) {
                offsets[j] = sides.offset(s) + jets.offset(j);
                bores[j] = space.at(engine + offsets[j]).jets().fuelBore();
            }
            all.add(new Circuit(course.evaluator().build(), course, bores, offsets));
        }
        return all;
    }
}
