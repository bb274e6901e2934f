package org.shotledger.risk;

import java.util.List;
import java.util.Locale;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The most robust jetting: the nitrous jet, fuel jet and fuel pressure of the ladder that bear the largest
 * {@link Tolerance} of bottle, fuel pressure and boost inside every limit.
 *
 * <p>The boost table stays as planned. Of settings that bear the same the one that bears more of bottle and fuel
 * pressure alone is taken. No setting is leaner than the mixture the target wants with nitrous: room on the rich side is not to be
 * bought with room on the lean side. A setting becomes {@code meeting} only when
 * the whole plan with it, in every case, breaks no limit that the plan itself keeps. Fuel pressures from 2 to 6 bar in steps of a quarter bar: common practice, no source.
 *
 * @param asked wheel power asked for, W
 * @param plan the setting of the plan
 * @param meeting the most robust setting that still gives the power asked for and, in every case, breaks no limit that the plan keeps
 * @param byNitrousJet the most robust setting of each nitrous jet around the plan's, smallest jet first
 * @param band the expected bands in which a tolerance counts
 */
public record RobustJetting(double asked, Choice plan, Choice meeting, List<Choice> byNitrousJet, DriftBand band) {

    public RobustJetting {
        byNitrousJet = List.copyOf(byNitrousJet);
    }

    /**
     * One setting.
     *
     * @param jets jets of each nozzle
     * @param fuelPressure what the regulator of the nitrous fuel is set to, Pa gauge
     * @param lambda mixture at the point of most power
     * @param wheelPower most wheel power, W
     * @param minMargin smallest relative margin of all limits as planned
     * @param tolerance largest symmetric deviation of all three inputs, half-widths of their bands
     * @param boostHeld the same with the boost as planned
     * @param stoppedBy the limit that ends it
     * @param boostHeldStoppedBy the limit that ends it with the boost as planned
     */
    public record Choice(
            JetPair jets,
            double fuelPressure,
            double lambda,
            double wheelPower,
            double minMargin,
            double tolerance,
            double boostHeld,
            String stoppedBy,
            String boostHeldStoppedBy) {}

    /**
     * Searches the ladder around a plan.
     *
     * @param plan the plan
     * @return the settings
     */
    public static RobustJetting of(Plan plan) {
        return of(plan, DriftBand.of(Scenario.of(plan)));
    }

    /**
     * Searches the ladder around a plan with expected bands of one's own.
     *
     * @param plan the plan
     * @param band how far the inputs are expected to stray
     * @return the settings
     */
    public static RobustJetting of(Plan plan, DriftBand band) {
        return of(plan, Drift.of(plan, band));
    }

    /**
     * Searches the ladder with a drift that serves other questions too, so that what it has solved is not solved again.
     *
     * @param plan the plan
     * @param drift its drift
     * @return the settings
     */
    public static RobustJetting of(Plan plan, Drift drift) {
        return new RobustSearch(plan, drift).search();
    }

    /**
     * The answer in one line.
     *
     * @return plan and most robust setting, with what each bears and the price in power
     */
    public String summary() {
        return String.format(
                Locale.ROOT,
                "The plan, %s, bears %.2f half-widths of all bands at once (%s ends it) and %.2f with boost held; the most"
                        + " robust setting that gives the power asked for, %s, bears %.2f and %.2f and gives %s against %s. The band: %s."
                        + " An estimate, to be proven in small steps.",
                words(plan),
                plan.tolerance(),
                plan.stoppedBy(),
                plan.boostHeld(),
                words(meeting),
                meeting.tolerance(),
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
