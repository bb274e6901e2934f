package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.plan.Plan;
import org.shotledger.supply.Regulator;

/**
 * What boost does to the mixture with the nitrous fuel regulator referenced to boost and without.
 *
 * <p>Both regulators are set so that they give the planned fuel flow at the planned boost. From there the choked nitrous flow
 * stays, the referenced jet keeps its pressure drop, and the unreferenced one loses what the plenum gains:
 * {@code m/m0 = sqrt((drop0 - shift)/drop0)} (incompressible orifice).
 *
 * @param rpm engine speed, rev/min
 * @param planPlenumPressure planned plenum pressure there, Pa absolute
 * @param drop planned pressure drop from rail to nozzle, Pa
 * @param rows one row a change of boost, ascending
 */
public record BoostReference(double rpm, double planPlenumPressure, double drop, List<Row> rows) {
    /** Boost that is asked more or less of, Pa: our choice, some 12 psi. */
    private static final double FURTHEST = 0.8e5;

    private static final int POINTS = 17;

    public BoostReference {
        rows = List.copyOf(rows);
    }

    /**
     * One change of boost. Values are NaN where the models have no answer, for example beyond the compressor map.
     *
     * @param boostShift plenum pressure above the planned one, Pa
     * @param nitrousFlow nitrous oxide, kg/s
     * @param referencedFuel nitrous fuel with boost reference, kg/s
     * @param unreferencedFuel nitrous fuel without, kg/s
     * @param referencedLambda mixture with boost reference
     * @param unreferencedLambda mixture without
     * @param referencedSafe true when every limit is kept at this speed with boost reference
     * @param unreferencedSafe true when every limit is kept at this speed without
     */
    public record Row(
            double boostShift,
            double nitrousFlow,
            double referencedFuel,
            double unreferencedFuel,
            double referencedLambda,
            double unreferencedLambda,
            boolean referencedSafe,
            boolean unreferencedSafe) {}

    /**
     * Compares both at the lowest examined speed, where the planned boost leaves the most room above, from 0.8 bar below to 0.8 bar
     * above it.
     *
     * @param plan the plan
     * @return the comparison
     */
    public static BoostReference of(Plan plan) {
        return of(plan, DriftMap.grid(-FURTHEST, FURTHEST, POINTS));
    }

    /**
     * Compares both at the lowest examined speed.
     *
     * @param plan the plan
     * @param boostShifts changes of plenum pressure, Pa, ascending
     * @return the comparison
     */
    public static BoostReference of(Plan plan, List<Double> boostShifts) {
        BoostLine.Stop lowest = BoostLine.of(plan).stops().get(0);
        double rpm = lowest.rpm();
        double plenum = lowest.plenumPressure();
        double ambient = plan.stated().at().air().pressure();
        Scenario sound = Scenario.of(plan);
        Regulator own = sound.setup().nitrousRegulator();
        double drop = own.dropIntoPlenum(ambient, plenum);
        Scenario with = sound.withRegulator(new Regulator(own.name(), drop, 1));
        Scenario without = sound.withRegulator(new Regulator(own.name(), drop + plenum - ambient, 0));
        BoostLine line = BoostLine.at(rpm, plenum);
        List<Row> rows = new ArrayList<>();
        for (double shift : boostShifts) {
            rows.add(row(
                    shift,
                    Simulation.run(with.withBoostShift(shift), line),
                    Simulation.run(without.withBoostShift(shift), line)));
        }
        return new BoostReference(rpm, plenum, drop, rows);
    }

    private static Row row(double shift, FaultOutcome with, FaultOutcome without) {
        return new Row(
                shift,
                with.peak().map(e -> e.nitrous().massFlow()).orElse(Double.NaN),
                with.peak().map(e -> e.nitrousFuel().massFlow()).orElse(Double.NaN),
                without.peak().map(e -> e.nitrousFuel().massFlow()).orElse(Double.NaN),
                with.lambda(),
                without.lambda(),
                with.safe(),
                without.safe());
    }
}
