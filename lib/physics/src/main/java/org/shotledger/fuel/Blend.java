package org.shotledger.fuel;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.shotledger.units.Require;

/**
 * Ideal mixing of liquids by volume: volumes add at 15 C (the real volume change is below 0.5 %), mass properties add by
 * mass, octane numbers by moles (Anderson et al., Energy and Fuels 24 (2010) 6576).
 */
public final class Blend {
    private Blend() {}

    /**
     * Mixes liquids by their volumes at 15 C.
     *
     * @param name what the blend is called
     * @param parts at least one; the fractions add up to one
     * @return the blend; its octane numbers are empty when one burning part does not know its own
     * @throws IllegalArgumentException when the fractions do not add up to one
     */
    public static Fuel byVolume(String name, List<Part> parts) {
        List<Part> used = parts.stream().filter(p -> p.volumeFraction() > 0).toList();
        double total = used.stream().mapToDouble(Part::volumeFraction).sum();
        Require.within("sum of the volume fractions of " + name, total, 1 - 1e-6, 1 + 1e-6, "");
        double density = sum(used, p -> p.volumeFraction() * p.fuel().density());
        ToDoubleFunction<Part> mass = p -> p.volumeFraction() * p.fuel().density() / density;
        double moles = sum(used, p -> mass.applyAsDouble(p) / p.fuel().molarMass());
        return new Fuel(
                name,
                elements(used, mass),
                1 / moles,
                density,
                sum(used, p -> p.volumeFraction() * p.fuel().expansion()),
                sum(used, p -> mass.applyAsDouble(p) * p.fuel().lowerHeatingValue()),
                new Vaporisation(
                        sum(used, p -> mass.applyAsDouble(p) * p.fuel().vaporisationHeat(Fuel.REFERENCE_TEMPERATURE)),
                        Fuel.REFERENCE_TEMPERATURE),
                sum(used, p -> mass.applyAsDouble(p) * p.fuel().liquidHeatCapacity()),
                sum(used, p -> mass.applyAsDouble(p) * p.fuel().vapourHeatCapacity()),
                octane(used, mass),
                used.stream()
                        .map(p -> String.format(
                                java.util.Locale.ROOT,
                                "%.1f %% by volume %s (%s)",
                                100 * p.volumeFraction(),
                                p.fuel().name(),
                                p.fuel().source()))
                        .collect(Collectors.joining(", ", "ideal mixing of ", "")));
    }

    /**
     * The mass fraction of one part.
     *
     * @param parts the parts of a blend
     * @param index which one, from 0
     * @return its share of the mass, 0 to 1
     */
    public static double massFraction(List<Part> parts, int index) {
        Part part = parts.get(index);
        return part.volumeFraction()
                * part.fuel().density()
                / sum(parts, p -> p.volumeFraction() * p.fuel().density());
    }

    private static Elements elements(List<Part> parts, ToDoubleFunction<Part> mass) {
        return new Elements(
                sum(parts, p -> mass.applyAsDouble(p) * p.fuel().elements().carbon()),
                sum(parts, p -> mass.applyAsDouble(p) * p.fuel().elements().hydrogen()),
                sum(parts, p -> mass.applyAsDouble(p) * p.fuel().elements().oxygen()),
                sum(parts, p -> mass.applyAsDouble(p) * p.fuel().elements().nitrogen()));
    }

    private static Optional<Octane> octane(List<Part> parts, ToDoubleFunction<Part> mass) {
        List<Part> burning =
                parts.stream().filter(p -> p.fuel().oxygenDemand() > 1e-9).toList();
        if (burning.isEmpty()
                || burning.stream().anyMatch(p -> p.fuel().octane().isEmpty())) {
            return Optional.empty();
        }
        ToDoubleFunction<Part> moles = p -> mass.applyAsDouble(p) / p.fuel().molarMass();
        double all = sum(burning, moles);
        return Optional.of(new Octane(
                sum(
                                burning,
                                p -> moles.applyAsDouble(p)
                                        * p.fuel().octane().orElseThrow().research())
                        / all,
                sum(
                                burning,
                                p -> moles.applyAsDouble(p)
                                        * p.fuel().octane().orElseThrow().motor())
                        / all));
    }

    private static double sum(List<Part> parts, ToDoubleFunction<Part> of) {
        return parts.stream().mapToDouble(of).sum();
    }
}
