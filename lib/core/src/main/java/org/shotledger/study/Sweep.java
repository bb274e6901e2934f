package org.shotledger.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;

/** Holds every combination of a space against every limit, in constant memory. */
public final class Sweep {
    private static final long LOOK_EVERY_MS = 100;

    private final Space space;
    private final SweepTask task;
    private final Progress progress;
    private final AtomicBoolean stop = new AtomicBoolean();

    private Sweep(Space space, SweepTask task, Progress progress) {
        this.space = space;
        this.task = task;
        this.progress = progress;
    }

    /**
     * Sweeps a space for its own wish.
     *
     * @param space the space
     * @return what was found
     * @throws StudyException when a table cannot be made
     */
    public static SweepResult run(Space space) {
        return run(space, SweepTask.of(space), Progress.SILENT);
    }

    /**
     * Sweeps a space. An interrupt of the calling thread stops the sweep and gives what was found until then.
     *
     * @param space the space
     * @param task what to look for
     * @param progress told how far it has come, by the calling thread
     * @return what was found; see {@link SweepResult#complete()}
     * @throws StudyException when a table cannot be made
     */
    public static SweepResult run(Space space, SweepTask task, Progress progress) {
        return new Sweep(space, task, progress).run();
    }

    private SweepResult run() {
        Courses courses = new Courses(space);
        Factors factors = new Factors(space, courses);
        Tally whole = new Tally(factors.keys().size(), task);
        double power = 0;
        double lambda = 0;
        progress.at(0, space.size());
        for (int e = 0; e < factors.engines() && !stopped(); e++) {
            EngineSide side = factors.engine(e);
            power = Math.max(power, side.table.powerError());
            lambda = Math.max(lambda, side.table.lambdaError());
            sweep(side, factors, whole);
        }
        return result(courses, factors, whole, power, lambda);
    }

    private boolean stopped() {
        if (Thread.interrupted()) {
            stop.set(true);
        }
        return stop.get();
    }

    private void sweep(EngineSide side, Factors factors, Tally whole) {
        int threads = Math.max(1, Runtime.getRuntime().availableProcessors());
        AtomicInteger next = new AtomicInteger();
        CountDownLatch finished = new CountDownLatch(threads);
        AtomicReference<RuntimeException> failed = new AtomicReference<>();
        Tally[] tallies = new Tally[threads];
        for (int t = 0; t < threads; t++) {
            Tally tally = new Tally(factors.keys().size(), task);
            tallies[t] = tally;
            Thread worker = new Thread(() -> work(side, factors, tally, next, failed, finished), "sweep-" + t);
            worker.setDaemon(true);
            worker.start();
        }
        long each = space.size() / ((long) factors.engines() * side.nitrous.size());
        await(finished, next, whole.evaluated, each);
        if (failed.get() != null) {
            throw failed.get();
        }
        for (Tally tally : tallies) {
            whole.join(tally);
        }
        progress.at(whole.evaluated, space.size());
    }

    private void work(
            EngineSide side,
            Factors factors,
            Tally tally,
            AtomicInteger next,
            AtomicReference<RuntimeException> failed,
            CountDownLatch finished) {
        try {
            Sweeper sweeper = new Sweeper(side, factors.keys(), tally, task);
            for (int n = next.getAndIncrement(); n < side.nitrous.size() && !stop.get(); n = next.getAndIncrement()) {
                sweeper.sweep(side.nitrous.get(n), stop::get);
            }
        } catch (RuntimeException e) {
            stop.set(true);
            failed.compareAndSet(null, e);
        } finally {
            finished.countDown();
        }
    }

    private void await(CountDownLatch finished, AtomicInteger next, long before, long each) {
        while (true) {
            try {
                if (finished.await(LOOK_EVERY_MS, TimeUnit.MILLISECONDS)) {
                    return;
                }
                long done = before + each * next.get();
                progress.at(Math.min(done, space.size()), space.size());
            } catch (InterruptedException e) {
                stop.set(true);
            }
        }
    }

    private SweepResult result(Courses courses, Factors factors, Tally whole, double power, double lambda) {
        ExactStudy exact = new ExactStudy(space, courses);
        List<Figures> rough = new ArrayList<>(whole.best.all());
        List<Figures> front = whole.front.all();
        rough.addAll(front);
        List<Candidate> listed =
                rough.stream().map(o -> exact.candidate(o.index())).toList();
        double powerDifference = power;
        double lambdaDifference = lambda;
        for (int i = 0; i < listed.size(); i++) {
            Figures is = listed.get(i).outcome();
            powerDifference = Math.max(powerDifference, Math.abs(rough.get(i).wheelPower() / is.wheelPower() - 1));
            lambdaDifference = Math.max(lambdaDifference, Math.abs(rough.get(i).lambda() / is.lambda() - 1));
        }
        int best = whole.best.all().size();
        return new SweepResult(
                space,
                task,
                whole.evaluated,
                whole.accepted,
                whole.reached,
                brokeFirst(factors, whole),
                kept(listed.subList(0, best), true),
                kept(listed.subList(best, listed.size()), false),
                whole.power,
                whole.margin,
                powerDifference,
                lambdaDifference);
    }

    /** What the tables found within their error of a limit may be just beyond it. */
    private List<Candidate> kept(List<Candidate> candidates, boolean ranked) {
        List<Candidate> kept =
                candidates.stream().filter(c -> c.outcome().accepted()).toList();
        if (!ranked || kept.isEmpty()) {
            return kept;
        }
        TopList again = new TopList(task.rankBy(), task.best());
        kept.forEach(c -> again.offer(c.outcome()));
        List<Figures> order = again.all();
        List<Candidate> sorted = new ArrayList<>(kept);
        sorted.sort(Comparator.comparingInt(c -> order.indexOf(c.outcome())));
        return sorted;
    }

    private static Map<String, Long> brokeFirst(Factors factors, Tally whole) {
        Map<String, Long> counts = new LinkedHashMap<>();
        IntStream.range(0, whole.brokeFirst.length)
                .boxed()
                .filter(k -> whole.brokeFirst[k] > 0)
                .sorted(Comparator.comparingLong(k -> -whole.brokeFirst[k]))
                .forEach(k -> counts.put(factors.name(factors.keys().get(k)), whole.brokeFirst[k]));
        return counts;
    }
}
