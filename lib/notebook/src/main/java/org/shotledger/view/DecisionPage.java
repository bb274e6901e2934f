package org.shotledger.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shotledger.confidence.Chance;
import org.shotledger.confidence.Chances;
import org.shotledger.display.Units;
import org.shotledger.document.Cautions;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Reference;
import org.shotledger.document.Section;
import org.shotledger.engine.StandardAtmosphere;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.sheet.Problem;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** The first page of the customer's document: what is asked and proposed, how sure it is, what it needs, the next step. */
final class DecisionPage {
    /** A picture of this height leaves the page room for the rest, pixels. */
    private static final int HEIGHT = 160;

    private static final int CLOSEST = 3;
    private static final int MEASURED = 4;
    private static final int UNUSUAL = 2;

    private DecisionPage() {}

    static void write(DocumentContent.Builder builder, Evidence found, UnitSystem units) {
        Plan plan = found.plan();
        builder.fact(Section.DECISION, "Car", car(plan));
        builder.fact(Section.DECISION, "Asked", asked(plan));
        builder.fact(Section.DECISION, "Proposed", proposed(plan));
        builder.fact(Section.DECISION, "Chance", chance(found));
        List<Problem> unusual = plan.job().unusual();
        if (!unusual.isEmpty()) {
            builder.fact(Section.DECISION, "Unusual in the sheet", said(unusual));
        }
        var picture = Charts.budget(plan, HEIGHT, units);
        builder.picture(Section.DECISION, picture);
        builder.rows(
                Section.DECISION,
                LimitTables.brief("The " + CLOSEST + " closest limits", plan.closest(CLOSEST), units));
        builder.fact(Section.DECISION, "It needs", String.join("; ", needs(plan)) + ". " + parts(found));
        builder.fact(Section.DECISION, "Still to be measured, the most worth first", toMeasure(found, units));
        found.faults()
                .map(FaultAdvice::sentences)
                .filter(points -> !points.isEmpty())
                .ifPresent(points -> {
                    builder.fact(
                            Section.DECISION,
                            "What can still go wrong, and no fitted sensor ends in time",
                            "all faults in " + Reference.to(Section.RISKS) + ".");
                    builder.points(Section.DECISION, points);
                });
        builder.fact(Section.DECISION, "Cautions", cautions(plan));
        builder.fact(Section.DECISION, "Next step", next(plan));
        if (burnsMethanol(plan)) {
            builder.points(Section.CAUTIONS, List.of(Cautions.METHANOL));
        }
    }

    private static String cautions(Plan plan) {
        return Cautions.SHORT + (burnsMethanol(plan) ? " " + Cautions.METHANOL : "");
    }

    /** The unusual figures with their sentences; a page has room for a few. */
    private static String said(List<Problem> unusual) {
        String some = unusual.stream().limit(UNUSUAL).map(Problem::sentence).collect(Collectors.joining(" "));
        return unusual.size() <= UNUSUAL
                ? some
                : some + " And " + (unusual.size() - UNUSUAL) + " more: "
                        + unusual.stream().skip(UNUSUAL).map(Problem::field).collect(Collectors.joining(", ")) + ".";
    }

    /** What is built and where it runs, in one sentence. */
    private static String car(Plan plan) {
        var engine = plan.car().engine();
        var fuels = plan.car().fuels();
        var air = plan.stated().at().air();
        String fuel = plan.setup().jets().isEmpty()
                        || fuels.main().name().equals(fuels.nitrous().name())
                ? fuels.main().name()
                : fuels.main().name() + ", for the nitrous oxide "
                        + fuels.nitrous().name();
        return engine.cylinders() + " cylinders, " + Both.brief(QuantityKind.VOLUME, engine.displacement())
                + ", on " + fuel + "; at "
                + Both.brief(QuantityKind.ALTITUDE, StandardAtmosphere.altitude(air.pressure()))
                + " and " + Both.brief(QuantityKind.TEMPERATURE, air.temperature()) + ".";
    }

    /** What is asked, in one sentence. */
    static String asked(Plan plan) {
        var target = plan.target();
        return Both.brief(QuantityKind.POWER, target.wheelPower()) + " at the wheels between "
                + QuantityKind.ROTATION.number(target.rpmLow(), UnitSystem.US) + " and "
                + QuantityKind.ROTATION.text(target.rpmHigh(), UnitSystem.US) + " under the conditions named '"
                + target.conditions() + "'; " + target.passes() + " passes from one bottle, "
                + Units.printed(QuantityKind.TIME.brief(target.passSeconds(), UnitSystem.US))
                + " under nitrous oxide in each.";
    }

    /** What is proposed and what it gives, in one sentence. */
    static String proposed(Plan plan) {
        String gives = plan.stated()
                .strongest()
                .map(best -> Both.brief(QuantityKind.POWER, best.wheelPower()) + " at "
                        + QuantityKind.ROTATION.text(best.rpm(), UnitSystem.US) + " from "
                        + Both.brief(QuantityKind.GAUGE_PRESSURE, best.gaugePressure()) + " of boost")
                .orElse("no power that the models can tell");
        return gives + jets(plan) + ".";
    }

    private static String jets(Plan plan) {
        if (plan.setup().jets().isEmpty()) {
            return " alone; the nitrous is not used";
        }
        JetPair pair = plan.setup().jets().get();
        int nozzles = plan.car().nitrous().nozzles();
        return " and " + nozzles + (nozzles == 1 ? " nozzle " : " nozzles ")
                + plan.car().nitrous().position().words() + " with jets of "
                + Both.of(QuantityKind.BORE, pair.nitrousBore())
                + " for nitrous oxide and " + Both.of(QuantityKind.BORE, pair.fuelBore()) + " for its fuel";
    }

