package org.shotledger.table;

import java.util.List;
import org.shotledger.units.UnitSystem;

/** In which units figures are shown. */
public enum Shown {
    /** SI units only. */
    SI(UnitSystem.SI),
    /** Units of the North American trade only. */
    US(UnitSystem.US),
    /** Both side by side, US first. */
    BOTH(UnitSystem.US, UnitSystem.SI);

    private final List<UnitSystem> systems;

    Shown(UnitSystem... systems) {
        this.systems = List.of(systems);
    }

    /**
     * The unit systems, in the order in which they are shown.
     *
     * @return one or two systems
     */
    public List<UnitSystem> systems() {
        return systems;
    }

    /**
     * The system for places that have room for one only, such as the axis of a chart.
     *
     * @return the first system
     */
    public UnitSystem first() {
        return systems.get(0);
    }
}
