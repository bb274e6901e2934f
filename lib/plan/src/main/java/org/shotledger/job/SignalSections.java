package org.shotledger.job;

import static org.shotledger.units.QuantityKind.CURRENT;
import static org.shotledger.units.QuantityKind.FREQUENCY;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.RESISTANCE;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.Excerpt;
import org.shotledger.units.NearestName;
import org.shotledger.wiring.Importance;
import org.shotledger.wiring.PinKind;
import org.shotledger.wiring.PinNeed;
import org.shotledger.wiring.PinOption;
import org.shotledger.wiring.PinSignal;

/** Reads the signals that ask for a pin, with their needs and their other ways. */
final class SignalSections {
    private static final String HABIT = "common practice, no source";
    private static final Map<String, Importance> NEEDS = needs();
    private static final Map<String, Instead> INSTEAD = insteads();
    /** Pulse rate of a wet shot's valves where the sheet gives none, Hz: common practice, no source. */
    private static final double USUAL_PULSES = 20;
    /** Greatest edge rate of a content sensor, Hz: common practice, no source. */
    private static final double USUAL_EDGES = 150;

    private static final Map<String, Channel> CHANNELS = channels();

    /** Signals whose sheet says that they share with a twin without naming what drives both. */
    private final Map<String, SheetSection> twins = new LinkedHashMap<>();
    /** What a signal is to be kept apart from, by its section. */
    private final Map<SheetSection, String> apart = new LinkedHashMap<>();

    /** What a word for a channel asks for, and the pulse or edge rate where the sheet gives none, Hz. */
    private record Channel(Set<PinKind> kinds, double frequency) {
        boolean output() {
            return kinds.stream().allMatch(PinKind::output);
        }
    }

    /** The ways that a sheet names in one word. */
    private enum Instead {
        NOTHING,
        SHARED,
        MULTIPLEXED,
        BUS,
        LOCAL
    }

    List<PinSignal> signals(SheetSection s) {
        List<PinSignal> signals = new ArrayList<>();
        Map<String, SheetSection> sections = s.namedSections();
        sections.forEach((key, one) -> {
            PinSignal signal = signal(ControllerSection.words(key), one);
            if (signal != null) {
                signals.add(signal);
            }
        });
        if (signals.size() < sections.size()) {
            return signals; // who is missing among them is not known
        }
        apart.forEach((section, other) -> known(section, other, signals));
        return signals.stream().map(signal -> withTwin(signal, signals)).toList();
    }

    /** A name that is no signal would keep nothing apart. */
    private static void known(SheetSection section, String other, List<PinSignal> signals) {
        List<String> names =
                signals.stream().map(signal -> signal.name().replace(' ', '-')).toList();
        if (!names.contains(other)) {
            section.report(
                    "apart-from",
                    Excerpt.quoted(other) + " is not among the signals of the sheet; "
                            + NearestName.of(other, names)
                                    .map(near -> "the nearest name is \"" + near + "\".")
                                    .orElse("it has " + String.join(", ", names) + "."));
        }
    }

    /** A twin is driven by whatever drives the first other signal that asks for the same kind of pin. */
    private PinSignal withTwin(PinSignal signal, List<PinSignal> all) {
        SheetSection section = twins.get(signal.name());
        if (section == null) {
            return signal;
        }
        Optional<PinSignal> driver = all.stream()
                .filter(other -> !twins.containsKey(other.name())
                        && other.need().kinds().equals(signal.need().kinds()))
                .findFirst();
        if (driver.isEmpty()) {
            section.report(
                    "instead",
                    "No other signal of the sheet asks for the channel of " + signal.name()
                            + ", so there is none to share with; name in \"command\" what drives both, or choose another way.");
        }
        return driver.map(other -> signal.drivenBy(other.command())).orElse(signal);
    }

    private PinSignal signal(String name, SheetSection s) {
        Channel channel = s.choice("channel", CHANNELS);
        Importance importance = s.choice("need", NEEDS);
        Supplier<PinNeed> need = need(s, channel);
        double rate = s.figureOr("rate", FREQUENCY, 0, 1e5, 10, "a slow signal");
        String command = s.textOr("command", name);
        boolean closes = s.yesOr("closed-without-current", true, "safe without current");
        boolean direct = s.yesOr("on-controller", false, "it may lie on an expander");
        String other = s.textOr("apart-from", "");
        if (!other.isEmpty()) {
            apart.put(s, other);
        }
        List<PinOption> options = new ArrayList<>();
        Instead instead = s.choiceOr("instead", INSTEAD, "nothing", "no other way named");
        instead(name, instead).ifPresent(options::add);
        if (instead == Instead.SHARED && !s.has("command")) {
            twins.put(name, s);
        }
        bus(s).ifPresent(options::add);
        ownDevice(s).ifPresent(options::add);
        relay(s).ifPresent(options::add);
        Set<String> others = other.isEmpty() ? Set.of() : Set.of(ControllerSection.words(other));
        return s.make(
                () -> new PinSignal(name, importance, need.get(), rate, command, closes, direct, others, options));
    }

