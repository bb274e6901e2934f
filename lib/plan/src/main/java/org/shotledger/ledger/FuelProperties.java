package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.DENSITY;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.SPECIFIC_ENERGY;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.shotledger.car.FuelStreams.Blend;
import org.shotledger.fuel.Fuel;
import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

/**
 * Properties of one fuel: published for a pure one, made from the ethanol content for a blend.
 *
 * @param pen writes them
 * @param key of the fuel
 * @param name of the fuel
 * @param fuel the fuel
 * @param blend what it is blended from, empty for one whose content cannot change
 */
record FuelProperties(LedgerPen pen, String key, String name, Fuel fuel, Optional<Blend> blend) {

    void write(double temperature) {
        property(
                "oxygen",
                "oxygen demand of the ",
                "s",
                RATIO,
                Fuel::oxygenDemand,
                "atom balance to carbon dioxide and water");
        property("heat", "lower heating value of the ", "H", SPECIFIC_ENERGY, Fuel::lowerHeatingValue, "property");
        var density = pen.calculated(
                        key + "-density",
                        "density of the " + name + ", " + fuel.name(),
                        "rho",
                        DENSITY,
                        fuel.density(temperature))
                .by("rho_15 / (1 + beta (T_F - 288.15 K))", fuel.source())
                .provenance(Provenance.PUBLISHED);
        if (blend.isPresent()) {
            density.on("fuel-temperature", "ethanol")
                    .from(x -> blend.get().at(x[1]).density(x[0]));
        } else {
            density.on("fuel-temperature").from(x -> fuel.density(x[0]));
        }
    }

    private void property(
            String what, String words, String symbol, QuantityKind kind, ToDoubleFunction<Fuel> read, String basis) {
        var entry = pen.calculated(key + "-" + what, words + name, symbol, kind, read.applyAsDouble(fuel))
                .by(basis, fuel.source())
                .provenance(Provenance.PUBLISHED);
        if (blend.isPresent()) {
            entry.on("ethanol").from(x -> read.applyAsDouble(blend.get().at(x[0])));
        } else {
            entry.enter();
        }
    }
}
