package org.shotledger.risk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.budget.Budget;
import org.shotledger.nitrous.JetPair;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The most forgiving jetting: the nitrous jet, fuel jet and fuel pressure of the ladder that bear the largest
 * {@link Excursion} of bottle, fuel pressure and boost inside every limit.
 *
 * <p>The boost table stays as planned. Of settings that bear the same excursion the one that bears more of bottle and fuel
 * pressure alone is taken. No setting is leaner than the mixture the tune wants with nitrous: room on the rich side is not to be
 * bought with room on the lean side. Fuel pressures from 2 to 6 bar in steps of a quarter bar: common practice, no source.
 *
 * @param wish wheel power asked for, W
 * @param plan the setting of the plan
 * @param meeting the most forgiving setting that still meets the wish
 * @param byNitrousJet the most forgiving setting of each nitrous jet around the plan's, smallest jet first
 * @param band the expected bands in which an excursion counts
 */
public record Forgiving(double wish, Choice plan, Choice meeting, List<Choice> byNitrousJet, DriftBand band) {

    /** Copies the list. */
    public Forgiving {
        byNitrousJet = List.copyOf(byNitrousJet);
    }

    /**
     * One setting.
     *
     * @param jets jets of each nozzle
     * @param fuelPressure what the regulator of the nitrous fuel is set to, Pa gauge
     * @param lambda mixture at the point of most power
     * @param wheelPower most wheel power, W
     * @param leastMargin smallest relative margin of all limits as planned
     * @param excursion largest symmetric excursion of all three inputs, half-widths of their bands
     * @param boostHeld the same with the boost as planned
     * @param stoppedBy the limit that ends the excursion
     * @param boostHeldStoppedBy the limit that ends it with the boost as planned
     */
    public record Choice(
            JetPair jets,
            double fuelPressure,
            double lambda,
            double wheelPower,
            double leastMargin,
            double excursion,
            double boostHeld,
            String stoppedBy,
            String boostHeldStoppedBy) {}

    /**
     * Searches the ladder around a budget's plan.
     *
     * @param budget the budget
     * @return the settings
     */
    public static Forgiving of(Budget budget) {
        return of(budget, DriftBand.of(budget.build()));
    }

    /**
     * Searches the ladder around a budget's plan with expected bands of one's own.
     *
     * @param budget the budget
     * @param band how far the inputs are expected to stray
     * @return the settings
     */
    public static Forgiving of(Budget budget, DriftBand band) {
        return of(budget, Drift.of(budget, band));
    }

    /**
     * Searches the ladder with a drift that serves other questions too, so that what it has solved is not solved again.
     *
     * @param budget the budget
     * @param drift its drift
     * @return the settings
     */
    public static Forgiving of(Budget budget, Drift drift) {
        return new ForgivingSearch(budget, drift).search();
    }

    /**
     * The most forgiving setting that keeps a share of the wish.
     *
     * @param share share of the wished wheel power, 0 to 1
     * @return the setting, or empty when none of the searched jets gives that much
     */
    public Optional<Choice> keeping(double share) {
        return java.util.stream.Stream.concat(byNitrousJet.stream(), java.util.stream.Stream.of(meeting))
                .filter(c -> c.wheelPower() >= share * wish)
                .max(java.util.Comparator.comparingDouble(Choice::excursion).thenComparingDouble(Choice::boostHeld));
    }

    /**
     * The answer in one line.
     *
     * @return plan and most forgiving setting, with what each bears and the price in power
     */
    public String summary() {
        return String.format(
                Locale.ROOT,
                "The plan, %s, bears %.2f half-widths of all bands at once (%s ends it) and %.2f with boost held; the most"
                        + " forgiving setting that meets the wish, %s, bears %.2f and %.2f and gives %s against %s. The band: %s."
                        + " An estimate, to be proven in small steps.",
                words(plan),
                plan.excursion(),
                plan.stoppedBy(),
                plan.boostHeld(),
                words(meeting),
                meeting.excursion(),
                meeting.boostHeld(),
                QuantityKind.POWER.text(meeting.wheelPower(), UnitSystem.US),
                QuantityKind.POWER.text(plan.wheelPower(), UnitSystem.US),
                band.basis());
    }

    private static String words(Choice c) {
        return QuantityKind.BORE.text(c.jets().nitrousBore(), UnitSystem.US) + " nitrous and "
                + QuantityKind.BORE.text(c.jets().fuelBore(), UnitSystem.US) + " fuel at "
                + QuantityKind.GAUGE_PRESSURE.text(c.fuelPressure(), UnitSystem.SI);
    }
}
