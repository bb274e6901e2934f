package org.shotledger.causes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.shotledger.causes.Search.Fit;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.LogFindings;

/** Ranks the causes of one log. */
final class CauseFit {
    /** What is not among the causes of a set lies within this share of its band: our choice, see {@link Causes}. */
    private static final double NEAR = 0.1;
    /** And within this share of a fault. */
    private static final double NEAR_FAULT = 0.05;
    /** How likely it is that the commonest fault is there before the log is read: our choice. */
    private static final double FAULT = 0.05;

    private static final int ROUNDS = 3;
    /** Shares below this are not named. */
    private static final double NAMED = 0.02;
    /** Nor shares that the log has not raised by this factor above what they were before it was read. */
    private static final double MORE = 1.15;
    /** Shares closer than this are ordered by how much of the differences each explains. */
    private static final double SAME_SHARE = 0.05;
    /** Half sums of squares closer than this explain a log alike: a likelihood within a factor of e squared. */
    private static final double ALIKE = 2;
    /** Of two causes neither is likelier by this factor or more: told apart by no more than priors do. Our choice. */
    private static final double LIKELIER = 3;
    /** Causes that are both at work in less than this part of the rarer one's share are there one instead of the other: our choice. */
    private static final double TOGETHER = 0.5;
    /** A channel tells two causes apart from so many usual uncertainties on. */
    private static final double TELLS = 3;

    private static final double SMALL = 1e-3;

    private final Outcome outcome;
    private final LogFindings findings;
    private final Evidence evidence;
    private final Prediction prediction;
    private final Run planned;
    private final Values values;
    private List<Response> responses;
    private Noise noise;
    private Search search;
    private List<Fit> fits = List.of();

    CauseFit(Outcome outcome, LogFindings findings) {
        this.outcome = outcome;
        this.findings = findings;
        this.evidence = Evidence.of(outcome, findings);
        this.prediction = new Prediction(outcome, evidence.bins(), evidence.shape());
        this.planned = Run.of(outcome);
        this.values = Values.of(evidence, prediction.of(planned));
        if (values.size() < 3) {
            throw new IllegalArgumentException("The log " + findings.log().file()
                    + " has too few values where the setup that was run has an answer; log lambda, manifold pressure,"
                    + " the fuel pressures and the bottle pressure over a pull within the speeds of the setup.");
        }
        this.responses = Hypotheses.of(outcome, evidence.powerStandard()).stream()
                .map(h -> Response.of(h, prediction, planned, values))
                .filter(Response::shows)
                .toList();
    }

    Causes causes() {
        noise = Noise.first(values, evidence.bins());
        for (int round = 0; round < ROUNDS; round++) {
            search = new Search(responses, values.off(), root(noise, true, new int[0]), 1);
            fits = fits();
            if (round + 1 < ROUNDS) {
                noise = noise.refined(residual(best(fits)), bands());
                responses = sharper();
            }
        }
        return result();
    }

    /** The responses worked out anew at the sizes which the likelier sets have for them: between two sizes they are only near. */
    private List<Response> sharper() {
        double[] shares = shares();
        List<Response> better = new ArrayList<>(responses);
        for (int k = 0; k < better.size(); k++) {
            double whole = 0;
            double size = 0;
            for (int f = 0; f < shares.length; f++) {
                for (int i = 0; i < fits.get(f).members().length; i++) {
                    if (fits.get(f).members()[i] == k) {
                        whole += shares[f];
                        size += shares[f] * fits.get(f).sizes()[i];
                    }
                }
            }
            if (whole >= NAMED) {
                better.set(k, better.get(k).with(size / whole, prediction, planned, values));
            }
        }
        return List.copyOf(better);
    }

    /** Posterior probability of each set. */
    private double[] shares() {
        double most = log(best(fits));
        double total = fits.stream().mapToDouble(f -> Math.exp(log(f) - most)).sum();
        return fits.stream().mapToDouble(f -> Math.exp(log(f) - most) / total).toArray();
    }

