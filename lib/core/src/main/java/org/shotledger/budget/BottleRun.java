package org.shotledger.budget;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.bottle.Charge;
import org.shotledger.bottle.Emptying;
import org.shotledger.bottle.History;
import org.shotledger.bottle.Outflow;
import org.shotledger.build.BottleSheet;
import org.shotledger.build.Build;

/** Empties the bottle through the chosen jets and counts passes. */
final class BottleRun {
    private static final double ROW = 1;

    private final Evaluator evaluator;
    private final Evaluation peak;
    private final Outflow draw;

    BottleRun(Evaluator evaluator, Evaluation peak) {
        this.evaluator = evaluator;
        this.peak = peak;
        this.draw = draw(evaluator, peak);
    }

    /** What the chosen jets take at the power peak. */
    static Outflow draw(Evaluator evaluator, Evaluation peak) {
        Build build = evaluator.build();
        return Outflow.tabulated(
                build.wetKit()
                        .nitrous()
                        .path(
                                build.wetKit().nozzles(),
                                peak.demand().jets().orElseThrow().nitrousBore()),
                peak.demand().plenumPressure());
    }

    BottlePlan plan(Wish wish) {
        BottleSheet sheet = evaluator.build().bottle();
        Charge full = sheet.vessel().charged(sheet.charge(), sheet.startTemperature());
        History history = empty(full).equilibrium();
        double seconds = history.usableUntil();
        return new BottlePlan(
                sheet.charge(),
                sheet.startTemperature(),
                full.pressure(),
                seconds,
                history.first().mass() - history.at(seconds).mass(),
                passes(sheet, wish.passSeconds()),
                moments(history));
    }

    private Emptying empty(Charge charge) {
        return Emptying.of(charge, draw)
                .withRows(ROW)
                .withPressureLimit(evaluator.build().limits().bottlePressureLow());
    }

    /** Full passes, the bottle brought back between them to its start temperature or as far as its heater heats. */
    private int passes(BottleSheet sheet, double seconds) {
        double mass = sheet.charge();
        int passes = 0;
        while (seconds > 0 && passes < 100) {
            double temperature = passes == 0 ? sheet.startTemperature() : sheet.reheatedTemperature();
            History history = empty(sheet.vessel().charged(mass, temperature))
                    .withDuration(seconds)
                    .equilibrium();
            if (history.usableUntil() < seconds * (1 - 1e-9)) {
                return passes;
            }
            mass -= history.massUsed();
            passes++;
        }
        return passes;
    }

    private List<BottlePlan.Moment> moments(History history) {
        List<BottlePlan.Moment> rows = new ArrayList<>();
        for (var moment : history.moments()) {
            if (moment.liquidMass() <= 0) {
                break;
            }
            Evaluation then = evaluator.at(
                    peak.conditions().withBottleTemperature(moment.temperature()), peak.rpm(), peak.demand());
            rows.add(new BottlePlan.Moment(
                    moment.time(),
                    moment.temperature(),
                    moment.pressure(),
                    moment.liquidMass(),
                    then.nitrous().massFlow(),
                    then.lambda(),
                    then.wheelPower()));
        }
        return rows;
    }
}
