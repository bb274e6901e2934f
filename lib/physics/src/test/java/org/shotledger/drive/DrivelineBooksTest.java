package org.shotledger.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.shotledger.units.AllowedRange;

/** Losses by hand: torque times angular speed, then a share. */
class DrivelineBooksTest {
    /** 12 N m at 3000 rpm, 100 pi rad/s, are 3770 W; of the rest 12 % are lost. */
    @Test
    void power_at_the_wheels() {
        Driveline d = new Driveline("rear drive", 12, 0.12);
        assertEquals((400e3 - 3769.9) * 0.88, d.wheelPower(400e3, 3000), 0.1);
        assertEquals(0, d.wheelPower(3769.9, 3000), 0.1, "the drag alone");
        assertEquals(400e3, d.brakePower((400e3 - 3769.9) * 0.88, 3000), 0.1);
        assertEquals(320e3, Driveline.proportional("x", 0.2).wheelPower(400e3, 6000), 1e-6);
    }

    @Test
    void ranges() {
        AllowedRange.check("drag torque of d", 0, 100, "N m", x -> new Driveline("d", x, 0.1));
        AllowedRange.check("proportional loss of d", 0, 0.4, "", x -> new Driveline("d", 10, x));
    }
}
