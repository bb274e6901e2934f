package org.shotledger.view;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.TornadoChart;
import org.shotledger.chart.TradeOffChart;
import org.shotledger.chart.TradeOffChart.Place;
import org.shotledger.confidence.Confidence;
import org.shotledger.study.Candidate;
import org.shotledger.study.Study;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Studies and confidence as charts. */
public final class StudyCharts {
    private StudyCharts() {}

    /**
     * What power costs in margin: the combinations a study lists, the one ranked first and the runner-up named.
     *
     * @param study the study
     * @param system the units
     * @return the picture
     */
    public static ChartPicture front(Study study, UnitSystem system) {
        Set<Candidate> all = new LinkedHashSet<>(study.best());
        all.addAll(study.front());
        List<TradeOffChart.Choice> choices = all.stream()
                .filter(candidate -> Double.isFinite(candidate.margin()))
                .map(candidate -> new TradeOffChart.Choice(
                        name(candidate, study, system),
                        candidate.wheelPower(),
                        candidate.margin(),
                        place(candidate, study, all)))
                .toList();
        return new TradeOffChart("Wheel power", QuantityKind.POWER, "Least margin", QuantityKind.FRACTION, choices)
                .picture(system);
    }

    private static String name(Candidate candidate, Study study, UnitSystem system) {
        return switch (study.best().indexOf(candidate)) {
            case 0 -> candidate.name(system);
            case 1 -> "runner-up: " + candidate.name(system);
            default -> "";
        };
    }

    private static Place place(Candidate candidate, Study study, Set<Candidate> all) {
        if (study.best().indexOf(candidate) == 0) {
            return Place.CHOSEN;
        }
        if (candidate.margin() < 0) {
            return Place.REJECTED;
        }
        boolean bettered = all.stream()
                .anyMatch(other -> other.wheelPower() > candidate.wheelPower() && other.margin() > candidate.margin());
        return bettered ? Place.BETTERED : Place.FRONT;
    }

    /**
     * What moves the wheel power of a plan most.
     *
     * @param confidence the confidence, with its influences
     * @param system the units
     * @return the picture
     */
    public static ChartPicture tornado(Confidence confidence, UnitSystem system) {
        List<TornadoChart.Input> inputs = confidence.influences().stream()
                .filter(of -> Math.abs(of.powerAtHigh() - of.powerAtLow()) > 1) // W: the others have no bar to see
                .map(of -> new TornadoChart.Input(of.unknown().name(), of.powerAtLow(), of.powerAtHigh()))
                .toList();
        return new TornadoChart(
                        "Wheel power",
                        QuantityKind.POWER,
                        confidence.stated().power().quantile(0.5),
                        inputs)
                .picture(system);
    }
}
