package org.shotledger.view;

import org.shotledger.commission.ControllerTables;
import org.shotledger.commission.JobList;
import org.shotledger.commission.SensorChecks;
import org.shotledger.commission.StartList;
import org.shotledger.display.Displayable;
import org.shotledger.track.PassComparison;
import org.shotledger.track.SettledPlan;
import org.shotledger.track.TrackCard;
import org.shotledger.track.TrackPass;
import org.shotledger.wiring.Wiring;

/** Shows commissioning and passes in time in the units of the session; one nested class a type. */
public final class CommissionRenderer {
    private CommissionRenderer() {}

    /** Shows check values, and readings judged where there are any. */
    public static final class OfChecks extends ResultRenderer<SensorChecks> {
        /** Made by the service loader. */
        public OfChecks() {
            super(
                    SensorChecks.class,
                    (checks, shown) -> checks.readings().readings().isEmpty()
                            ? CommissionTables.form(checks).in(shown)
                            : View.of(
                                    CommissionTables.form(checks).in(shown),
                                    CommissionTables.verdicts(checks.judge()).in(shown)));
        }
    }

    /** Shows the list of a first start. */
    public static final class OfStart extends ResultRenderer<StartList> {
        /** Made by the service loader. */
        public OfStart() {
            super(StartList.class, (list, shown) -> CommissionTables.of(list).in(shown));
        }
    }

    /** Shows controller tables with their rules. */
    public static final class OfController extends ResultRenderer<ControllerTables> {
        /** Made by the service loader. */
        public OfController() {
            super(
                    ControllerTables.class,
                    (tables, shown) -> View.of(
                            new Sentence(String.join(" ", CommissionTables.rules(tables))),
                            CommissionTables.of(tables).in(shown)));
        }
    }

    /** Shows the job list with its costs. */
    public static final class OfJobs extends ResultRenderer<JobList> {
        /** Made by the service loader. */
        public OfJobs() {
            super(
                    JobList.class,
                    (list, shown) -> View.of(
                            new Sentence(CommissionTables.costs(list)),
                            CommissionTables.of(list, list.items()).in(shown)));
        }
    }

    /** Shows a pass in time. */
    public static final class OfPass extends ResultRenderer<TrackPass> {
        /** Made by the service loader. */
        public OfPass() {
            super(
                    TrackPass.class,
                    (pass, shown) -> View.of(
                            new Sentence(TrackTables.summary(pass)),
                            TrackTables.of(pass).in(shown),
                            TrackCharts.power(pass, shown.first()),
                            TrackCharts.speed(pass, shown.first()),
                            TrackCharts.pressures(pass, shown.first()),
                            TrackCharts.lambda(pass, shown.first())));
        }
    }

    /** Shows passes side by side. */
    public static final class OfComparison extends ResultRenderer<PassComparison> {
        /** Made by the service loader. */
        public OfComparison() {
            super(
                    PassComparison.class,
                    (compared, shown) ->
                            View.of(TrackTables.of(compared).in(shown), TrackCharts.of(compared, shown.first())));
        }
    }

    /** Shows how plan and pass came to agree. */
    public static final class OfSettled extends ResultRenderer<SettledPlan> {
        /** Made by the service loader. */
        public OfSettled() {
            super(
                    SettledPlan.class,
                    (settled, shown) -> View.of(
                            new Sentence(TrackTables.summary(settled)),
                            new Sentence(settled.plan().verdictLine()),
                            TrackTables.of(settled.pass()).in(shown)));
        }
    }

    /** Shows the card for the day. */
    public static final class OfCard extends ResultRenderer<TrackCard> {
        /** Made by the service loader. */
        public OfCard() {
            super(
                    TrackCard.class,
                    (card, shown) -> View.of(TrackTables.of(card).in(shown), new Sentence(TrackTables.hotter(card))));
        }
    }

    /** Shows a wiring: the picture, pins and the safety chain. */
    public static final class OfWiring extends ResultRenderer<Wiring> {
        /** Made by the service loader. */
        public OfWiring() {
            super(Wiring.class, CommissionRenderer::wiring);
        }
    }

    private static Displayable wiring(Wiring wiring, org.shotledger.table.Shown shown) {
        Displayable pins =
                View.of(WiringPicture.of(wiring), PinTables.of(wiring.pins()).in(shown));
        return wiring.safety()
                .map(chain -> (Displayable) View.of(pins, PinTables.of(chain).in(shown)))
                .orElse(pins);
    }
}