    /** Root of the covariance of noise and of bands, those of some responses left out. */
    private double[][] root(Noise of, boolean near, int[] without) {
        double[][] c = Arrays.stream(of.covariance()).map(double[]::clone).toArray(double[][]::new);
        for (int k = 0; k < responses.size(); k++) {
            int number = k;
            Hypothesis h = responses.get(k).hypothesis();
            double band = near ? Math.min(NEAR * h.band(), NEAR_FAULT * h.fault()) : h.band();
            if (band > 0 && Arrays.stream(without).noneMatch(w -> w == number)) {
                Matrices.addOuter(c, responses.get(k).slope(), band * band);
            }
        }
        return Matrices.root(c);
    }

    private double[][] bands() {
        return responses.stream()
                .filter(r -> r.hypothesis().band() > 0)
                .map(r -> Arrays.stream(r.slope())
                        .map(s -> s * r.hypothesis().band())
                        .toArray())
                .toArray(double[][]::new);
    }

    private List<Fit> fits() {
        List<Fit> all = new ArrayList<>();
        all.add(search.nothing());
        for (int k = 0; k < responses.size(); k++) {
            all.add(search.fit(k));
            for (int j = 0; j < k; j++) {
                if (cause(k) != cause(j)) {
                    all.add(search.fit(j, k));
                }
            }
        }
        return all;
    }

    private Cause cause(int k) {
        return responses.get(k).hypothesis().cause();
    }

    private double log(Fit fit) {
        double log = fit.evidence();
        for (int k : fit.members()) {
            log += Math.log(FAULT * responses.get(k).hypothesis().odds());
        }
        return log;
    }

    private double prior(Cause cause) {
        return responses.stream()
                .filter(r -> r.hypothesis().cause() == cause)
                .mapToDouble(r -> FAULT * r.hypothesis().odds())
                .sum();
    }

    private Fit best(List<Fit> of) {
        return of.stream().max(Comparator.comparingDouble(this::log)).orElseThrow();
    }

    private double[] residual(Fit fit) {
        double[] left = values.off().clone();
        for (int i = 0; i < fit.members().length; i++) {
            double[] shift = responses.get(fit.members()[i]).at(fit.sizes()[i]);
            for (int k = 0; k < left.length; k++) {
                left[k] -= shift[k];
            }
        }
        return left;
    }

    private Causes result() {
        List<Double> posterior = Arrays.stream(shares()).boxed().toList();
        Map<Cause, Double> shares = new EnumMap<>(Cause.class);
        Map<Cause, Fit> bests = new EnumMap<>(Cause.class);
        for (int f = 0; f < posterior.size(); f++) {
            for (int k : fits.get(f).members()) {
                shares.merge(cause(k), posterior.get(f), Double::sum);
                bests.merge(cause(k), fits.get(f), (a, b) -> log(a) >= log(b) ? a : b);
            }
        }
        double nothing = posterior.get(0);
        Standing standing = new Standing(posterior, shares, bests, named(shares));
        List<Suspect> suspects = standing.named().stream()
                .sorted(Comparator.comparingDouble((Cause c) -> -Math.round(shares.get(c) / SAME_SHARE))
                        .thenComparingDouble(c -> -gain(c, bests.get(c))))
                .map(c -> suspect(c, standing))
                .toList();
        return new Causes(
                findings.log(), suspects, nothing, shown(best(fits)), traces(best(fits)), missing(), evidence.power());
    }

    /** How the causes stand: probability of each set, share and likeliest set of each cause, and those worth naming. */
    private record Standing(
            List<Double> posterior, Map<Cause, Double> shares, Map<Cause, Fit> bests, List<Cause> named) {}

    private List<Cause> named(Map<Cause, Double> shares) {
        return shares.keySet().stream()
                .filter(c -> shares.get(c) >= Math.max(NAMED, MORE * prior(c)))
                .toList();
    }

