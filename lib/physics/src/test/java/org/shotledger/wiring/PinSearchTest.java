package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The search with bounds against one that tries everything and knows no bound. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PinSearchTest {
    private static final int CASES = 20;
    private static final List<Importance> LEVELS = List.of(Importance.values());

    @ParameterizedTest
    @EnumSource(Importance.class)
    void no_assignment_at_all_is_better_than_the_one_found(Importance paidFor) {
        Random random = new Random(20 + paidFor.rank());
        for (int i = 0; i < CASES; i++) {
            PinTask task = task(random);
            PinPlan bought = task.cheapest(paidFor);
            assertTrue(bought.proven());
            assertArrayEquals(everything(task, paidFor, true), score(bought, paidFor), 1e-9, task.toString());
            PinPlan plain = task.asBuilt();
            assertEquals(0, plain.price());
            assertArrayEquals(
                    everything(task, Importance.COULD, false), score(plain, Importance.COULD), 1e-9, task.toString());
        }
    }

    @Test
    void the_same_task_gives_the_same_plan() {
        for (int seed = 0; seed < 5; seed++) {
            assertEquals(
                    task(new Random(seed)).cheapest(Importance.COULD),
                    task(new Random(seed)).cheapest(Importance.COULD));
        }
    }

    @Test
    void a_whole_car_is_proven_in_few_nodes() {
        List<Pin> pins = new ArrayList<>();
        List<PinSignal> signals = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            pins.add(i < 3 ? Pin.pullUp("P" + i, 2_200, true) : Pin.analogue("A" + i));
            pins.add(Pin.output("O" + i, i < 2 ? PinKind.HALF_BRIDGE : PinKind.LOW_SIDE, 2 + i % 3, i < 4 ? 300 : 0));
        }
        pins.add(Pin.bus("bus", 500));
        for (int i = 0; i < 12; i++) {
            Importance importance = LEVELS.get(i % 3);
            PinNeed need = i % 4 == 0 ? PinNeed.resistance(1_000, 5_000) : PinNeed.voltage();
            signals.add(PinSignal.input("in " + i, importance, need, 20, PinOption.bus("bus " + i, 60 + 7 * i, 10)));
            PinNeed drive = PinNeed.of(PinKind.LOW_SIDE, 1 + i % 4, i % 5 == 0 ? 200 : 0);
            PinNeed coil = PinNeed.of(PinKind.LOW_SIDE, 0.2, 0);
            signals.add(PinSignal.output(
                    "out " + i, importance, drive, "duty " + i / 2, PinOption.relay("r", 12 + i, coil)));
        }
        PinExpander box = new PinExpander(
                "box", 150, 40, 50, List.of(Pin.analogue("X1"), Pin.analogue("X2"), Pin.analogue("X3")));
        PinTask task = new PinTask(pins, signals, List.of(box));
        for (PinPlan plan : List.of(task.asBuilt(), task.cheapest(Importance.MUST))) {
            assertTrue(plan.proven(), "nodes " + plan.visited());
            assertTrue(plan.unplaced(Importance.MUST).isEmpty());
        }
    }

    private static PinTask task(Random random) {
        List<Pin> pins = new ArrayList<>();
        int count = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            pins.add(
                    switch (random.nextInt(4)) {
                        case 0 -> Pin.analogue("p" + i);
                        case 1 -> Pin.pullUp("p" + i, 2_200, random.nextBoolean());
                        case 2 -> Pin.output("p" + i, PinKind.LOW_SIDE, 1 + random.nextInt(5), 100);
                        default -> Pin.output("p" + i, PinKind.HALF_BRIDGE, 3, 0);
                    });
        }
        pins.add(Pin.bus("bus", 20 * random.nextInt(4)));
        List<PinSignal> signals = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            signals.add(signal(random, "s" + i));
        }
        List<PinExpander> expanders = random.nextBoolean()
                ? List.of()
                : List.of(new PinExpander("box", 25, 20, 10, List.of(Pin.analogue("x1"), Pin.analogue("x2"))));
        return new PinTask(pins, signals, expanders);
    }

    private static PinSignal signal(Random random, String name) {
        Importance importance = LEVELS.get(random.nextInt(3));
        PinOption option = random.nextBoolean()
                ? PinOption.bus(name, 5 + random.nextInt(40), 20)
                : PinOption.ownDevice(name, 5 + random.nextInt(40));
        PinOption[] options = random.nextBoolean() ? new PinOption[] {option} : new PinOption[0];
        if (random.nextBoolean()) {
            PinNeed need = random.nextBoolean() ? PinNeed.voltage() : PinNeed.resistance(1_000, 5_000);
            return PinSignal.input(name, importance, need, random.nextBoolean() ? 5 : 50, options);
        }
        PinNeed need = PinNeed.of(PinKind.LOW_SIDE, 1 + random.nextInt(4), 0);
        PinOption relay = PinOption.relay(name + " relay", 3, PinNeed.of(PinKind.LOW_SIDE, 0.2, 0));
        return PinSignal.output(
                name,
                importance,
                need,
                "d" + random.nextInt(2),
                random.nextBoolean() ? options : new PinOption[] {relay});
    }

    /** Each signal on each pin, by each option, or nowhere; every combination, judged only when complete. */
    private static double[] everything(PinTask task, Importance paidFor, boolean buy) {
        List<Pin> pins = new ArrayList<>(task.pins());
        int own = pins.size();
        if (buy) {
            task.expanders().forEach(e -> pins.addAll(e.pins()));
        }
        double[] best = {9, 9, 9, 9e9, 9};
        best[paidFor.rank() + 1] = 9e9;
        int n = task.signals().size();
        int ways = 1 + 2 * pins.size() + 1;
        int[] way = new int[n];
        do {
            double[] score = judge(task, pins, own, way, paidFor, buy);
            if (score != null && Arrays.compare(score, best) < 0) {
                best = score;
            }
        } while (next(way, ways));
        return best;
    }

    private static boolean next(int[] way, int ways) {
        for (int i = 0; i < way.length; i++) {
            if (++way[i] < ways) {
                return true;
            }
            way[i] = 0;
        }
        return false;
    }

    /** Way 0 is nowhere, 1..k a pin as asked, k+1..2k a pin through the relay, 2k+1 the option without a pin of its own. */
    private static double[] judge(PinTask task, List<Pin> pins, int own, int[] way, Importance paidFor, boolean buy) {
        double[] score = new double[5];
        int k = pins.size();
        double frames = 0;
        double price = 0;
        List<List<Integer>> on = new ArrayList<>();
        pins.forEach(p -> on.add(new ArrayList<>()));
        for (int i = 0; i < way.length; i++) {
            PinSignal signal = task.signals().get(i);
            if (way[i] == 0) {
                int at = signal.importance().rank();
                score[at <= paidFor.rank() ? at : at + 1]++;
            } else if (way[i] <= 2 * k) {
                boolean relay = way[i] > k;
                int slot = (way[i] - 1) % k;
                PinOption option =
                        signal.options().isEmpty() ? null : signal.options().get(0);
                if (relay && (!buy || option == null || option.way() != PinOption.Way.RELAY)) {
                    return null;
                }
                PinNeed need = relay ? option.need().orElseThrow() : signal.need();
                price += relay ? option.price() : 0;
                if (pins.get(slot).kinds().contains(PinKind.BUS)
                        || need.refusal(pins.get(slot)).isPresent()
                        || (slot >= own
                                && signal.rate() > task.expanders().get(0).rate())) {
                    return null;
                }
                on.get(slot).add(relay ? -1 : i);
            } else {
                if (!buy
                        || signal.options().isEmpty()
                        || signal.options().get(0).way() == PinOption.Way.RELAY) {
                    return null;
                }
                price += signal.options().get(0).price();
                frames += signal.options().get(0).need().map(PinNeed::frequency).orElse(0.0);
            }
        }
        for (int slot = 0; slot < k; slot++) {
            if (!mayLieTogether(task, pins.get(slot), on.get(slot))) {
                return null;
            }
            score[4] += Math.max(0, on.get(slot).size() - 1);
        }
        if (on.subList(own, k).stream().anyMatch(list -> !list.isEmpty())) {
            price += task.expanders().get(0).price();
            frames += task.expanders().get(0).frames();
        }
        score[paidFor.rank() + 1] += price;
        return frames <= pins.get(own - 1).frequency() ? score : null;
    }

    private static boolean mayLieTogether(PinTask task, Pin pin, List<Integer> signals) {
        double current = 0;
        for (int a : signals) {
            if (a < 0) {
                return signals.size() == 1;
            }
            current += task.signals().get(a).need().current();
            for (int b : signals) {
                if (b >= 0 && a != b) {
                    PinSignal other = task.signals().get(b);
                    if (task.signals().get(a).sharingRefusal(other).isPresent()) {
                        return false;
                    }
                }
            }
        }
        return signals.size() < 2 || current <= pin.current();
    }

    private static double[] score(PinPlan plan, Importance paidFor) {
        double[] score = new double[5];
        for (Importance importance : Importance.values()) {
            int at = importance.rank();
            score[at <= paidFor.rank() ? at : at + 1] =
                    plan.unplaced(importance).size();
        }
        score[paidFor.rank() + 1] = plan.price();
        List<String> groups = plan.placements().stream()
                .filter(p -> !p.sharedWith().isEmpty())
                .map(p -> p.pin().orElseThrow().name())
                .toList();
        score[4] = groups.size() - groups.stream().distinct().count();
        return score;
    }
}
