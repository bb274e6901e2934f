package org.shotledger.job;

import java.util.List;
import java.util.function.BiConsumer;
import org.shotledger.boost.MapReference;
import org.shotledger.sheet.CsvColumn;
import org.shotledger.sheet.CsvTable;

/** The tables a job sheet can name. */
public enum TableKind {
    /** Flow, pressure ratio and efficiency along lines of constant speed. */
    COMPRESSOR_MAP(
            "compressor map",
            Tables.COMPRESSOR_MAP,
            (name, t) -> Tables.compressorMap(name, t, MapReference.SI, 400_000)),
    /** Flow and current over pressure for each voltage. */
    PUMP("fuel pump", Tables.PUMP, Tables::pump),
    /** Volumetric efficiency over engine speed. */
    VOLUMETRIC_EFFICIENCY(
            "volumetric efficiency",
            Tables.VOLUMETRIC_EFFICIENCY,
            (name, t) -> Tables.curve(name, t, "engine speed", "volumetric efficiency")),
    /** Dead time over voltage. */
    DEAD_TIME("injector dead time", Tables.DEAD_TIME, (name, t) -> Tables.curve(name, t, "voltage", "dead time")),
    /** The jets at hand. */
    JET_LADDER("jet ladder", Tables.JET_LADDER, (name, t) -> Tables.ladder(t));

    private final String words;
    private final List<CsvColumn> columns;
    private final BiConsumer<String, CsvTable> use;

    TableKind(String words, List<CsvColumn> columns, BiConsumer<String, CsvTable> use) {
        this.words = words;
        this.columns = columns;
        this.use = use;
    }

    /**
     * What the table is called.
     *
     * @return for example {@code "compressor map"}
     */
    public String words() {
        return words;
    }

    /**
     * The columns it must or may have.
     *
     * @return the columns
     */
    public List<CsvColumn> columns() {
        return columns;
    }

    /**
     * Makes of a table what a job would make of it, to find what is wrong with it.
     *
     * @param name what to call it in messages
     * @param table a table with these columns
     * @throws org.shotledger.sheet.SheetException naming the lines that cannot be used
     */
    public void use(String name, CsvTable table) {
        use.accept(name, table);
    }
}