    /** How likely it is, with the bands of all that is not known; the verdict alone says what happens at the best figures. */
    private static String chance(Evidence found) {
        return found.chances()
                .map(sure -> {
                    Chances stated = sure.stated();
                    return share(stated.both()) + " that the power is reached inside every limit in all "
                            + found.plan().outcomes().size()
                            + " cases, with everything that is not known drawn from its band ("
                            + share(stated.reach()) + " to reach it, " + share(stated.keep())
                            + " to keep every limit); the power lies between "
                            + QuantityKind.POWER.number(stated.power().quantile(0.05), UnitSystem.US) + " and "
                            + QuantityKind.POWER.text(stated.power().quantile(0.95), UnitSystem.US)
                            + " nine times out of ten. The verdict above is that of the best figures.";
                })
                .orElse("not told: at the ends of what is not known the models have no answer for this car.");
    }

    /** Whole per cent: the draws carry no more. */
    private static String share(Chance chance) {
        double percent = 100 * chance.probability();
        return percent < 1
                ? "less than 1 %"
                : percent > 99 ? "more than 99 %" : String.format(Locale.ROOT, "%.0f %%", percent);
    }

    static List<String> needs(Plan plan) {
        List<String> needs = new ArrayList<>();
        Setup setup = plan.setup();
        needs.add("a boost control that holds the table of the setup"
                + (setup.boost().off().equals(setup.boost().armed())
                        ? ""
                        : ", another one with the nitrous armed than with it off"));
        if (setup.jets().isPresent()) {
            needs.add(Both.brief(QuantityKind.MASS, setup.bottle().charge())
                    + " of nitrous oxide by the scale, held at "
                    + Both.brief(QuantityKind.TEMPERATURE, setup.bottle().startTemperature()));
            needs.add("spark later by " + QuantityKind.CRANK_ANGLE.text(setup.retard(), UnitSystem.US)
                    + " while it flows, less or more only by the step-up plan");
        }
        plan.moved().forEach(needs::add);
        plan.limits().broken().forEach(limit -> needs.add("an answer to '" + limit.name() + "': " + figures(limit)));
        return needs;
    }

    private static String figures(Limit limit) {
        return Both.brief(limit.kind(), limit.value()) + " against " + Both.brief(limit.kind(), limit.bound())
                + (limit.hard() ? "; " + limit.remedy() : "");
    }

    /** How much is to be bought, with the money where the sheet gives prices. */
    private static String parts(Evidence found) {
        var open = found.jobs().open();
        if (open.isEmpty()) {
            return "Every part of the job list is fitted.";
        }
        double cost = found.jobs().cost(open);
        String money = cost > 0
                ? ", " + Math.round(cost) + " " + found.jobs().currency() + " where the sheet gives a price ("
                        + found.jobs().unpriced(open) + " have none)"
                : "";
        return "Of the job list " + open.size() + (open.size() == 1 ? " item is" : " items are") + " open" + money
                + ": " + Reference.to(Section.MECHANIC) + ".";
    }

    /** A figure to be measured, and how much less the power is open afterwards, W; not-a-number where the models lose their answer. */
    private record Worth(String what, double power) {}

    private static String toMeasure(Evidence found, UnitSystem units) {
        List<Worth> worth = new ArrayList<>();
        found.advice().tests().stream()
                .filter(test -> test.seconds() > 0)
                .forEach(test -> worth.add(
                        new Worth("flow test of the " + test.side().words(), test.powerNow() - test.powerAfter())));
        found.plan()
                .estimates()
                .forEach(one -> worth.add(new Worth(
                        one.path().replace('.', ' ').replace('-', ' '),
                        Math.abs(one.power()) * found.plan().stated().power())));
        worth.sort(Comparator.comparingDouble(Worth::power).reversed());
        if (worth.isEmpty()) {
            return "nothing that the sheet marks as estimated.";
        }
        String first = worth.stream()
                .limit(MEASURED)
                .map(one -> one.what()
                        + (Double.isNaN(one.power()) ? "" : " (" + QuantityKind.POWER.text(one.power(), units) + ")"))
                .collect(Collectors.joining(", "));
        return first + (worth.size() > MEASURED ? " and " + (worth.size() - MEASURED) + " more" : "")
                + "; in brackets how much open power a test of it settles. How: "
                + Reference.to(Section.STEP_UP) + ".";
    }

    /** What to do now; a setup that breaks a limit is not run. */
    static String next(Plan plan) {
        if (plan.verdict() == Verdict.BROKEN && plan.parts().verdict() != Verdict.BROKEN) {
            return "This setup keeps every limit and gives less than is asked"
                    + plan.stopped()
                            .map(what -> ", as more is stopped by " + what)
                            .orElse("")
                    + ". Change what is asked or what is built and plan anew, or agree on less.";
        }
        if (plan.verdict() == Verdict.BROKEN) {
            return "Do not run this setup: it breaks "
                    + String.join(
                            ", ",
                            plan.limits().broken().stream().map(Limit::name).toList())
                    + ". Change what is asked or what is built, and plan anew.";
        }
        return plan.setup().jets().isEmpty()
                ? "Set the boost table, watch mixture and knock, and raise the boost to it in steps."
                : "Prove the boost table with the bottle closed; then fit the smallest jets of the step-up plan and go"
                        + " on only while every figure read lies inside its band.";
    }

    private static boolean burnsMethanol(Plan plan) {
        return plan.car().fuels().main().name().contains("methanol")
                || plan.car().fuels().nitrous().name().contains("methanol");
    }
}
