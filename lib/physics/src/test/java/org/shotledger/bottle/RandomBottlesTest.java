package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Seeded bottles of 0.1 to 60 L at 250 to 335 K come to an end with an event, whatever is taken out and heated, and keep their books.
 * {@code mvn -o test -pl lib/core -Dtest=RandomBottlesTest -Dshotledger.bottles=10000} tries as many as asked for.
 */
class RandomBottlesTest {
    private static final int COUNT = Integer.getInteger("shotledger.bottles", 150);

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
