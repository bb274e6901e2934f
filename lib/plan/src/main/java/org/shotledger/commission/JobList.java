package org.shotledger.commission;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.shotledger.bottle.Bottle;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.nitrous.FuelCell;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.NitrousCircuit;
import org.shotledger.nitrous.WetKit;
import org.shotledger.plan.Plan;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.Cable;
import org.shotledger.wiring.Load;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.Wiring;
import org.shotledger.workshop.ListedPart;
import org.shotledger.workshop.ListedPart.Circuit;
import org.shotledger.workshop.ListedPart.Stage;
import org.shotledger.workshop.Parts;

/**
 * What each circuit of a plan needs, what of it is fitted, when it must be there, and what it costs.
 *
 * @param items parts and jobs, by circuit
 * @param currency the sheet's money; empty where none is named
 * @param hour price of an hour of work; NaN where none is given
 * @param passCost nitrous oxide and both fuels of one pass; NaN where a price is missing
 */
public record JobList(List<JobItem> items, String currency, double hour, double passCost) {
    /** Length of the feed from battery to fuses that is bought where none is measured, m: our choice. */
    public static final double FEED_LENGTH = 4;

    public JobList {
        items = List.copyOf(items);
    }

    /**
     * The list of a plan with the progress of its sheet.
     *
     * @param plan the plan
     * @return the list
     */
    public static JobList of(Plan plan) {
        Map<String, JobItem> items = new LinkedHashMap<>();
        plan.setup().jets().ifPresent(jets -> {
            nitrous(plan, jets, items);
            fuel(plan, jets, items);
            consumables(plan, items);
        });
        plan.car().wiring().ifPresent(wiring -> electrics(wiring, items));
        Parts parts = plan.job().workshop().parts();
        parts.items()
                .forEach((key, part) ->
                        items.put(key, items.getOrDefault(key, own(key, part)).stated(part)));
        return new JobList(new ArrayList<>(items.values()), parts.currency(), parts.hour(), passCost(plan, parts));
    }

    private static JobItem own(String key, ListedPart part) {
        double count = Double.isNaN(part.count()) ? 1 : part.count();
        return JobItem.part(key, key.replace('-', ' '), count, part.circuit(), part.before());
    }

    private static void add(Map<String, JobItem> items, JobItem item) {
        items.put(item.key(), item);
    }

    private static void nitrous(Plan plan, JetPair jets, Map<String, JobItem> items) {
        WetKit kit = plan.car().nitrous();
        NitrousCircuit side = kit.nitrous();
        Bottle bottle = plan.car().bottle().vessel();
        add(
                items,
                JobItem.sized(
                        "bottle",
                        "bottle with siphon, valve and disc, its vent line to the outside",
                        bottle.waterCapacity(),
                        QuantityKind.VOLUME,
                        1,
                        Circuit.NITROUS,
                        Stage.FIRST_SHOT));
        add(
                items,
                JobItem.sized(
                                "nitrous-hose",
                                "hose from bottle to solenoid, its bore",
                                side.hoseBore(),
                                QuantityKind.BORE,
                                side.hoseLength(),
                                Circuit.NITROUS,
                                Stage.FIRST_SHOT)
                        .measured(QuantityKind.ALTITUDE));
        add(items, JobItem.part("hose-ends", "ends and fittings of that hose", 2, Circuit.NITROUS, Stage.FIRST_SHOT));
        if (side.filterLoss() > 0) {
            add(
                    items,
                    JobItem.part("nitrous-filter", "filter before the solenoid", 1, Circuit.NITROUS, Stage.FIRST_SHOT));
        }
        add(
                items,
                JobItem.sized(
                        "nitrous-solenoid",
                        "nitrous solenoid, its bore",
                        side.solenoid().bore(),
                        QuantityKind.BORE,
                        1,
                        Circuit.NITROUS,
                        Stage.FIRST_SHOT));
        add(items, JobItem.part("nozzles", "nozzles", kit.nozzles(), Circuit.NITROUS, Stage.FIRST_SHOT));
        add(
                items,
                JobItem.sized(
                                "nitrous-lines",
                                "lines from solenoid to nozzles, their bore",
                                side.lineBore(),
                                QuantityKind.BORE,
                                kit.nozzles() * side.lineLength(),
                                Circuit.NITROUS,
                                Stage.FIRST_SHOT)
                        .measured(QuantityKind.ALTITUDE));
        jets("nitrous-jets", "nitrous jets", jets.nitrousBore(), kit, Circuit.NITROUS, items);
    }

