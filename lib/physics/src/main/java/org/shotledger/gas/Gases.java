package org.shotledger.gas;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The species of the data file {@code nasa-tm-4513.txt}, by formula. */
public final class Gases {
    private static final Map<String, Gas> ALL = Collections.unmodifiableMap(load());

    /** Carbon dioxide. */
    public static final Gas CO2 = of("CO2");
    /** Carbon monoxide. */
    public static final Gas CO = of("CO");
    /** Steam. */
    public static final Gas H2O = of("H2O");
    /** Hydrogen. */
    public static final Gas H2 = of("H2");
    /** Oxygen. */
    public static final Gas O2 = of("O2");
    /** Nitrogen. */
    public static final Gas N2 = of("N2");
    /** Nitrous oxide. */
    public static final Gas N2O = of("N2O");
    /** Argon. */
    public static final Gas AR = of("Ar");

    private Gases() {}

    /**
     * One species.
     *
     * @param formula as in the data file, for example {@code "CO2"}, {@code "iso-C8H18"}
     * @return the species
     * @throws IllegalArgumentException when it is not in the file
     */
    public static Gas of(String formula) {
        Gas gas = ALL.get(formula);
        if (gas == null) {
            throw new IllegalArgumentException(
                    "There is no gas named " + formula + "; known are " + String.join(", ", ALL.keySet()) + ".");
        }
        return gas;
    }

    /**
     * All species.
     *
     * @return an unmodifiable map by formula, in the order of the file
     */
    public static Map<String, Gas> all() {
        return ALL;
    }

    private static Map<String, Gas> load() {
        Map<String, Gas> gases = new LinkedHashMap<>();
        try (InputStream in = Gases.class.getResourceAsStream("nasa-tm-4513.txt");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(Gases::parse)
                    .forEach(g -> gases.put(g.name(), g));
        } catch (IOException e) {
            throw new UncheckedIOException("The gas data file could not be read.", e);
        }
        return gases;
    }

    private static Gas parse(String line) {
        String[] cell = line.split(";", -1);
        int[] atoms = new int[Element.values().length];
        for (int i = 0; i < atoms.length; i++) {
            atoms[i] = Integer.parseInt(cell[1 + i]);
        }
        return new Gas(cell[0], atoms, numbers(cell, 6, 3), numbers(cell, 9, 7), numbers(cell, 16, 7));
    }

    private static double[] numbers(String[] cell, int from, int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = Double.parseDouble(cell[from + i]);
        }
        return values;
    }
}