    /** What a cause takes from the misfit of its set. */
    private double gain(Cause cause, Fit fit) {
        int[] others =
                Arrays.stream(fit.members()).filter(k -> cause(k) != cause).toArray();
        Fit without = others.length == 0 ? search.nothing() : search.fit(others);
        return without.least() - fit.least();
    }

    private Suspect suspect(Cause cause, Standing standing) {
        Fit fit = standing.bests().get(cause);
        int place = place(cause, fit);
        Optional<Cause> with =
                fit.members().length > 1 ? Optional.of(cause(fit.members()[1 - place])) : Optional.empty();
        Sized sized = sized(cause, standing.posterior());
        List<Rival> rivals = rivals(cause, fit, standing);
        return new Suspect(
                cause,
                standing.shares().get(cause),
                with,
                sized.size(),
                sized.standard(),
                sized.scatter(),
                responses.get(fit.members()[place]).hypothesis().band(),
                rivals.stream().map(Rival::cause).toList(),
                tell(cause, fit, rivals));
    }

    /** The size of a cause with its standard uncertainties, of everything and of the log alone. */
    private record Sized(double size, double standard, double scatter) {}

    /**
     * The size of a cause over all sets that hold it, each by its share: which others are at work is not known either, and what the sets
     * disagree by belongs to the uncertainty (J. A. Hoeting, D. Madigan, A. E. Raftery and C. T. Volinsky, Statistical Science 14 (1999)
     * 382-417, from memory).
     */
    private Sized sized(Cause cause, List<Double> posterior) {
        double most = 0;
        for (int f = 0; f < posterior.size(); f++) {
            most = place(cause, fits.get(f)) < 0 ? most : Math.max(most, posterior.get(f));
        }
        List<Sized> each = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        double total = 0;
        for (int f = 0; f < posterior.size(); f++) {
            int place = place(cause, fits.get(f));
            if (place >= 0 && posterior.get(f) >= NAMED * most) {
                each.add(sized(fits.get(f).members(), place));
                weights.add(posterior.get(f));
                total += posterior.get(f);
            }
        }
        double mean = 0;
        for (int i = 0; i < each.size(); i++) {
            mean += weights.get(i) / total * each.get(i).size();
        }
        double standard = 0;
        double scatter = 0;
        for (int i = 0; i < each.size(); i++) {
            double apart = Math.pow(each.get(i).size() - mean, 2);
            standard += weights.get(i) / total * (Math.pow(each.get(i).standard(), 2) + apart);
            scatter += weights.get(i) / total * (Math.pow(each.get(i).scatter(), 2) + apart);
        }
        return new Sized(mean, Math.sqrt(standard), Math.sqrt(scatter));
    }

    /** Place of a cause in a set; -1 where it is none of it. */
    private int place(Cause cause, Fit fit) {
        for (int i = 0; i < fit.members().length; i++) {
            if (cause(fit.members()[i]) == cause) {
                return i;
            }
        }
        return -1;
    }

    private Sized sized(int[] members, int place) {
        double[][] whole = root(noise, false, members);
        Search free = new Search(Arrays.stream(members).mapToObj(responses::get).toList(), values.off(), whole, 5);
        Fit fit = free.fit(IntStream.range(0, members.length).toArray());
        return new Sized(fit.sizes()[place], free.deviation(fit, place), scatter(members, fit, place, whole, free));
    }

    /** Deviation of a size from noise alone: that of the weights with which the fit sums the values. */
    private double scatter(int[] members, Fit sized, int place, double[][] whole, Search free) {
        double[][] slopes = new double[members.length][];
        for (int i = 0; i < members.length; i++) {
            slopes[i] = Matrices.whitened(whole, responses.get(members[i]).slopeAt(sized.sizes()[i]));
        }
        double[] row = free.gain(sized, place);
        double[] weights = new double[values.size()];
        for (int i = 0; i < members.length; i++) {
            for (int k = 0; k < weights.length; k++) {
                weights[k] += row[i] * slopes[i][k];
            }
        }
        double[] plain = Matrices.back(whole, weights);
        double variance = 0;
        double[][] c = noise.covariance();
        for (int i = 0; i < plain.length; i++) {
            for (int j = 0; j < plain.length; j++) {
                variance += plain[i] * plain[j] * c[i][j];
            }
        }
        return Math.sqrt(variance);
    }

