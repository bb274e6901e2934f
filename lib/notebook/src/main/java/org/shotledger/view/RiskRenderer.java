package org.shotledger.view;

import org.shotledger.risk.ArmingConditions;
import org.shotledger.risk.BoostReference;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.Faults;
import org.shotledger.risk.RobustJetting;
import org.shotledger.risk.SolenoidLeak;

/** Shows drift, jetting jets, the arming and faults in the units of the session; one nested class a type. */
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

    /** Shows jetting jets. */
    public static final class OfJetting extends ResultRenderer<RobustJetting> {
        /** Made by the service loader. */
        public OfJetting() {
            super(
                    RobustJetting.class,
                    (jetting, shown) -> View.of(
                            new Sentence(jetting.summary()),
                            RiskCharts.of(jetting, shown.first()),
                            RiskTables.of(jetting).in(shown)));
        }
    }

    /** Shows a arming. */
    public static final class OfArming extends ResultRenderer<ArmingConditions> {
        /** Made by the service loader. */
        public OfArming() {
            super(
                    ArmingConditions.class,
                    (arming, shown) -> View.of(
                            new Sentence(arming.comparison()),
                            RiskTables.of(arming).in(shown),
                            RiskTables.reasons(arming)));
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
    public static final class OfLeak extends ResultRenderer<SolenoidLeak> {
        /** Made by the service loader. */
        public OfLeak() {
            super(
                    SolenoidLeak.class,
                    (leak, shown) -> View.of(RiskTables.of(leak).in(shown), new Sentence(leak.summary())));
        }
    }
}
