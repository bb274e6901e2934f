package org.shotledger.cars;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.shotledger.car.BasePull;
import org.shotledger.car.Origin;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Setup;

/**
 * Makes plausible cars from a seed: 1.0 to 8.4 litres, 3 to 10 cylinders, all fuels, one nozzle or one for each cylinder, fuel from a cell
 * or from the main rail, bottles and weathers; and mutants of good sheets, in which one or two figures are another, mostly a nonsense.
 */
final class CarLot {
    private static final List<String> FUELS =
            List.of("gasoline", "ethanol-blend", "ethanol-blend", "ethanol", "methanol");

    /** 0.8 lb of nitrous oxide in 10 s for 100 hp, kg/J: common practice, no source. */
    private static final double NITROUS_PER_POWER = 4.87e-7;

    /** Nitrous oxide through a jet's area from a warm bottle, kg/(s m2), roughly: jets are drawn around it. */
    private static final double JET_FLUX = 11_500;

    private final SplittableRandom random;

    CarLot(long seed) {
        random = new SplittableRandom(seed);
    }

    /** The figures of a car that hang together: what the pull gives follows from its air. */
    Map<String, String> figures() {
        int cylinders = 3 + random.nextInt(8);
        double litres = Math.min(8.4, Math.max(1.0, cylinders * between(0.3, 0.84)));
        double stroke = Math.cbrt(4e-3 * litres / (Math.PI * cylinders));
        double redLine = Math.rint(between(18.5, 22) * 30 / stroke / 100) * 100;
        double rpm = Math.rint(redLine * between(0.82, 0.9) / 100) * 100;
        double boost = between(0.5, 1.8);
        double density = (0.98 + boost) * 1e5 / (287.05 * 318);
        double air = litres * 1e-3 * rpm / 120 * density * between(0.88, 1.02);
        double wheel = air * 1e6 * 0.86 / 745.7;
        String fuel = FUELS.get(random.nextInt(FUELS.size()));
        double ethanol = between(0.3, 0.85);
        double ratio = switch (fuel) {
            case "gasoline" -> 11.8;
            case "ethanol" -> 7.2;
            case "methanol" -> 5.1;
            default -> 11.8 - 4.4 * ethanol;
        };
        double fuelFlow = air / ratio / 770;
        Map<String, String> said = new LinkedHashMap<>();
        said.put("name", "drawn car");
        said.put("invented", "yes");
        said.put("cylinders", String.valueOf(cylinders));
        said.put("displacement", text(litres, "L"));
        said.put("compression", text(fuel.equals("gasoline") ? between(8, 9.5) : between(8.5, 11), ""));
        said.put("red-line", text(redLine, "rpm"));
        said.put("fuel", fuel);
        said.put("ethanol", text(100 * ethanol, "%"));
        if (!fuel.equals("ethanol-blend")) {
            said.remove("ethanol");
        }
        said.put("nitrous-fuel", random.nextInt(3) == 0 ? "methanol" : "same");
        said.put("boost", text(boost, "bar gauge"));
        said.put("pull-rpm", text(rpm, "rpm"));
        said.put("pull-power", text(wheel, "hp"));
        said.put("injector-flow", text(fuelFlow / cylinders / between(0.5, 0.72) * 6e7, "cc/min"));
        said.put("pump-flow", text(fuelFlow * between(1.7, 2.4) * 3.6e6, "L/h"));
        said.put("compressor-flow", text(air * between(1.4, 1.65), "kg/s"));
        said.put("compressor-ratio", text(Math.max(2, (0.95 + boost) / 0.75 * between(1.1, 1.2)), ""));
        boolean runners = random.nextBoolean();
        said.put("nozzles", String.valueOf(runners ? cylinders : 1));
        said.put("position", runners ? "runner" : "plenum");
        double more = between(1.03, 1.3);
        int passes = 1 + random.nextInt(4);
        said.put("passes", String.valueOf(passes));
        double gas = Math.max(0.15, 1.15 * more - 1) * wheel / 100 * 0.8 * passes;
        said.put("charge", text(Math.min(40, Math.max(3, gas * between(1.2, 2))), "lb"));
        said.put("target-power", text(more * wheel, "hp"));
        said.put("rpm-low", text(rpm * between(0.68, 0.8), "rpm"));
        said.put("rpm-high", text(Math.min(0.98 * redLine, rpm * between(1.03, 1.1)), "rpm"));
        said.put("altitude", text(between(0, 2000), "m"));
        said.put("temperature", text(between(5, 38), "degC"));
        said.put("mass", text(between(1000, 1900), "kg"));
        said.put("drive", List.of("rear", "front", "all").get(random.nextInt(3)));
        boolean rail = random.nextBoolean();
        if (rail && said.get("nitrous-fuel").equals("same")) {
            said.put("nitrous-fuel-supply", "main-rail");
        }
        return said;
    }

    Job car(Path folder) {
        Starter.write(folder, "", figures(), folder);
        return Job.load(folder);
    }

    /** Any boost the sheet allows, and jets for a shot of a fifth to four fifths of the pull, well or badly matched to each other. */
    Setup setup(Job job) {
        var car = job.car();
        BasePull.Point pull = car.basePull().strongest();
        double flow = between(0.2, 0.8) * pull.wheelPower() * NITROUS_PER_POWER / car.nitrous().nozzles();
        double nitrous = Math.sqrt(flow / JET_FLUX * 4 / Math.PI);
        return job.setup()
                .withBoost(BoostTarget.constant(between(0.6, 1.1) * pull.gaugePressure()))
                .withJets(new JetPair(nitrous, between(0.45, 0.75) * nitrous));
    }

    /** One change of a sheet: where, and what stands there then. */
    record Change(String path, String text) {}

    /** One or two figures of a sheet changed. */
    List<Change> changes(Job good) {
        List<Origin> figures = good.car().origins().values().stream()
                .filter(o -> o.kind() != null
                        && !o.from().startsWith("default: ")
                        && !o.path().startsWith("wiring")
                        && !o.path().equals("format"))
                .toList();
        List<Change> changes = new ArrayList<>();
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            Origin origin = figures.get(random.nextInt(figures.size()));
            written(origin.text()).ifPresent(text -> changes.add(new Change(origin.path(), text)));
        }
        return changes;
    }

    private Optional<String> written(String text) {
        int end = 0;
        while (end < text.length() && "0123456789.".indexOf(text.charAt(end)) >= 0) {
            end++;
        }
        if (end == 0) {
            return Optional.empty();
        }
        double number = Double.parseDouble(text.substring(0, end));
        double factor = List.of(0.1, 0.3, 0.7, 0.9, 1.1, 1.4, 3.0, 10.0).get(random.nextInt(8));
        String unit = text.substring(end).replaceFirst("\\s*\\+/-.*", "");
        return Optional.of(new BigDecimal(number * factor)
                        .round(new MathContext(5))
                        .stripTrailingZeros()
                        .toPlainString()
                + unit);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static String text(double value, String unit) {
        return (String.format(Locale.ROOT, "%.4g", value) + " " + unit).strip();
    }
}
