package org.shotledger.confidence;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/** Draws from the quadratic forms, counted. */
final class Draws {
    private final List<Unknown> unknowns;
    private final List<Margins.Place> places;
    private final Forms forms;
    private final double wanted;

    /** The forms' power counts as reached from this share beyond the target on, which is below zero. */
    private final double reached;

    Draws(List<Unknown> unknowns, List<Margins.Place> places, Forms forms, double wanted, double reached) {
        this.unknowns = unknowns;
        this.places = places;
        this.forms = forms;
        this.wanted = wanted;
        this.reached = reached;
    }

    /** What one independent set of shifted points gave. */
    private record Replicate(
            double[] power, boolean[] kept, Map<String, Long> broken, long reach, long keep, long both) {}

    /** The chances with some unknowns drawn and the others in the middle. */
    Chances chances(int each, long seed, boolean[] drawn) {
        List<Replicate> all = IntStream.range(0, Chance.REPLICATES)
                .parallel()
                .mapToObj(n -> replicate(each, seed + 7919L * n, drawn))
                .toList();
        double[] power = all.stream()
                .flatMapToDouble(r -> Arrays.stream(r.power))
                .sorted()
                .toArray();
        double[] kept = all.stream()
                .flatMapToDouble(
                        r -> IntStream.range(0, each).filter(j -> r.kept[j]).mapToDouble(j -> r.power[j]))
                .sorted()
                .toArray();
        return new Chances(
                chance(all, each, r -> r.reach),
                chance(all, each, r -> r.keep),
                chance(all, each, r -> r.both),
                named(all, each, Margins.Place::key),
                named(all, each, Margins.Place::caseName),
                new Propagation(power),
                new Propagation(kept));
    }

    private Map<String, Chance> named(List<Replicate> all, int each, Function<Margins.Place, String> by) {
        Map<String, Chance> chances = new LinkedHashMap<>();
        for (Margins.Place place : places) {
            String name = by.apply(place);
            chances.computeIfAbsent(name, n -> chance(all, each, r -> each - r.broken.getOrDefault(n, 0L)));
        }
        return chances;
    }

    private static Chance chance(List<Replicate> all, int each, ToLongFunction<Replicate> hits) {
        return Chance.of(
                all.stream()
                        .mapToDouble(r -> (double) hits.applyAsLong(r) / each)
                        .toArray(),
                each);
    }

    private Replicate replicate(int draws, long seed, boolean[] drawn) {
        ShiftedSobol points = new ShiftedSobol(unknowns.size(), seed);
        double[] x = new double[unknowns.size()];
        double[] power = new double[draws];
        boolean[] kept = new boolean[draws];
        Map<String, Long> broken = new LinkedHashMap<>();
        long reach = 0;
        long keep = 0;
        long both = 0;
        for (int j = 0; j < draws; j++) {
            points.next(x);
            for (int i = 0; i < x.length; i++) {
                x[i] = unknowns.get(i).distribution().quantile(drawn[i] ? x[i] : 0.5);
            }
            double[] values = forms.at(x);
            broken(values).forEach(name -> broken.merge(name, 1L, Long::sum));
            power[j] = (1 + values[0]) * wanted;
            kept[j] = Forms.leastMargin(values) >= 0;
            boolean enough = values[0] >= reached;
            reach += enough ? 1 : 0;
            keep += kept[j] ? 1 : 0;
            both += enough && kept[j] ? 1 : 0;
        }
        return new Replicate(power, kept, broken, reach, keep, both);
    }

    /** Keys and cases of what is broken, each once. */
    private Set<String> broken(double[] values) {
        Set<String> names = new LinkedHashSet<>();
        for (int f = 1; f < values.length; f++) {
            if (values[f] < 0) {
                Margins.Place place = places.get(forms.numbers()[f] - 1);
                names.add(place.key());
                names.add(place.caseName());
            }
        }
        return names;
    }
}
