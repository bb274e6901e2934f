package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.shotledger.car.Car;
import org.shotledger.engine.Intake;
import org.shotledger.engine.NitrousFactor;
import org.shotledger.evaluate.Bottles;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * What is true while a plan is run: the car as it really is, what is really set, and the cases with what the models are wrong by.
 *
 * @param sheet the job whose sheet the next changed figure is written into
 * @param car what is built
 * @param setup what is set
 * @param cases the cases in which the plan must hold, that of the target first
 */
public record World(Job sheet, Car car, Setup setup, List<Case> cases) {

    public World {
        cases = List.copyOf(cases);
    }

    /**
     * The world as the plan takes it to be.
     *
     * @param plan the plan
     * @return the world
     */
    public static World of(Plan plan) {
        return new World(plan.job(), plan.car(), plan.setup(), plan.job().cases());
    }

    /**
     * The same with every case changed.
     *
     * @param change what happens to a case
     * @return the changed world
     */
    public World withCases(UnaryOperator<Case> change) {
        return new World(sheet, car, setup, cases.stream().map(change).toList());
    }

    /**
     * The same with something else set.
     *
     * @param other what is set
     * @return the changed world
     */
    public World with(Setup other) {
        return new World(sheet, car, other, cases);
    }

    /**
     * The same with another share of the nitrous work arriving.
     *
     * @param value factor on the share of the car's model; the result within 0.5 to 1.1
     * @return the changed world
     */
    public World withNitrousWork(double value) {
        NitrousFactor was = car.model().nitrous();
        double share = value * was.value();
        NitrousFactor is = new NitrousFactor(share, Math.min(was.low(), share), Math.max(was.high(), share));
        return new World(sheet, car.with(car.model().with(is)), setup, cases);
    }

    /**
     * The same with the charge as warm as it may be.
     *
     * @param place in the band: -1 is everything evaporated and no wall heat, 0 the usual, 1 the warm end
     * @return the changed world
     */
    public World withWarming(double place) {
        Intake.Warming usual = Intake.Warming.USUAL;
        Intake.Warming end = place < 0 ? Intake.Warming.NONE : Intake.Warming.WARM;
        double share = Math.abs(place);
        Intake.Warming is = new Intake.Warming(
                usual.nitrousEvaporated() + share * (end.nitrousEvaporated() - usual.nitrousEvaporated()),
                usual.wallShare() + share * (end.wallShare() - usual.wallShare()));
        return new World(sheet, car.with(car.fuels().with(is)), setup, cases);
    }

    /**
     * The same with one figure of the sheet: the car is read and calibrated anew but for its share of the nitrous work and the warming of its charge, what the sheet sets or says of the air and moves
     * with the figure moves here too, and the plan's boost and jets stay.
     *
     * @param path place in the sheet
     * @param text number and unit
     * @return the changed world
     */
    public World with(String path, String text) {
        Job other = sheet.with(path, text);
        Setup was = sheet.setup();
        Setup is = other.setup();
        Setup moved = is.mixture() == was.mixture() ? setup : setup.withMixture(is.mixture());
        moved = is.retard() == was.retard() ? moved : moved.withRetard(is.retard());
        moved = is.bottle().equals(was.bottle()) ? moved : moved.withBottle(is.bottle());
        moved = is.mainRegulator().equals(was.mainRegulator()) ? moved : moved.withMainRegulator(is.mainRegulator());
        if (is.ownRegulator().isPresent() && !is.ownRegulator().equals(was.ownRegulator())) {
            moved = moved.withNitrousRegulator(is.nitrousRegulator());
        }
        Car read = other.car().with(other.car().model().with(car.model().nitrous()));
        Intake.Warming warming = car.fuels().warming();
        if (!warming.equals(sheet.car().fuels().warming())) {
            read = read.with(read.fuels().with(warming));
        }
        return new World(other, read, moved, moved(other));
    }

    private List<Case> moved(Job other) {
        List<Case> moved = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            Case at = cases.get(i);
            if (i < sheet.cases().size() && i < other.cases().size()) {
                Case was = sheet.cases().get(i);
                Case is = other.cases().get(i);
                at = is.air().equals(was.air()) ? at : at.withAir(is.air());
                at = is.voltage() == was.voltage() ? at : at.withVoltage(is.voltage());
            }
            moved.add(at);
        }
        return moved;
    }

    /**
     * Runs it, exactly.
     *
     * @param bottles bottles shared with other worlds
     * @return one outcome a case, in their order, without the seconds of the pass
     */
    public List<Outcome> outcomes(Bottles bottles) {
        return Evaluate.judged(bottles, car, setup, cases);
    }
}