    /** The pair of the plan, and its neighbours on the ladder: the smaller to begin with, the larger for a correction. */
    private static void jets(
            String key, String what, double bore, WetKit kit, Circuit circuit, Map<String, JobItem> items) {
        double below = kit.ladder().below(bore * (1 - 1e-6));
        double above = kit.ladder().above(bore * (1 + 1e-6));
        add(items, JobItem.sized(key, what, bore, QuantityKind.BORE, kit.nozzles(), circuit, Stage.FIRST_SHOT));
        if (below < bore) {
            add(
                    items,
                    JobItem.sized(
                            key + "-smaller",
                            what + ", next smaller",
                            below,
                            QuantityKind.BORE,
                            kit.nozzles(),
                            circuit,
                            Stage.FIRST_SHOT));
        }
        if (above > bore) {
            add(
                    items,
                    JobItem.sized(
                            key + "-larger",
                            what + ", next larger",
                            above,
                            QuantityKind.BORE,
                            kit.nozzles(),
                            circuit,
                            Stage.LATER));
        }
    }

    private static void fuel(Plan plan, JetPair jets, Map<String, JobItem> items) {
        WetKit kit = plan.car().nitrous();
        FuelCircuit side = kit.fuel();
        side.cell().ifPresentOrElse(cell -> ownSupply(plan, cell, items), () -> branch(items));
        add(items, JobItem.part("nitrous-fuel-filter", "filter before the jets", 1, Circuit.FUEL, Stage.FIRST_SHOT));
        add(
                items,
                JobItem.sized(
                        "fuel-solenoid",
                        "fuel solenoid, its bore",
                        side.solenoid().bore(),
                        QuantityKind.BORE,
                        1,
                        Circuit.FUEL,
                        Stage.FIRST_SHOT));
        jets("fuel-jets", "fuel jets", jets.fuelBore(), kit, Circuit.FUEL, items);
    }

    private static void branch(Map<String, JobItem> items) {
        add(
                items,
                JobItem.part(
                        "rail-branch",
                        "branch from the main rail to the fuel solenoid",
                        1,
                        Circuit.FUEL,
                        Stage.FIRST_SHOT));
    }

    private static void ownSupply(Plan plan, FuelCell cell, Map<String, JobItem> items) {
        add(
                items,
                JobItem.sized(
                        "fuel-cell",
                        "fuel cell of the nitrous system",
                        cell.volume(),
                        QuantityKind.VOLUME,
                        1,
                        Circuit.FUEL,
                        Stage.FIRST_SHOT));
        add(
                items,
                JobItem.part(
                        "nitrous-fuel-pump",
                        "its fuel pump",
                        cell.pumps().pumps().size(),
                        Circuit.FUEL,
                        Stage.FIRST_SHOT));
        add(
                items,
                JobItem.sized(
                        "nitrous-fuel-regulator",
                        "its regulator, set engine off",
                        plan.setup().nitrousRegulator().basePressure(),
                        QuantityKind.GAUGE_PRESSURE,
                        1,
                        Circuit.FUEL,
                        Stage.FIRST_SHOT));
    }

    private static void consumables(Plan plan, Map<String, JobItem> items) {
        Parts parts = plan.job().workshop().parts();
        int passes = plan.setup().passes().count();
        double charge = plan.setup().bottle().charge();
        add(
                items,
                JobItem.part(
                                "nitrous-for-the-day",
                                "nitrous oxide for the day, one filling by the scale",
                                charge,
                                Circuit.NITROUS,
                                Stage.FIRST_SHOT)
                        .measured(QuantityKind.MASS)
                        .priced(parts.nitrous()));
        add(
                items,
                JobItem.part(
                                "fuel-for-the-day",
                                "both fuels for " + passes + " passes",
                                passes * fuelVolume(plan),
                                Circuit.FUEL,
                                Stage.FIRST_SHOT)
                        .measured(QuantityKind.VOLUME)
                        .priced(parts.fuel()));
    }

    /** Both fuels of a pass at the point of most power over the seconds that the plan counts, m3. */
    private static double fuelVolume(Plan plan) {
        OperatingPoint at = plan.stated().strongest().orElseThrow();
        var fuels = plan.car().fuels();
        double seconds = plan.setup().passes().seconds();
        return seconds
                * (at.main().massFlow() / fuels.main().density(fuels.temperature())
                        + at.nitrousFuel().massFlow() / fuels.nitrous().density(fuels.temperature()));
    }

