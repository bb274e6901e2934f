package org.shotledger.view;

import org.shotledger.risk.BoostReference;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.Faults;
import org.shotledger.risk.Forgiving;
import org.shotledger.risk.LeakThrough;
import org.shotledger.risk.NitrousWindow;

/** Shows drift, forgiving jets, the window and faults in the units of the session; one nested class a type. */
public final class RiskRenderer {
    private RiskRenderer() {}

    /** Shows a drift map. */
    public static final class OfDriftMap extends ResultRenderer<DriftMap> {
        /** Made by the service loader. */
        public OfDriftMap() {
            super(
                    DriftMap.class,
                    (map, shown) -> View.of(
                            new Sentence(map.summary()),
                            RiskCharts.of(map, shown.first()),
                            RiskTables.of(map).in(shown)));
        }
    }

    /** Shows a comparison of regulators. */
    public static final class OfBoostReference extends ResultRenderer<BoostReference> {
        /** Made by the service loader. */
        public OfBoostReference() {
            super(
                    BoostReference.class,
                    (compared, shown) -> View.of(
                            RiskCharts.of(compared, shown.first()),
                            RiskTables.of(compared).in(shown)));
        }
    }

    /** Shows forgiving jets. */
    public static final class OfForgiving extends ResultRenderer<Forgiving> {
        /** Made by the service loader. */
        public OfForgiving() {
            super(
                    Forgiving.class,
                    (forgiving, shown) -> View.of(
                            new Sentence(forgiving.summary()),
                            RiskCharts.of(forgiving, shown.first()),
                            RiskTables.of(forgiving).in(shown)));
        }
    }

    /** Shows a window. */
    public static final class OfWindow extends ResultRenderer<NitrousWindow> {
        /** Made by the service loader. */
        public OfWindow() {
            super(
                    NitrousWindow.class,
                    (window, shown) -> View.of(
                            new Sentence(window.comparison()),
                            RiskTables.of(window).in(shown),
                            RiskTables.reasons(window)));
        }
    }

    /** Shows faults. */
    public static final class OfFaults extends ResultRenderer<Faults> {
        /** Made by the service loader. */
        public OfFaults() {
            super(
                    Faults.class,
                    (faults, shown) -> View.of(
                            new Sentence(faults.summary()),
                            RiskCharts.of(faults, shown.first()),
                            RiskTables.effects(faults).in(shown),
                            RiskTables.catches(faults).in(shown),
                            new Sentence(faults.leak().summary())));
        }
    }

    /** Shows a leak. */
    public static final class OfLeak extends ResultRenderer<LeakThrough> {
        /** Made by the service loader. */
        public OfLeak() {
            super(
                    LeakThrough.class,
                    (leak, shown) -> View.of(RiskTables.of(leak).in(shown), new Sentence(leak.summary())));
        }
    }
}
