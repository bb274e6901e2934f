package org.shotledger.sheet;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import org.shotledger.units.Excerpt;

/** The tables of {@code data/catalogue}, which travel with the program: a sheet names one as {@code catalogue/fuel-pump-large.csv}. */
public final class ShippedTables {
    private static final String FOLDER = "catalogue/";

    private ShippedTables() {}

    /**
     * Tells whether a name in a sheet means a table of the catalogue.
     *
     * @param named the name in the sheet
     * @return true when it begins with the catalogue's folder
     */
    static boolean means(String named) {
        return named.startsWith(FOLDER);
    }

    /**
     * Opens a table.
     *
     * @param named its name in the sheet, such as {@code catalogue/fuel-pump-large.csv}
     * @return its text
     * @throws IllegalArgumentException when there is none of that name
     */
    public static Reader open(String named) {
        InputStream in =
                named.matches(FOLDER + "[a-z-]+\\.csv") ? ShippedTables.class.getResourceAsStream(named) : null;
        if (in == null) {
            throw new IllegalArgumentException(
                    Excerpt.quoted(named)
                            + " is not in the catalogue; its README.md lists what is, such as \"catalogue/fuel-pump-large.csv\".");
        }
        return new InputStreamReader(in, StandardCharsets.UTF_8);
    }
}