    private static void electrics(Wiring wiring, Map<String, JobItem> items) {
        Map<Double, Integer> fuses = new TreeMap<>();
        Map<Integer, Double> wires = new TreeMap<>();
        int relays = 0;
        int switches = 0;
        int clamps = 0;
        for (Cable cable : wiring.cables()) {
            Load load = cable.load();
            if (load.phase() == Load.Phase.ALWAYS) {
                continue;
            }
            fuses.merge(cable.fuse().rating(), 1, Integer::sum);
            wires.merge(cable.wire().gauge(), 2 * load.length(), Double::sum);
            clamps += load.coil() ? 1 : 0;
            if (load.current() > wiring.outputCurrent()) {
                relays += load.pulsed() ? 0 : 1;
                switches += load.pulsed() ? 1 : 0;
            }
        }
        wiring.feed(FEED_LENGTH).ifPresent(feed -> {
            add(
                    items,
                    JobItem.sized(
                            "main-fuse",
                            "main fuse at the battery",
                            feed.fuse().rating(),
                            QuantityKind.CURRENT,
                            1,
                            Circuit.ELECTRICS,
                            Stage.KEY_ON));
            add(
                    items,
                    JobItem.sized(
                            "isolator",
                            "isolator, rated at least",
                            feed.fuse().rating(),
                            QuantityKind.CURRENT,
                            1,
                            Circuit.ELECTRICS,
                            Stage.KEY_ON));
            wires.merge(feed.wire().gauge(), 2 * FEED_LENGTH, Double::sum);
        });
        fuses.forEach((rating, count) -> add(
                items,
                JobItem.sized(
                        "fuse-" + Math.round(rating * 10) / 10.0,
                        "blade fuses, as many again as spares",
                        rating,
                        QuantityKind.CURRENT,
                        2.0 * count,
                        Circuit.ELECTRICS,
                        Stage.KEY_ON)));
        wires.forEach((gauge, length) -> add(
                items,
                JobItem.part(
                                "wire-" + gauge,
                                "wire " + gauge + " AWG, there and back",
                                length,
                                Circuit.ELECTRICS,
                                Stage.KEY_ON)
                        .measured(QuantityKind.ALTITUDE)));
        count(items, "relays", "relays with sockets", relays);
        count(items, "switches", "solid-state switches for pulsed loads", switches);
        count(items, "clamps", "diodes or clamps across coils", clamps);
        for (SensorInput input : wiring.inputs()) {
            add(
                    items,
                    JobItem.part(
                            "sensor-" + input.name().replace(' ', '-'),
                            "sensor: " + input.name(),
                            1,
                            Circuit.SENSORS,
                            Stage.KEY_ON));
        }
    }

    private static void count(Map<String, JobItem> items, String key, String what, int count) {
        if (count > 0) {
            add(items, JobItem.part(key, what, count, Circuit.ELECTRICS, Stage.KEY_ON));
        }
    }

    private static double passCost(Plan plan, Parts parts) {
        if (plan.setup().jets().isEmpty()) {
            return Double.NaN;
        }
        double used = plan.stated().pass().map(PassOutcome::massUsed).orElse(Double.NaN);
        return used * parts.nitrous() + fuelVolume(plan) * parts.fuel();
    }

    /**
     * What is still to be done.
     *
     * @return the items that are not fitted, the earliest stage first
     */
    public List<JobItem> open() {
        return items.stream()
                .filter(item -> !item.fitted())
                .sorted(java.util.Comparator.comparing(JobItem::before))
                .toList();
    }

    /**
     * Cost of parts and work.
     *
     * @param what the items that count
     * @return in the sheet's money; items without a price, or hours without a price of an hour, are left out
     */
    public double cost(List<JobItem> what) {
        double sum = 0;
        for (JobItem item : what) {
            sum += Double.isNaN(item.cost()) ? 0 : item.cost();
            sum += Double.isNaN(item.hours() * hour) ? 0 : item.hours() * hour;
        }
        return sum;
    }

    /**
     * Items whose price is not known.
     *
     * @param what the items that count
     * @return how many
     */
    public long unpriced(List<JobItem> what) {
        return what.stream().filter(item -> Double.isNaN(item.price())).count();
    }
}
