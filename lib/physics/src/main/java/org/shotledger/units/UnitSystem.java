package org.shotledger.units;

/** The two ways a figure is shown to a reader. */
public enum UnitSystem {
    /** SI units with the customary multiples (bar, kW, mm, degC, g/s). */
    SI,
    /** Units of the North American trade (psi, hp, thousandths of an inch, degF, lb/min). */
    US
}
