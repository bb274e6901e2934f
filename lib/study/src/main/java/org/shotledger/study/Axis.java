package org.shotledger.study;

import java.util.function.ToDoubleFunction;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;
import org.shotledger.units.QuantityKind;

/**
 * What can be varied in a setup. The order is that of the study's loops: what changes the engine comes first, the fuel circuit of
 * the nitrous system last.
 */
public enum Axis {
    /** Lambda the main fuel is metered for. */
    MIXTURE("main mixture", QuantityKind.RATIO, Setup::mixture, Setup::withMixture),
    /** Spark later than the builder's own while the nitrous flows, crank degrees. */
    RETARD("spark retard", QuantityKind.CRANK_ANGLE, Setup::retard, Setup::withRetard),
    /** Highest boost of the armed table, Pa above ambient; the whole table is scaled to it. */
    BOOST("boost", QuantityKind.GAUGE_PRESSURE, setup -> setup.boost().armed().highest(), Axis::boost),
    /** Factor on the armed boost table. */
    BOOST_FACTOR("boost factor", QuantityKind.RATIO, setup -> 1, Axis::scaled),
    /** Temperature of the bottle at the start of a pass, K. */
    BOTTLE_TEMPERATURE(
            "bottle temperature",
            QuantityKind.TEMPERATURE,
            setup -> setup.bottle().startTemperature(),
            (setup, kelvin) -> setup.withBottle(new BottleFill(setup.bottle().charge(), kelvin))),
    /** Hole of every nitrous jet, m. */
    NITROUS_JET(
            "nitrous jet",
            QuantityKind.BORE,
            setup -> setup.jets().orElseThrow().nitrousBore(),
            (setup, bore) ->
                    setup.withJets(new JetPair(bore, setup.jets().orElseThrow().fuelBore()))),
    /** Hole of every fuel jet, m. */
    FUEL_JET(
            "fuel jet",
            QuantityKind.BORE,
            setup -> setup.jets().orElseThrow().fuelBore(),
            (setup, bore) ->
                    setup.withJets(new JetPair(setup.jets().orElseThrow().nitrousBore(), bore))),
    /** Base pressure of the nitrous system's fuel regulator, Pa above ambient. */
    FUEL_PRESSURE(
            "nitrous fuel pressure",
            QuantityKind.GAUGE_PRESSURE,
            setup -> setup.nitrousRegulator().basePressure(),
            (setup, base) -> setup.withNitrousRegulator(new Regulator(
                    setup.nitrousRegulator().name(),
                    base,
                    setup.nitrousRegulator().boostReference()))),
    /** Boost reference of that regulator: 0 not referenced, 1 referenced. */
    BOOST_REFERENCE(
            "boost reference",
            QuantityKind.RATIO,
            setup -> setup.nitrousRegulator().boostReference(),
            (setup, reference) -> setup.withNitrousRegulator(new Regulator(
                    setup.nitrousRegulator().name(), setup.nitrousRegulator().basePressure(), reference)));

    private final String words;
    private final QuantityKind kind;
    private final ToDoubleFunction<Setup> read;
    private final Change change;

    private interface Change {
        Setup apply(Setup setup, double value);
    }

    Axis(String words, QuantityKind kind, ToDoubleFunction<Setup> read, Change change) {
        this.words = words;
        this.kind = kind;
        this.read = read;
        this.change = change;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "nitrous jet"}
     */
    public String words() {
        return words;
    }

    /**
     * What its values measure.
     *
     * @return the kind, by which a value is read and shown
     */
    public QuantityKind kind() {
        return kind;
    }

    /**
     * The value of a setup.
     *
     * @param setup a setup with jets
     * @return SI
     */
    public double of(Setup setup) {
        return read.applyAsDouble(setup);
    }

    /**
     * A setup with another value.
     *
     * @param setup a setup with jets
     * @param value SI
     * @return the changed setup
     */
    public Setup set(Setup setup, double value) {
        return value == of(setup) ? setup : change.apply(setup, value);
    }

    private static Setup boost(Setup setup, double gauge) {
        return scaled(setup, gauge / setup.boost().armed().highest());
    }

    private static Setup scaled(Setup setup, double factor) {
        BoostTarget old = setup.boost();
        return setup.withBoost(new BoostTarget(old.off(), old.armed().map(gauge -> gauge * factor), old.tolerance()));
    }
}
