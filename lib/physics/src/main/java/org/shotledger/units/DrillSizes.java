package org.shotledger.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Diameters of number and letter drills (ANSI/ASME B94.11M). */
public final class DrillSizes {

    private DrillSizes() {}

    private static final class Holder {
        static final Map<String, Double> METRES = read();
    }

    /**
     * The diameter of a drill.
     *
     * @param name number 1 to 80 or letter A to Z
     * @return the diameter, m
     * @throws UnitException when there is no such drill
     */
    public static double diameter(String name) {
        Double metres = Holder.METRES.get(name);
        if (metres == null) {
            throw new UnitException(
                    "There is no drill \"" + name + "\"; number drills go from 1 to 80, letters from A to Z.");
        }
        return metres;
    }

    /**
     * All drills, smallest first.
     *
     * @return name to diameter in metres, unmodifiable
     */
    public static Map<String, Double> all() {
        return Collections.unmodifiableMap(Holder.METRES);
    }

    private static Map<String, Double> read() {
        Map<String, Double> drills = new LinkedHashMap<>();
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(DrillSizes.class.getResourceAsStream("drills.csv"), StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> Character.isUpperCase(line.charAt(0)) || Character.isDigit(line.charAt(0)))
                    .map(line -> line.split(",", -1))
                    .forEach(cells -> drills.put(cells[0], Double.parseDouble(cells[1]) * UnitFactors.INCH));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return drills;
    }
}
