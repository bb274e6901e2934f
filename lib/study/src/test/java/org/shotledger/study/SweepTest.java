package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.Wish;

class SweepTest {

    @Test
    void a_sweep_finds_what_evaluating_one_by_one_finds() {
        Space space = Heron.small("0", "1");
        SweepResult swept = Sweep.run(space);
        ExactStudy exact = new ExactStudy(space);
        List<Figures> all =
                LongStream.range(0, space.size()).mapToObj(exact::outcome).toList();
        long accepted = all.stream().filter(Figures::accepted).count();
        long close = all.stream().filter(o -> Math.abs(o.leastMargin()) < 2e-3).count();
        assertTrue(swept.complete());
        assertTrue(Math.abs(accepted - swept.accepted()) <= close);
        assertEquals(
                space.size(),
                swept.accepted()
                        + swept.brokeFirst().values().stream().mapToLong(n -> n).sum());
        assertEquals(swept.accepted(), swept.power().total());
        double most = all.stream()
                .filter(o -> o.accepted() && o.wheelPower() >= swept.task().wanted())
                .mapToDouble(Figures::leastMargin)
                .max()
                .orElseThrow();
        assertEquals(most, swept.recommended().outcome().leastMargin(), 2e-3);
        for (Candidate member : swept.front()) {
            assertTrue(all.stream()
                    .noneMatch(o -> o.accepted()
                            && o.wheelPower() > member.outcome().wheelPower() + 1500
                            && o.leastMargin() > member.outcome().leastMargin() + 3e-3
                            && o.nitrousFlow() < member.outcome().nitrousFlow() - 4e-4));
        }
    }

    /** What a stretch leaves out by its bounds must not matter: the counts are those of settings gone through one at a time. */
    @Test
    void whole_stretches_count_what_their_settings_count_one_at_a_time() {
        Space space = Heron.stretched();
        SweepResult swept = Sweep.run(space);
        List<Figures> each = new Factors(space, new Courses(space))
                .outcomes(LongStream.range(0, space.size()).toArray(), SweepTask.of(space));
        long accepted = each.stream().filter(Figures::accepted).count();
        long onTheEdge =
                each.stream().filter(o -> Math.abs(o.leastMargin()) < 5e-5).count();
        assertTrue(accepted > space.size() / 20 && accepted < space.size(), accepted + " keep every limit");
        assertTrue(Math.abs(accepted - swept.accepted()) <= onTheEdge, accepted + " " + swept.accepted());
        Factors factors = new Factors(space, new Courses(space));
        for (String key : factors.keys()) {
            long one = each.stream()
                    .filter(o -> !o.accepted() && o.first().equals(key))
                    .count();
            long whole = swept.brokeFirst().getOrDefault(factors.name(key), 0L);
            assertTrue(Math.abs(one - whole) <= space.size() / 500, key + " " + one + " " + whole);
        }
        double most = each.stream()
                .filter(Figures::accepted)
                .mapToDouble(Figures::wheelPower)
                .max()
                .orElseThrow();
        double found = swept.front().stream()
                .mapToDouble(c -> c.outcome().wheelPower())
                .max()
                .orElseThrow();
        assertEquals(most, found, 2e-3 * most);
    }

    @Test
    void the_result_does_not_depend_on_which_thread_was_faster() {
        Space space = Heron.small("1");
        SweepResult first = Sweep.run(space);
        SweepResult second = Sweep.run(space);
        assertEquals(first.brokeFirst(), second.brokeFirst());
        assertEquals(indices(first.best()), indices(second.best()));
        assertEquals(indices(first.front()), indices(second.front()));
    }

    private static List<Long> indices(List<Candidate> candidates) {
        return candidates.stream().map(c -> c.outcome().index()).toList();
    }

    @Test
    void an_interrupt_stops_it_and_the_result_says_so() {
        List<Long> seen = new ArrayList<>();
        Progress interrupting = (done, total) -> {
            seen.add(done);
            Thread.currentThread().interrupt();
        };
        SweepResult partial = Sweep.run(Heron.wide(), SweepTask.of(Heron.wide()), interrupting);
        assertFalse(Thread.interrupted());
        assertFalse(partial.complete());
        assertTrue(partial.summary().startsWith("STOPPED"), partial.summary());
        assertFalse(seen.isEmpty());
    }

    @Test
    void without_a_survivor_it_says_what_broke_most() {
        Space space = Heron.small("1");
        Wish more = new Wish("event", 1e6, 5800, 7800, 1, 10, Optional.empty());
        SweepResult none = Sweep.run(space.under(more));
        StudyException e = assertThrows(StudyException.class, none::recommended);
        assertTrue(e.getMessage().contains("most were refused by"), e.getMessage());
    }

    @Test
    void objectives_must_differ() {
        Space space = Heron.small("1");
        SweepTask task = SweepTask.of(space);
        assertThrows(StudyException.class, () -> task.front(Objective.POWER));
        assertThrows(StudyException.class, () -> task.front(Objective.POWER, Objective.POWER));
        assertThrows(StudyException.class, () -> new SweepTask(Double.NaN, Objective.POWER, 1, task.objectives()));
    }
}
