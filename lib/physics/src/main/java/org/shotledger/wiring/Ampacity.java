package org.shotledger.wiring;

import java.util.List;
import java.util.TreeMap;

/**
 * Current a wire may carry without end.
 *
 * <p>33 CFR 183.425, Table 5: stranded copper below 50 V, insulation for 105 degC, surroundings of 30 degC; its note 1 takes 85 %
 * of that in an engine space of 50 degC. The table is made for boats: no open one for cars was found. Wires that lie in one
 * bundle warm each other; the share left to them is common practice, no source.
 */
public final class Ampacity {
    private static final TreeMap<Integer, Double> TABLE = new TreeMap<>();
    private static final double ENGINE_SPACE = 0.85;

    static {
        TABLE.put(18, 20.0);
        TABLE.put(16, 25.0);
        TABLE.put(14, 35.0);
        TABLE.put(12, 45.0);
        TABLE.put(10, 60.0);
        TABLE.put(8, 80.0);
        TABLE.put(6, 120.0);
        TABLE.put(4, 160.0);
        TABLE.put(2, 210.0);
        TABLE.put(0, 285.0);
    }

    private Ampacity() {}

    /**
     * The wires of the table, the thinnest first.
     *
     * @return gauges 18 to 0
     */
    public static List<Wire> wires() {
        return TABLE.descendingKeySet().stream().map(Wire::new).toList();
    }

    /**
     * Current allowed.
     *
     * @param wire one of {@link #wires()}
     * @param engineSpace whether it lies in the engine space
     * @param bundled wires under load in its bundle, itself included, 1 or more
     * @return A
     * @throws IllegalArgumentException for a gauge that the table does not have
     */
    public static double allowed(Wire wire, boolean engineSpace, int bundled) {
        Double listed = TABLE.get(wire.gauge());
        if (listed == null) {
            throw new IllegalArgumentException("The table of allowed currents has no " + wire.words() + "; it has "
                    + TABLE.descendingKeySet() + " AWG.");
        }
        return listed * (engineSpace ? ENGINE_SPACE : 1) * bundle(bundled);
    }

    private static double bundle(int wires) {
        if (wires <= 2) {
            return 1;
        }
        if (wires == 3) {
            return 0.7;
        }
        return wires <= 6 ? 0.6 : 0.5;
    }
}
