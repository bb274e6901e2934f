package org.shotledger.causes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
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
    /** A channel tells two causes apart from so many usual uncertainties on. */
    private static final double TELLS = 3;

    private static final double SMALL = 1e-3;

    private final Outcome outcome;
    private final LogFindings findings;
    private final Evidence evidence;
    private final Prediction prediction;
    private final Run planned;
    private final Values values;
    private final List<Response> responses;
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
            }
        }
        return result();
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
        double most = log(best(fits));
        double total = fits.stream().mapToDouble(f -> Math.exp(log(f) - most)).sum();
        Map<Cause, Double> shares = new EnumMap<>(Cause.class);
        Map<Cause, Fit> bests = new EnumMap<>(Cause.class);
        for (Fit fit : fits) {
            double share = Math.exp(log(fit) - most) / total;
            for (int k : fit.members()) {
                shares.merge(cause(k), share, Double::sum);
                bests.merge(cause(k), fit, (a, b) -> log(a) >= log(b) ? a : b);
            }
        }
        double nothing = Math.exp(log(fits.get(0)) - most) / total;
        List<Suspect> suspects = shares.entrySet().stream()
                .filter(e -> e.getValue() >= Math.max(NAMED, MORE * prior(e.getKey())))
                .sorted(Comparator.comparingDouble(
                                (Map.Entry<Cause, Double> e) -> -Math.round(e.getValue() / SAME_SHARE))
                        .thenComparingDouble(e -> -gain(e.getKey(), bests.get(e.getKey()))))
                .map(e -> suspect(e.getKey(), e.getValue(), bests.get(e.getKey())))
                .toList();
        return new Causes(
                findings.log().file(),
                suspects,
                nothing,
                shown(best(fits)),
                traces(best(fits)),
                missing(),
                evidence.power());
    }

    /** What a cause takes from the misfit of its set. */
    private double gain(Cause cause, Fit fit) {
        int[] others =
                Arrays.stream(fit.members()).filter(k -> cause(k) != cause).toArray();
        Fit without = others.length == 0 ? search.nothing() : search.fit(others);
        return without.least() - fit.least();
    }

    private Suspect suspect(Cause cause, double share, Fit fit) {
        int place = cause(fit.members()[0]) == cause ? 0 : 1;
        Optional<Cause> with =
                fit.members().length > 1 ? Optional.of(cause(fit.members()[1 - place])) : Optional.empty();
        double[][] whole = root(noise, false, fit.members());
        Search free =
                new Search(Arrays.stream(fit.members()).mapToObj(responses::get).toList(), values.off(), whole, 5);
        int[] numbers = IntStream.range(0, fit.members().length).toArray();
        Fit sized = free.fit(numbers);
        Response response = responses.get(fit.members()[place]);
        List<Integer> alike = alike(fit, place);
        return new Suspect(
                cause,
                share,
                with,
                sized.sizes()[place],
                free.deviation(sized, place),
                scatter(fit.members(), sized, place, whole, free),
                response.hypothesis().band(),
                alike.stream().map(this::cause).distinct().toList(),
                tell(fit, place, alike));
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

    /** Other causes that explain the log as well in one place of a set. */
    private List<Integer> alike(Fit fit, int place) {
        List<Integer> alike = new ArrayList<>();
        TreeSet<Cause> named = new TreeSet<>();
        for (int k : fit.members()) {
            named.add(cause(k));
        }
        for (int j = 0; j < responses.size(); j++) {
            if (named.contains(cause(j))) {
                continue;
            }
            int[] members = fit.members().clone();
            members[place] = j;
            if (search.fit(members).least() < fit.least() + ALIKE) {
                alike.add(j);
                named.add(cause(j));
            }
        }
        return alike;
    }

    /** What would tell a cause from those alike: a channel that is not logged, or else a measurement of its own. */
    private List<String> tell(Fit fit, int place, List<Integer> alike) {
        List<String> tell = new ArrayList<>();
        tell.add(cause(fit.members()[place]).measurement());
        double[][] mine = prediction.of(run(fit.members(), fit.sizes()));
        for (int j : alike) {
            int[] members = fit.members().clone();
            members[place] = j;
            Fit other = search.fit(members);
            String told = channel(mine, prediction.of(run(members, other.sizes())))
                    .map(what -> "log " + what.channel().words() + ", which tells it from: " + cause(j).words())
                    .orElse(cause(j).measurement());
            if (!tell.contains(told) && tell.size() < 4) {
                tell.add(told);
            }
        }
        return tell;
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
