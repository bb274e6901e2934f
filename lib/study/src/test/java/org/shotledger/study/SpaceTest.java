package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.units.UnitSystem;

class SpaceTest {
    private static final Space SPACE = DemoSpace.SPACE;

    @Test
    void everyIndexIsAnotherSetup() {
        Set<Setup> setups = new HashSet<>();
        for (long i = 0; i < SPACE.size(); i++) {
            setups.add(SPACE.setup(i));
        }
        assertEquals(2 * 3 * 3 * 2, SPACE.size());
        assertEquals(SPACE.size(), setups.size());
    }

    @Test
    void setupsHaveTheValuesThatTheirIndexSays() {
        for (long i = 0; i < SPACE.size(); i++) {
            Setup setup = SPACE.setup(i);
            SPACE.values(i).forEach((axis, value) -> {
                if (axis != Axis.BOOST_FACTOR) {
                    assertEquals(value, axis.of(setup), 1e-12 * Math.abs(value), axis.words());
                }
            });
        }
    }

    @Test
    void valuesMayBeInAnyUnit() {
        Space millimetres = Space.of(DemoSpace.PLAN).vary(Axis.FUEL_JET, "0.5588 mm");
        Space thousandths = Space.of(DemoSpace.PLAN).vary(Axis.FUEL_JET, "22 thou");
        assertEquals(
                thousandths.axes().get(Axis.FUEL_JET).get(0),
                millimetres.axes().get(Axis.FUEL_JET).get(0),
                1e-12);
    }

    @Test
    void aFactorScalesTheArmedTableAlone() {
        Space half = Space.of(DemoSpace.PLAN).vary(Axis.BOOST_FACTOR, 0.5);
        assertEquals(
                0.5 * DemoSpace.PLAN.setup().boost().armed().at(5800),
                half.setup(0).boost().armed().at(5800),
                1e-6);
        assertEquals(DemoSpace.PLAN.setup().boost().off(), half.setup(0).boost().off());
    }

    @Test
    void rangesKeepTheirEndsAndLaddersTheirRungs() {
        var pressures = Space.of(DemoSpace.PLAN)
                .range(Axis.FUEL_PRESSURE, "3 bar gauge", "4 bar gauge", 5)
                .axes()
                .get(Axis.FUEL_PRESSURE);
        assertEquals(3e5, pressures.get(0), 1e-6);
        assertEquals(4e5, pressures.get(4), 1e-6);
        var rungs = Space.of(DemoSpace.PLAN)
                .ladder(Axis.FUEL_JET, "19 thou", "23 thou")
                .axes()
                .get(Axis.FUEL_JET);
        assertTrue(rungs.stream().allMatch(r -> r > 18.9 * 25.4e-6 && r < 23.1 * 25.4e-6));
    }

    @Test
    void wordsNameWhatIsVariedAndNothingElse() {
        String words = SPACE.words(0, UnitSystem.US);
        assertTrue(words.contains("34.0 thou") && !words.contains("mixture"), words);
    }

    @Test
    void refusesWhatCannotBeVaried() {
        Space space = Space.of(DemoSpace.PLAN);
        assertThrows(IllegalArgumentException.class, () -> space.vary(Axis.BOOST_REFERENCE, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> space.vary(Axis.RETARD, 31));
        assertThrows(IllegalArgumentException.class, () -> space.vary(Axis.RETARD, new double[0]));
        assertThrows(IllegalArgumentException.class, () -> space.vary(Axis.BOOST, "20 thou"));
        Plan boostAlone = Plan.of(DemoSpace.JOB, DemoSpace.PLAN.setup().withoutJets());
        assertThrows(IllegalArgumentException.class, () -> Space.of(boostAlone));
    }
}
