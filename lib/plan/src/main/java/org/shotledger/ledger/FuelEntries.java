package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import java.util.Optional;
import org.shotledger.car.FuelStreams;
import org.shotledger.car.SheetPaths;

/** The two fuels as they are supplied. */
final class FuelEntries {
    private FuelEntries() {}

    static void write(LedgerPen pen, Subject from) {
        FuelStreams fuels = from.fuels();
        pen.sheet(
                "fuel-temperature",
                "temperature of both fuels",
                "T_F",
                TEMPERATURE,
                fuels.temperature(),
                SheetPaths.FUEL_TEMPERATURE);
        pen.sheet(
                "main-evaporated",
                "main fuel evaporated in the intake",
                "",
                FRACTION,
                fuels.mainEvaporated(),
                SheetPaths.MAIN_EVAPORATED);
        pen.sheet(
                "oxide-evaporated",
                "nitrous oxide evaporated in the intake",
                "",
                FRACTION,
                fuels.warming().nitrousEvaporated(),
                SheetPaths.OXIDE_EVAPORATED);
        pen.sheet(
                "wall-heat",
                "share of the cooling by nitrous that walls make good",
                "",
                FRACTION,
                fuels.warming().wallShare(),
                SheetPaths.WALL_HEAT);
        Optional<FuelStreams.Blend> blend = fuels.blend();
        blend.ifPresent(b -> pen.given(
                        "ethanol",
                        "ethanol in the main fuel by volume",
                        "",
                        FRACTION,
                        from.at().ethanol().orElse(b.ethanol()),
                        SheetPaths.ETHANOL,
                        from.byCase())
                .enter());
        new FuelProperties(pen, "main-fuel", "main fuel", fuels.main(), blend).write(fuels.temperature());
        RailEntries.write(pen, from);
        if (!from.nitrous()) {
            pen.given("nitrous-fuel-flow", "nitrous fuel flow", "m_F", MASS_FLOW, 0, "", "the nitrous is not on")
                    .enter();
            return;
        }
        pen.sheet(
                "nitrous-evaporated",
                "nitrous fuel evaporated in the intake",
                "",
                FRACTION,
                fuels.nitrousEvaporated(),
                SheetPaths.NITROUS_EVAPORATED);
        Optional<FuelStreams.Blend> own = fuels.ownNitrous().isEmpty() ? blend : Optional.empty();
        new FuelProperties(pen, "nitrous-fuel", "nitrous fuel", fuels.nitrous(), own).write(fuels.temperature());
        FuelCircuitEntries.write(pen, from);
    }
}