    /** Another cause that may be there instead, with the set in which it is. */
    private record Rival(Cause cause, Fit fit) {}

    /** Other causes that explain the log as well in one place of a set, and those that are as likely and instead of it. */
    private List<Rival> rivals(Cause cause, Fit fit, Standing standing) {
        int place = place(cause, fit);
        Map<Cause, Fit> rivals = new LinkedHashMap<>();
        for (int j = 0; j < responses.size(); j++) {
            if (place(cause(j), fit) >= 0 || rivals.containsKey(cause(j))) {
                continue;
            }
            int[] members = fit.members().clone();
            members[place] = j;
            Fit other = search.fit(members);
            if (other.least() < fit.least() + ALIKE) {
                rivals.put(cause(j), other);
            }
        }
        for (Cause other : standing.named()) {
            double share = standing.shares().get(other);
            double own = standing.shares().get(cause);
            if (other != cause
                    && Math.max(share, own) < LIKELIER * Math.min(share, own)
                    && together(cause, other, standing.posterior()) < TOGETHER * Math.min(share, own)) {
                rivals.putIfAbsent(other, standing.bests().get(other));
            }
        }
        return rivals.entrySet().stream()
                .map(e -> new Rival(e.getKey(), e.getValue()))
                .toList();
    }

    /** Posterior probability that both are at work. */
    private double together(Cause one, Cause other, List<Double> posterior) {
        double sum = 0;
        for (int f = 0; f < posterior.size(); f++) {
            sum += place(one, fits.get(f)) >= 0 && place(other, fits.get(f)) >= 0 ? posterior.get(f) : 0;
        }
        return sum;
    }

    /** What would tell a cause from its rivals: a channel that is not logged, or else a measurement of its own. */
    private List<String> tell(Cause cause, Fit fit, List<Rival> rivals) {
        Set<String> tell = new LinkedHashSet<>();
        tell.add(cause.measurement());
        double[][] mine = prediction.of(run(fit.members(), fit.sizes()));
        for (Rival rival : rivals) {
            Fit other = rival.fit();
            tell.add(channel(mine, prediction.of(run(other.members(), other.sizes())))
                    .map(what -> "log " + what.channel().words() + ", which tells it from: "
                            + rival.cause().words())
                    .orElse(rival.cause().measurement()));
        }
        return List.copyOf(tell);
    }

    private Run run(int[] members, double[] sizes) {
        Run run = planned;
        for (int i = 0; i < members.length; i++) {
            run = responses.get(members[i]).hypothesis().change().of(run, sizes[i]);
        }
        return run;
    }

    /** The channel that is not logged in which two runs differ most. */
    private Optional<Observable> channel(double[][] a, double[][] b) {
        Observable best = null;
        double most = TELLS;
        for (Observable what : Observable.values()) {
            if (evidence.has(what) || (what == Observable.CRANK_POWER && evidence.has(Observable.WHEEL_POWER))) {
                continue;
            }
            double sum = 0;
            int n = 0;
            for (int i = 0; i < a[0].length; i++) {
                double off = what.seen(a[what.row()][i]) - what.seen(b[what.row()][i]);
                if (!Double.isNaN(off)) {
                    sum += off;
                    n++;
                }
            }
            double size = n == 0 ? 0 : Math.abs(sum / n) / what.usual();
            if (size > most) {
                most = size;
                best = what;
            }
        }
        return Optional.ofNullable(best);
    }

    private List<ChannelDeparture> shown(Fit best) {
        double[] left = residual(best);
        List<ChannelDeparture> all = new ArrayList<>();
        for (Observable what : Observable.values()) {
            for (boolean on : new boolean[] {false, true}) {
                int[] of = Arrays.stream(values.of(what))
                        .filter(k -> evidence.bins().get(values.bin()[k]).on() == on)
                        .toArray();
                if (of.length > 0) {
                    all.add(shown(what, on, of, left));
                }
            }
        }
        return all;
    }

