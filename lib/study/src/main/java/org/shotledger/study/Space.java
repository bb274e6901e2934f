package org.shotledger.study;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Wish;
import org.shotledger.build.Build;
import org.shotledger.nitrous.JetPair;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.NearestName;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Every combination of some axes, on one build under one wish. The last axis changes fastest.
 *
 * <p>Model constants stay as calibrated on the build's own base pull: an axis is something the builder may change, not
 * something the base pull was measured wrongly with.
 */
public final class Space {
    /** The most combinations a space may have; beyond it even the fastest sweep takes hours. */
    public static final long MOST = 100_000_000_000L;

    private final Build build;
    private final Wish wish;
    private final List<Vary> axes;
    private final long size;

    private Space(Build build, Wish wish, List<Vary> axes) {
        this.build = build;
        this.wish = wish;
        this.axes = List.copyOf(axes);
        this.size = count(axes);
    }

    /**
     * A space on a build's own target.
     *
     * @param build the build
     * @param axes what is varied; boost and both jets must be among them
     * @return the space
     * @throws StudyException when an axis cannot be used or there are too many combinations
     */
    public static Space of(Build build, Vary... axes) {
        return checked(build, Wish.of(build.target()), List.of(axes));
    }

    /**
     * A space around a plan, whose boost and jets stand where no axis varies them.
     *
     * @param budget the plan
     * @param axes what is varied
     * @return the space
     * @throws StudyException when an axis cannot be used or there are too many combinations
     */
    public static Space around(Budget budget, Vary... axes) {
        List<Vary> all = new ArrayList<>();
        JetPair pair = budget.jets().chosen().pair();
        fixed(axes, all, Vary.BOOST, QuantityKind.GAUGE_PRESSURE, heldBoost(budget));
        fixed(axes, all, Vary.NITROUS_JET, QuantityKind.BORE, pair.nitrousBore());
        fixed(axes, all, Vary.FUEL_JET, QuantityKind.BORE, pair.fuelBore());
        all.addAll(List.of(axes));
        return checked(budget.build(), budget.wish(), all);
    }

    private static double heldBoost(Budget budget) {
        return budget.split().points().stream()
                .mapToDouble(p -> p.gaugePressure())
                .max()
                .orElse(budget.peak().gaugePressure());
    }

    private static void fixed(Vary[] given, List<Vary> to, String path, QuantityKind kind, double value) {
        if (java.util.Arrays.stream(given).noneMatch(a -> a.path().equals(path))) {
            to.add(new Vary(path, List.of(new Setting(kind.text(value, UnitSystem.US), value))));
        }
    }

    private static Space checked(Build build, Wish wish, List<Vary> axes) {
        Set<String> seen = new HashSet<>();
        for (Vary axis : axes) {
            if (!seen.add(axis.path())) {
                throw new StudyException("The axis \"" + axis.path() + "\" stands twice; join its values in one axis.");
            }
        }
        for (String own : Vary.OWN_PATHS) {
            if (!seen.contains(own)) {
                throw new StudyException("The space has no axis \"" + own
                        + "\"; add one (a single value will do), or lay the space around a plan.");
            }
        }
        Space space = new Space(build, wish, axes);
        axes.forEach(axis -> check(build, axis));
        return space;
    }

    private static void check(Build build, Vary axis) {
        if (Vary.OWN_PATHS.contains(axis.path())) {
            return;
        }
        if (!build.origins().containsKey(axis.path())) {
            Set<String> known = new HashSet<>(build.origins().keySet());
            known.addAll(Vary.OWN_PATHS);
            String nearest = NearestName.of(axis.path(), known)
                    .map(n -> " Did you mean \"" + n + "\"?")
                    .orElse(" Name a field as it stands in the sheet, for example \"bottle.start-temperature\".");
            throw new StudyException("The axis \"" + axis.path() + "\" is not a field of the build sheet of "
                    + build.name() + "." + nearest);
        }
        for (Setting setting : axis.settings()) {
            try {
                build.with(axis.path(), setting.text());
            } catch (SheetException e) {
                throw new StudyException("The axis \"" + axis.path() + "\" holds \"" + setting.text()
                        + "\", which the build cannot have: " + e.problems().get(0));
            } catch (IllegalArgumentException e) {
                throw new StudyException("The axis \"" + axis.path() + "\" cannot be varied: " + e.getMessage());
            }
        }
    }

    private static long count(List<Vary> axes) {
        BigInteger product = axes.stream()
                .map(a -> BigInteger.valueOf(a.settings().size()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
        if (product.compareTo(BigInteger.valueOf(MOST)) > 0) {
            Vary longest = axes.stream()
                    .max(Comparator.comparingInt(a -> a.settings().size()))
                    .orElseThrow();
            throw new StudyException(String.format(
                    java.util.Locale.ROOT,
                    "The space has %,d combinations (%s); allowed are %,d. Cut it: the longest axis is \"%s\" with %d values, "
                            + "take every second of them, or hold an axis fixed and sweep again around the best.",
                    product,
                    sizes(axes),
                    MOST,
                    longest.path(),
                    longest.settings().size()));
        }
        return product.longValueExact();
    }

    private static String sizes(List<Vary> axes) {
        return axes.stream().map(a -> a.settings().size() + " " + a.path()).collect(Collectors.joining(" x "));
    }

    /**
     * The same space under another wish.
     *
     * @param other the wish
     * @return the changed space
     */
    public Space under(Wish other) {
        return new Space(build, other, axes);
    }

    /**
     * The build that is varied.
     *
     * @return the build
     */
    public Build build() {
        return build;
    }

    /**
     * What is asked.
     *
     * @return the wish
     */
    public Wish wish() {
        return wish;
    }

    /**
     * What is varied.
     *
     * @return the axes; the last changes fastest
     */
    public List<Vary> axes() {
        return axes;
    }

    /**
     * How many combinations there are; known before anything runs.
     *
     * @return the product of the axes' lengths
     */
    public long size() {
        return size;
    }

    /**
     * One combination.
     *
     * @param index its place, 0 to below {@link #size()}
     * @return the combination
     */
    public Combination at(long index) {
        if (index < 0 || index >= size) {
            throw new StudyException(
                    "The space has combinations 0 to " + (size - 1) + "; there is no number " + index + ".");
        }
        List<Setting> settings = new ArrayList<>();
        long rest = index;
        for (int i = axes.size() - 1; i >= 0; i--) {
            int length = axes.get(i).settings().size();
            settings.add(0, axes.get(i).settings().get((int) (rest % length)));
            rest /= length;
        }
        ToDoubleFunction<String> value = path -> settings.get(position(path)).value();
        return new Combination(
                index,
                axes,
                settings,
                value.applyAsDouble(Vary.BOOST),
                new JetPair(value.applyAsDouble(Vary.NITROUS_JET), value.applyAsDouble(Vary.FUEL_JET)));
    }

    int position(String path) {
        for (int i = 0; i < axes.size(); i++) {
            if (axes.get(i).path().equals(path)) {
                return i;
            }
        }
        throw new IllegalStateException("The space has no axis " + path + ".");
    }

    /** By how much the index grows from one setting of an axis to the next. */
    long stride(int axis) {
        long stride = 1;
        for (int i = axes.size() - 1; i > axis; i--) {
            stride *= axes.get(i).settings().size();
        }
        return stride;
    }

    @Override
    public String toString() {
        return String.format(java.util.Locale.ROOT, "%,d combinations: %s", size, sizes(axes));
    }
}
