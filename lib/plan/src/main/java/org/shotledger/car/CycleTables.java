package org.shotledger.car;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.shotledger.engine.CycleTable;
import org.shotledger.fuel.Fuel;

/** The fuel-air cycles of one engine by its fuels, each table made when it is first asked for: it costs a tenth of a second. */
public final class CycleTables {
    private record Fuels(Fuel main, Fuel second) {}

    private final double compressionRatio;
    private final Map<Fuels, CycleTable> made = new ConcurrentHashMap<>();

    /**
     * Tables of an engine.
     *
     * @param compressionRatio of the engine
     */
    public CycleTables(double compressionRatio) {
        this.compressionRatio = compressionRatio;
    }

    /**
     * Tables of an engine, those made already where they are of one with the same compression ratio.
     *
     * @param compressionRatio of the engine
     * @param made tables made already, of any engine; empty where there are none
     * @return the tables
     */
    public static CycleTables of(double compressionRatio, Optional<CycleTables> made) {
        CycleTables none = new CycleTables(compressionRatio);
        return made.filter(none::equals).orElse(none);
    }

    /**
     * The table of two fuels.
     *
     * @param main the main fuel
     * @param second the fuel of the nitrous system, which may be the same
     * @return the table
     */
    public CycleTable of(Fuel main, Fuel second) {
        return made.computeIfAbsent(new Fuels(main, second), f -> CycleTable.of(f.main, f.second, compressionRatio));
    }

    /** Tables of the same engine are the same, whatever has been asked for yet: a car read twice is one car. */
    @Override
    public boolean equals(Object other) {
        return other instanceof CycleTables o && Double.compare(compressionRatio, o.compressionRatio) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(compressionRatio);
    }
}