    private static Supplier<PinNeed> need(SheetSection s, Channel channel) {
        double frequency = s.figureOr(
                "frequency",
                FREQUENCY,
                0,
                1e6,
                channel.frequency(),
                channel.frequency() > 0 ? HABIT : "read or switched now and then");
        double current =
                s.figureOr("current", CURRENT, 0, 200, 0, channel.output() ? "a relay's coil or a signal" : "an input");
        double pullUpLow = s.figureOr("pull-up-low", RESISTANCE, 0, 1e6, 0, "any pull-up");
        boolean pulledUp = channel.kinds().contains(PinKind.ANALOGUE_PULL_UP);
        double pullUpHigh = s.figureOr("pull-up-high", RESISTANCE, 0, 1e6, pulledUp ? 1e6 : 0, "any pull-up");
        boolean levels =
                s.has("level-low") || s.has("level-high") || channel.kinds().contains(PinKind.FREQUENCY);
        double low = s.figureOr("level-low", VOLTAGE, 0, 60, 0, "ground");
        double high = s.figureOr("level-high", VOLTAGE, 0, 60, levels ? 5 : 0, levels ? HABIT : "no levels asked for");
        return () -> new PinNeed(channel.kinds(), pullUpLow, pullUpHigh, low, high, frequency, current);
    }

    private static Optional<PinOption> bus(SheetSection s) {
        return s.sectionIf("bus").map(o -> {
            String part = o.text("part");
            double price = price(o);
            double frames = o.figureOr("frames", FREQUENCY, 0.1, 10_000, 10, HABIT);
            return o.make(() -> PinOption.bus(part, price, frames));
        });
    }

    private static Optional<PinOption> ownDevice(SheetSection s) {
        return s.sectionIf("own-device").map(o -> {
            String part = o.text("part");
            double price = price(o);
            return o.make(() -> PinOption.ownDevice(part, price));
        });
    }

    private static Optional<PinOption> relay(SheetSection s) {
        return s.sectionIf("relay").map(o -> {
            String part = o.text("part");
            double price = price(o);
            double coil = o.figureOr("current", CURRENT, 0.001, 10, 0.2, HABIT);
            Channel channel = o.choiceOr("channel", CHANNELS, "low-side", HABIT);
            double pulses = o.figureOr("frequency", FREQUENCY, 0, 1e6, 0, "on and off");
            return o.make(() -> PinOption.relay(part, price, new PinNeed(channel.kinds(), 0, 0, 0, 0, pulses, coil)));
        });
    }

    private static double price(SheetSection o) {
        return o.figureOr("price", RATIO, 0, 1e6, 0, "not given");
    }

    private static Optional<PinOption> instead(String name, Instead instead) {
        return switch (instead) {
            case NOTHING, SHARED -> Optional.empty();
            case MULTIPLEXED ->
                Optional.of(PinOption.ownDevice("a switch by which " + name + " takes turns on one input", 0));
            case BUS -> Optional.of(PinOption.bus(name + " on the data bus", 0, 10));
            case LOCAL -> Optional.of(PinOption.ownDevice("a device for " + name + " alone", 0));
        };
    }

    private static Map<String, Channel> channels() {
        Map<String, Channel> map = new LinkedHashMap<>();
        map.put("input", new Channel(Set.of(PinKind.ANALOGUE, PinKind.DIGITAL), 0));
        map.put("output", new Channel(Set.of(PinKind.LOW_SIDE), 0));
        map.put("pulse", new Channel(Set.of(PinKind.LOW_SIDE), USUAL_PULSES));
        map.put("analogue", new Channel(Set.of(PinKind.ANALOGUE), 0));
        map.put("pull-up", new Channel(Set.of(PinKind.ANALOGUE_PULL_UP), 0));
        map.put("thermocouple", new Channel(Set.of(PinKind.THERMOCOUPLE), 0));
        map.put("digital", new Channel(Set.of(PinKind.DIGITAL), 0));
        map.put("frequency", new Channel(Set.of(PinKind.FREQUENCY), USUAL_EDGES));
        map.put("low-side", new Channel(Set.of(PinKind.LOW_SIDE), 0));
        map.put("high-side", new Channel(Set.of(PinKind.HIGH_SIDE), 0));
        map.put("half-bridge", new Channel(Set.of(PinKind.HALF_BRIDGE), 0));
        return map;
    }

    private static Map<String, Importance> needs() {
        Map<String, Importance> map = new LinkedHashMap<>();
        for (Importance need : Importance.values()) {
            map.put(need.words(), need);
        }
        return map;
    }

    private static Map<String, Instead> insteads() {
        Map<String, Instead> map = new LinkedHashMap<>();
        map.put("nothing", Instead.NOTHING);
        map.put("shared", Instead.SHARED);
        map.put("multiplexed", Instead.MULTIPLEXED);
        map.put("bus", Instead.BUS);
        map.put("local", Instead.LOCAL);
        return map;
    }
}