    private ChannelDeparture shown(Observable what, boolean on, int[] of, double[] left) {
        double off = 0;
        double after = 0;
        double base = 0;
        double variance = 0;
        double[] mean = new double[values.size()];
        for (int i : of) {
            mean[i] = 1.0 / of.length;
            off += values.off()[i] / of.length;
            after += left[i] / of.length;
            base += values.base()[i] / of.length;
            for (int j : of) {
                variance += noise.covariance()[i][j] / of.length / of.length;
            }
        }
        double band = Math.sqrt(Arrays.stream(bands())
                .mapToDouble(b -> Matrices.dot(b, mean))
                .map(d -> d * d)
                .sum());
        double at = what.si(base);
        double unit = (what.si(base + SMALL) - what.si(base - SMALL)) / (2 * SMALL);
        return new ChannelDeparture(
                what.channel(),
                on,
                what.si(base + off) - at,
                Math.sqrt(variance) * unit,
                band * unit,
                after * unit,
                at);
    }

    private List<ChannelTrace> traces(Fit best) {
        double[] left = residual(best);
        double[][] bands = bands();
        List<ChannelTrace> all = new ArrayList<>();
        for (Observable what : Observable.values()) {
            int[] of = Arrays.stream(values.of(what))
                    .boxed()
                    .sorted(Comparator.comparingDouble(k -> bin(k).middle()))
                    .mapToInt(k -> k)
                    .toArray();
            if (of.length > 1) {
                all.add(new ChannelTrace(
                        what.channel(),
                        Arrays.stream(of).mapToDouble(k -> bin(k).middle()).toArray(),
                        Arrays.stream(of).mapToDouble(k -> bin(k).rpm()).toArray(),
                        Arrays.stream(of).mapToDouble(k -> bin(k).on() ? 1 : 0).toArray(),
                        Arrays.stream(of)
                                .mapToDouble(k -> what.si(values.base()[k] + values.off()[k]))
                                .toArray(),
                        Arrays.stream(of)
                                .mapToDouble(k -> what.si(values.base()[k]))
                                .toArray(),
                        Arrays.stream(of)
                                .mapToDouble(k -> what.si(values.base()[k] + values.off()[k] - left[k]))
                                .toArray(),
                        Arrays.stream(of)
                                .mapToDouble(k -> perSeen(what, k) * band(bands, k))
                                .toArray(),
                        Arrays.stream(of)
                                .mapToDouble(k -> perSeen(what, k) * Math.sqrt(noise.covariance()[k][k]))
                                .toArray()));
            }
        }
        return all;
    }

    private Bin bin(int value) {
        return evidence.bins().get(values.bin()[value]);
    }

    private static double band(double[][] bands, int value) {
        return Math.sqrt(
                Arrays.stream(bands).mapToDouble(b -> b[value] * b[value]).sum());
    }

    /** SI for one as the fit sees it, about a planned value. */
    private double perSeen(Observable what, int value) {
        double base = values.base()[value];
        return (what.si(base + SMALL) - what.si(base - SMALL)) / (2 * SMALL);
    }

    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        for (Observable what : Observable.values()) {
            boolean power = what == Observable.WHEEL_POWER || what == Observable.CRANK_POWER;
            boolean powered = evidence.has(Observable.WHEEL_POWER) || evidence.has(Observable.CRANK_POWER);
            boolean nitrous = what == Observable.BOTTLE_PRESSURE
                    || what == Observable.BOTTLE_TEMPERATURE
                    || what == Observable.NITROUS_FUEL_PRESSURE;
            if (!evidence.has(what)
                    && !(power && (powered || what == Observable.CRANK_POWER))
                    && !(nitrous && outcome.setup().jets().isEmpty())) {
                missing.add(what.channel().words());
            }
        }
        return missing;
    }
}
