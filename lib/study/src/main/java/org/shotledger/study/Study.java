package org.shotledger.study;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.study.Rank.Ranked;
import org.shotledger.units.UnitSystem;

/**
 * Every combination of a space held against every limit in every case of a job.
 *
 * <p>Counts and histogram are by tables made of exact operating points; whatever is listed is worked out exactly once more.
 *
 * @param space the combinations, around the plan for the job
 * @param kept how many keep every limit in every case
 * @param reached how many of those reach the power asked for
 * @param refusedBy how many each limit refuses, by its name, most first; a combination counts for the limit it breaks most
 * @param best the best, best first; where some keep every limit, only such
 * @param front those that keep every limit and that no other of the list betters in power, margin and nitrous at once, by power
 * @param frontGrain share of margin, and of the target's power and the plan's nitrous, by which one that is not listed may be better
 * @param histogram power over all combinations
 * @param difference how far tables and exact outcomes were apart
 */
public record Study(
        Space space,
        long kept,
        long reached,
        Map<String, Long> refusedBy,
        List<Candidate> best,
        List<Candidate> front,
        double frontGrain,
        Histogram histogram,
        Difference difference) {

    public Study {
        refusedBy = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(refusedBy));
        best = List.copyOf(best);
        front = List.copyOf(front);
    }

    /**
     * What is worked out exactly.
     *
     * @param best how many of the best are listed, at most 24
     * @param front how many members of the front are listed, besides the ends of its objectives
     * @param checks how many combinations are drawn to compare the tables with
     */
    public record Exact(int best, int front, int checks) {
        /** A page of a notebook. */
        public static final Exact USUAL = new Exact(6, 10, 16);
    }

    /**
     * Judges every combination.
     *
     * @param job the job with its cases
     * @param space the combinations
     * @return the study
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public static Study of(Job job, Space space) {
        return of(job, space, Exact.USUAL);
    }

    /**
     * Judges every combination. The work is spread over the common pool, or over the pool it is called in.
     *
     * @param job the job with its cases
     * @param given the combinations
     * @param exact how much is worked out exactly
     * @return the study
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public static Study of(Job job, Space given, Exact exact) {
        Space space = given.plan().job().equals(job)
                ? given
                : new Space(Plan.of(job, given.plan().setup()), given.axes());
        Tally tally = Sweep.of(space, exact.checks());
        Comparator<Ranked> bestFirst = Rank.bestFirst(job.target());
        List<Ranked> ranked = tally.best(exact.best());
        Front.Thinned thinned = tally.front.thinned(exact.front());
        Map<Long, Candidate> known = exactly(
                space,
                Stream.concat(ranked.stream(), thinned.members().stream()).map(Ranked::index),
                tally.samples.stream().map(Difference.Sample::index));
        List<Candidate> best = ranked.stream()
                .map(one -> known.get(one.index()))
                .sorted(Comparator.comparing(Candidate::ranked, bestFirst))
                .toList();
        List<Candidate> members = thinned.members().stream()
                .map(one -> known.get(one.index()))
                .filter(member -> member.margin() >= 0)
                .toList();
        return new Study(
                space,
                tally.kept,
                tally.reached,
                refusedBy(Names.of(space.plan()), tally.refused),
                best,
                members.stream()
                        .filter(member ->
                                members.stream().noneMatch(other -> Rank.dominates(other.ranked(), member.ranked())))
                        .toList(),
                thinned.grain(),
                Histogram.of(Tally.POWER_STEP * job.target().wheelPower(), tally.powerAll(), tally.powerKept),
                Difference.largest(tally.samples.stream()
                        .map(sample -> Difference.one(sample, known.get(sample.index())))
                        .toList()));
    }

    /** By number, each once: one of the best may be a member of the front, or drawn. */
    private static Map<Long, Candidate> exactly(Space space, Stream<Long> listed, Stream<Long> drawn) {
        Sweep.stopIfAsked();
        List<Long> indices = Stream.concat(listed, drawn).distinct().toList();
        return Candidates.of(space, indices).stream()
                .collect(Collectors.toMap(Candidate::index, candidate -> candidate));
    }

    private static Map<String, Long> refusedBy(Names names, long[] refused) {
        Map<String, Long> counts = new LinkedHashMap<>();
        IntStream.range(0, refused.length)
                .filter(i -> refused[i] > 0)
                .boxed()
                .sorted(Comparator.comparing(i -> -refused[i]))
                .forEach(i -> counts.put(names.words().get(i), refused[i]));
        return counts;
    }

    /**
     * The ranking in words.
     *
     * @return what makes a combination better than another
     */
    public String ranking() {
        return Rank.WORDS;
    }

    /**
     * What came out.
     *
     * @param system the units
     * @return counts, the best, how they are ranked, and how sure the tables are
     */
    public String summary(UnitSystem system) {
        String first = best.isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        " %s: %s with %s at the wheels and a least margin of %.1f %% (%s, case '%s').",
                        best.get(0).margin() < 0
                                ? "None keeps every limit; the least broken"
                                : best.get(0).reached()
                                        ? "Ranked first"
                                        : "None reaches the power; the nearest that keeps every limit",
                        best.get(0).name(system),
                        org.shotledger.units.QuantityKind.POWER.text(best.get(0).wheelPower(), system),
                        100 * best.get(0).margin(),
                        best.get(0).decides().name(),
                        best.get(0).decides().caseName());
        return String.format(
                Locale.ROOT,
                "%,d combinations in %d cases: %,d keep every limit, %,d of them reach the power.%s Ranking: %s. Estimates: %s.",
                space.size(),
                space.plan().outcomes().size(),
                kept,
                reached,
                first,
                ranking(),
                difference);
    }
}
