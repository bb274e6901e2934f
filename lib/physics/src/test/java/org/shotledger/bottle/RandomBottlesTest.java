package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Seeded bottles of 0.1 to 60 L at 250 to 335 K come to an end with an event, whatever is taken out and heated, and keep their books.
 * {@code mvn -o test -pl lib/physics -Dtest=RandomBottlesTest -Dshotledger.bottles=10000} tries as many as asked for.
 */
class RandomBottlesTest {
    private static final int COUNT = Integer.getInteger("shotledger.bottles", 400);

    @Test
    void everyBottleComesToAnEndAndKeepsItsBooks() {
        List<String> wrong = new ArrayList<>();
        for (long seed = 0; seed < COUNT; seed++) {
            RandomBottle bottle = RandomBottle.of(seed);
            check(bottle, EquilibriumBottle.MODEL, wrong);
            check(bottle, TwoNodeBottle.MODEL, wrong);
        }
        assertEquals(List.of(), wrong);
    }

    /** A day: passes within a band with rests between, heated or not, then filled again from a mother bottle. */
    @Test
    void everyDayOfABottleComesToAnEndAndKeepsItsMass() {
        List<String> wrong = new ArrayList<>();
        for (long seed = 0; seed < COUNT / 4; seed++) {
            RandomBottle bottle = RandomBottle.of(seed);
            try {
                day(bottle, wrong);
            } catch (RuntimeException e) {
                wrong.add(bottle + " " + e);
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static void day(RandomBottle bottle, List<String> wrong) {
        Charge full = bottle.charge();
        double start = full.pressure();
        PassTask task = new PassTask(
                bottle.outflow(),
                Math.min(60, bottle.seconds()),
                new WorkingBand(0.6 * start, 1.001 * start),
                bottle.heat(),
                new Rest.Timed(Math.max(60, bottle.seconds()), bottle.heat()),
                BottleModel.of(full.bottle()),
                0);
        Passes passes = Passes.of(full, task, 4);
        double before = full.mass();
        for (Pass pass : passes.passes()) {
            double open = pass.start().mass() - pass.massUsed() - pass.massLeft();
            if (Math.abs(pass.start().mass() - before) > 1e-9 * before || Math.abs(open) > 1e-9 * before) {
                wrong.add(bottle + " pass loses " + open);
            }
            before = pass.massLeft();
        }
        Charge left = passes.passes().get(passes.passes().size() - 1).history().left();
        HeatedRest rest = HeatedRest.of(left, 600, bottle.heat().ambientTemperature(), 350, 295, 12.6);
        if (!(rest.heaterSeconds() >= 0 && rest.heaterSeconds() <= 600 * (1 + 1e-12))) {
            wrong.add(bottle + " heated for " + rest.heaterSeconds());
        }
        refill(bottle, left, wrong);
    }

    private static void refill(RandomBottle bottle, Charge left, List<String> wrong) {
        double capacity = left.bottle().waterCapacity();
        Charge mother = new Bottle(3 * capacity, 0, 900).charged(0.6e3 * 3 * capacity, 293);
        double target = 1000 * FillingCheck.LARGEST_DENSITY * capacity;
        Refill refill = Refill.of(mother, left, target);
        double whole = mother.mass() + left.mass();
        double missing = whole - refill.own().mass() - refill.mother().mass();
        double energy = energy(mother) + energy(left) - energy(refill.own()) - energy(refill.mother());
        if (Math.abs(missing) > 1e-9 * whole || Math.abs(energy) > 1e-9 * 4e5 * whole) {
            wrong.add(bottle + " refill loses " + missing + " kg and " + energy + " J");
        }
        if (refill.reached() && refill.own().mass() < Math.max(left.mass(), target) * (1 - 1e-9)) {
            wrong.add(bottle + " refill says reached at " + refill.own().mass());
        }
    }

    private static double energy(Charge charge) {
        return charge.mass() * charge.state().internalEnergy();
    }

    private static void check(RandomBottle bottle, BottleModel model, List<String> wrong) {
        try {
            History history = model.run(bottle.task());
            Balance balance = history.balance();
            BottleEvent end = history.events().get(history.events().size() - 1);
            boolean sound = balance.massError() < 1e-9
                    && balance.energyError() < 1e-9
                    && ends(end.kind())
                    && history.last().time() <= bottle.seconds() * (1 + 1e-12)
                    && history.moments().stream().allMatch(RandomBottlesTest::sound);
            if (!sound) {
                wrong.add(bottle + " " + model.title() + " " + end + " " + balance.massError() + " "
                        + balance.energyError());
            }
        } catch (RuntimeException e) {
            wrong.add(bottle + " " + model.title() + " " + e);
        }
    }

    private static boolean ends(BottleEvent.Kind kind) {
        return switch (kind) {
            case TIME_UP, EMPTY, BEYOND_EQUATION -> true;
            default -> false;
        };
    }

    private static boolean sound(Sample sample) {
        return sample.pressure() > 0
                && sample.temperature() > 150
                && sample.liquidMass() >= 0
                && sample.vapourMass() >= 0
                && sample.massFlow() >= 0
                && Double.isFinite(sample.wallTemperature());
    }
}
