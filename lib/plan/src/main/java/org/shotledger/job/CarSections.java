package org.shotledger.job;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.CHARGE;
import static org.shotledger.units.QuantityKind.CURRENT;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TORQUE;

import java.util.Optional;
import org.shotledger.car.Electrical;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.MoistAir;
import org.shotledger.sheet.SheetSection;
import org.shotledger.wiring.Alternator;

/** Reads conditions, target, driveline and electrical supply. */
final class CarSections {
    private CarSections() {}

    static MoistAir conditions(SheetSection s) {
        double altitude = s.figure("altitude", LENGTH, -430, 5000);
        double temperature = s.figure("temperature", TEMPERATURE, 220, 340);
        double humidity = s.figure("humidity", FRACTION, 0, 1);
        if (s.has("station-pressure")) {
            double pressure = s.figure("station-pressure", ABSOLUTE_PRESSURE, 40e3, 110e3);
            return s.make(() -> new MoistAir(pressure, temperature, humidity));
        }
        return s.make(() -> MoistAir.atAltitude(altitude, temperature, humidity));
    }

    static Driveline driveline(SheetSection s) {
        String layout = s.text("layout");
        double loss = s.figure("loss", FRACTION, 0, 0.4);
        double drag = s.figureOr("drag-torque", TORQUE, 0, 100, 0, "all loss taken as proportional");
        return s.make(() -> new Driveline(layout, drag, loss));
    }

    static Electrical electrical(SheetSection s) {
        double alternator = s.figure("alternator", CURRENT, 10, 1000);
        double battery = s.figure("battery", CHARGE, 3600, 3_600_000);
        double idle = s.figureOr("idle-speed", ROTATION, 200, 5000, 900, "common practice, no source");
        if (!s.has("alternator-low")) {
            return s.make(() -> new Electrical(alternator, battery, Optional.empty(), idle));
        }
        double low = s.figure("alternator-low", CURRENT, 1, 1000);
        double ratio = s.figureOr("alternator-ratio", RATIO, 1, 5, 2.7, "common practice, no source");
        return s.make(
                () -> new Electrical(alternator, battery, Optional.of(new Alternator(low, alternator, ratio)), idle));
    }
}
