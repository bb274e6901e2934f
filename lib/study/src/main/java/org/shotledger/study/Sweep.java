package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
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
    /** Parts into which the nitrous settings are cut; a fixed number, so that the result is the same on every machine. */
    private static final int PARTS = 32;

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

    /**
     * Each part of the nitrous settings has books of its own, joined in the order of the space: what is kept does not depend on
     * which thread was faster.
     */
    private void sweep(EngineSide side, Factors factors, Tally whole) {
        int threads = Math.max(1, Runtime.getRuntime().availableProcessors());
        Tally[] parts = new Tally[Math.min(PARTS, side.nitrous.size())];
        Arrays.setAll(parts, p -> new Tally(factors.keys().size(), task));
        Shared shared = new Shared(
                new AtomicInteger(), new AtomicInteger(), new AtomicReference<>(), new CountDownLatch(threads));
        for (int t = 0; t < threads; t++) {
            Thread worker = new Thread(() -> work(side, factors, parts, shared), "sweep-" + t);
            worker.setDaemon(true);
            worker.start();
        }
        long each = space.size() / ((long) factors.engines() * side.nitrous.size());
        await(shared.finished, shared.done, whole.evaluated, each);
        if (shared.failed.get() != null) {
            throw shared.failed.get();
        }
        for (Tally part : parts) {
            whole.join(part);
        }
        progress.at(whole.evaluated, space.size());
    }

    /** What the threads of one sweep share: the next part, the settings done, the first failure, the end. */
    private record Shared(
            AtomicInteger next,
            AtomicInteger done,
            AtomicReference<RuntimeException> failed,
            CountDownLatch finished) {}

    private void work(EngineSide side, Factors factors, Tally[] parts, Shared shared) {
        try {
            for (int p = shared.next.getAndIncrement(); p < parts.length; p = shared.next.getAndIncrement()) {
                Sweeper sweeper = new Sweeper(side, factors.keys(), parts[p], task);
                int end = first(p + 1, parts.length, side.nitrous.size());
                for (int n = first(p, parts.length, side.nitrous.size()); n < end && !stop.get(); n++) {
                    sweeper.sweep(side.nitrous.get(n), stop::get);
                    shared.done.getAndIncrement();
                }
            }
        } catch (RuntimeException e) {
            stop.set(true);
            shared.failed.compareAndSet(null, e);
        } finally {
            shared.finished.countDown();
        }
    }

    private static int first(int part, int parts, int settings) {
        return (int) ((long) part * settings / parts);
    }

    private void await(CountDownLatch finished, AtomicInteger done, long before, long each) {
        while (true) {
            try {
                if (finished.await(LOOK_EVERY_MS, TimeUnit.MILLISECONDS)) {
                    return;
                }
                progress.at(Math.min(before + each * done.get(), space.size()), space.size());
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
