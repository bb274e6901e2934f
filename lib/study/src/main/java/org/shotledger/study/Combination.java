package org.shotledger.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.shotledger.build.Build;
import org.shotledger.nitrous.JetPair;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One point of a space.
 *
 * @param index its place in the space, from 0
 * @param axes the axes of the space
 * @param settings the value of each axis
 * @param gaugePressure boost held, Pa above ambient
 * @param jets jets of each nozzle
 */
public record Combination(long index, List<Vary> axes, List<Setting> settings, double gaugePressure, JetPair jets) {
    /** Copies the lists. */
    public Combination {
        axes = List.copyOf(axes);
        settings = List.copyOf(settings);
    }

    /**
     * The build of this combination.
     *
     * @param base the build of the space
     * @return the build with every varied field written anew
     */
    public Build build(Build base) {
        Build build = base;
        for (int i = 0; i < axes.size(); i++) {
            if (!Vary.OWN_PATHS.contains(axes.get(i).path())) {
                build = build.with(axes.get(i).path(), settings.get(i).text());
            }
        }
        return build;
    }

    /**
     * A name that serves readers of either unit system.
     *
     * @return boost and jets, for example {@code "20.3 psi (1.40 bar), 30/24 thou"}
     */
    public String name() {
        return boost(UnitSystem.US) + " (" + boost(UnitSystem.SI) + "), " + jetWords();
    }

    /**
     * A short name for a chart.
     *
     * @param system the unit system of the boost; jets are called by their number in thousandths of an inch in either
     * @return boost and jets, for example {@code "1.40 bar, 30/24 thou"}
     */
    public String name(UnitSystem system) {
        return boost(system) + ", " + jetWords();
    }

    private String boost(UnitSystem system) {
        return QuantityKind.GAUGE_PRESSURE.text(gaugePressure, system).replace(" gauge", "");
    }

    private String jetWords() {
        return bore(jets.nitrousBore()) + "/" + bore(jets.fuelBore()) + " thou";
    }

    private static String bore(double metres) {
        String thou = QuantityKind.BORE.number(metres, UnitSystem.US);
        return thou.endsWith(".0") ? thou.substring(0, thou.length() - 2) : thou;
    }

    /**
     * The values of the axes that are neither boost nor jet.
     *
     * @return the last part of each path with its value, in the order of the axes, for example {@code start-temperature} with
     *     {@code 32 degC}
     */
    public Map<String, String> others() {
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < axes.size(); i++) {
            if (!Vary.OWN_PATHS.contains(axes.get(i).path())) {
                values.put(
                        axes.get(i).path().replaceFirst(".*\\.", ""),
                        settings.get(i).text());
            }
        }
        return Collections.unmodifiableMap(values);
    }

    /**
     * The same in words.
     *
     * @return for example {@code "start-temperature 32 degC"}
     */
    public String otherWords() {
        return others().entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining(", "));
    }

    /**
     * The value of every axis.
     *
     * @return the values in words, for example {@code "boost 1.4 bar gauge, jets.nitrous 30.0 thou"}
     */
    public String words() {
        return IntStream.range(0, axes.size())
                .mapToObj(i -> axes.get(i).path() + " " + settings.get(i).text())
                .collect(Collectors.joining(", "));
    }
}
