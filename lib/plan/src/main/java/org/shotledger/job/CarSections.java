package org.shotledger.job;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.AREA;
import static org.shotledger.units.QuantityKind.CHARGE;
import static org.shotledger.units.QuantityKind.CURRENT;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TORQUE;

import java.util.List;
import org.shotledger.car.Controller;
import org.shotledger.car.Electrical;
import org.shotledger.car.Vehicle;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.MoistAir;
import org.shotledger.sheet.Section;

/** Reads conditions, target, driveline, vehicle, electrical supply and controller. */
final class CarSections {
    private CarSections() {}

    static MoistAir conditions(Section s) {
        double altitude = s.figure("altitude", LENGTH, -430, 5000);
        double temperature = s.figure("temperature", TEMPERATURE, 220, 340);
        double humidity = s.figure("humidity", FRACTION, 0, 1);
        if (s.has("station-pressure")) {
            double pressure = s.figure("station-pressure", ABSOLUTE_PRESSURE, 40e3, 110e3);
            return s.make(() -> new MoistAir(pressure, temperature, humidity));
        }
        return s.make(() -> MoistAir.atAltitude(altitude, temperature, humidity));
    }

    static Driveline driveline(Section s) {
        String layout = s.text("layout");
        double loss = s.figure("loss", FRACTION, 0, 0.4);
        double drag = s.figureOr("drag-torque", TORQUE, 0, 100, 0, "all loss taken as proportional");
        return s.make(() -> new Driveline(layout, drag, loss));
    }

    static Vehicle vehicle(Section s) {
        double mass = s.figure("mass", MASS, 100, 10_000);
        double drag = s.figure("drag-area", AREA, 0.1, 4);
        List<Double> gears = s.figures("gears", RATIO, 0.3, 10);
        double drive = s.figure("final-drive", RATIO, 1, 10);
        String tyres = s.text("tyres");
        double rolling = s.figureOr("rolling-resistance", RATIO, 0.002, 0.1, 0.013, "common practice, no source");
        return s.make(() -> new Vehicle(mass, drag, gears, drive, tyres, rolling));
    }

    static Electrical electrical(Section s) {
        double alternator = s.figure("alternator", CURRENT, 10, 1000);
        double battery = s.figure("battery", CHARGE, 3600, 3_600_000);
        return s.make(() -> new Electrical(alternator, battery));
    }

    static Controller controller(Section s) {
        int inputs = s.count("inputs", 0, 500);
        int inputsUsed = s.count("inputs-used", 0, 500);
        int outputs = s.count("outputs", 0, 500);
        int outputsUsed = s.count("outputs-used", 0, 500);
        int pulsing = s.count("pulsing-outputs", 0, 500);
        int pulsingUsed = s.countOr(
                "pulsing-outputs-used", 0, 500, Math.min(pulsing, outputsUsed), "taken as used first, the safe side");
        return s.make(() -> new Controller(inputs, inputsUsed, outputs, outputsUsed, pulsing, pulsingUsed));
    }
}
