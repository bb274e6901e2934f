package org.shotledger.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DrivelineTest {
    @Test
    void power_comes_back_through_the_losses() {
        Driveline d = new Driveline("rear drive", 12, 0.12);
        for (double rpm = 2000; rpm <= 8000; rpm += 500) {
            assertEquals(4e5, d.brakePower(d.wheelPower(4e5, rpm), rpm), 1e-6);
            assertTrue(d.wheelPower(4e5, rpm) < 4e5 * 0.88);
        }
        var thrown = assertThrows(IllegalArgumentException.class, () -> new Driveline("x", 0, 0.9));
        assertTrue(thrown.getMessage().startsWith("The proportional loss of x is 0.9"), thrown.getMessage());
    }
}
