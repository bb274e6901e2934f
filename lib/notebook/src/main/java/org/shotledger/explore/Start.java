package org.shotledger.explore;

import java.util.Optional;
import org.shotledger.engine.StandardAtmosphere;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.units.AbsolutePressure;
import org.shotledger.units.Amount;
import org.shotledger.units.GaugePressure;
import org.shotledger.units.QuantityKind;

/** Where the sliders stand for a plan as it is. */
final class Start {
    private Start() {}

    /** The plan's own position; what it has none of, such as jets without nitrous, is that of another position. */
    static Position of(Plan plan, Position otherwise) {
        return of(
                plan,
                new JetPair(otherwise.nitrousJet().value(), otherwise.fuelJet().value()));
    }

    /** The plan's own position, with jets that stand ready where it has none. */
    static Position of(Plan plan, JetPair ready) {
        Setup setup = plan.setup();
        Case at = plan.job().stated();
        Optional<JetPair> jets = setup.jets();
        JetPair pair = jets.orElse(ready);
        return new Position(
                plan,
                jets.isPresent(),
                new Amount(QuantityKind.BORE, pair.nitrousBore()),
                new Amount(QuantityKind.BORE, pair.fuelBore()),
                gauge(setup.boost().armed().highest()),
                gauge(setup.nitrousRegulator().basePressure()),
                new Amount(QuantityKind.TEMPERATURE, setup.bottle().startTemperature()),
                setup.retard(),
                ethanol(plan, at),
                new Amount(QuantityKind.TEMPERATURE, at.air().temperature()),
                new Amount(
                        QuantityKind.ALTITUDE,
                        StandardAtmosphere.altitude(at.air().pressure())),
                at.bottle());
    }

    static GaugePressure gauge(double pascals) {
        return new GaugePressure(pascals, AbsolutePressure.STANDARD_ATMOSPHERE);
    }

    private static double ethanol(Plan plan, Case at) {
        return at.ethanol()
                .orElse(plan.car().fuels().blend().map(blend -> blend.ethanol()).orElse(Double.NaN));
    }
}
