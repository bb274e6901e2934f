package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.display.Display;
import org.shotledger.limits.Limit;

/** Limits taken out of a set of them keep their units. */
class LimitListTest {

    @Test
    void aListOfLimitsIsTheTableOfThem() {
        List<Limit> some = Demo.PLAN.limits().all().subList(0, 2);
        String text = String.valueOf(Display.bundle(some).get(Display.TEXT));
        assertTrue(text.contains(some.get(0).name()), text);
        assertTrue(text.contains(some.get(1).name()), text);
        assertTrue(text.contains(" hp"), text);
        assertFalse(text.contains(String.valueOf((long) some.get(0).value())), text);
        assertEquals(
                Display.bundle(some.get(0)).get(Display.TEXT),
                Display.bundle(some.subList(0, 1)).get(Display.TEXT));
    }
}
