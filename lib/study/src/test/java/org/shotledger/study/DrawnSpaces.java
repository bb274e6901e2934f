package org.shotledger.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * Spaces of eight invented cars: the demo, the three to begin like, and those of {@code cars.csv}. The values of every axis are drawn
 * from a seed, wide enough around the plan that some combinations keep every limit and others are far from it.
 */
final class DrawnSpaces {
    private DrawnSpaces() {}

    static List<Plan> plans(Path folder) throws IOException {
        List<Plan> plans = new ArrayList<>();
        plans.add(DemoSpace.PLAN);
        for (String like : List.of("five-cylinder", "v8", "given-jets")) {
            plans.add(plan(folder.resolve(like), like, Map.of()));
        }
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/org/shotledger/study/cars.csv"));
        String[] names = lines.get(1).split(",", -1);
        for (String line : lines.subList(2, lines.size())) {
            String[] values = line.split(",", -1);
            Map<String, String> said = new LinkedHashMap<>(Map.of("invented", "yes"));
            for (int i = 0; i < names.length; i++) {
                if (!values[i].isEmpty()) {
                    said.put(names[i], values[i]);
                }
            }
            plans.add(plan(folder.resolve(values[0]), "", said));
        }
        return plans;
    }

    private static Plan plan(Path folder, String like, Map<String, String> said) {
        Starter.write(folder, like, said, folder);
        Job job = Job.load(folder);
        return job.setup().jets().isPresent() ? Plan.of(job, job.setup()) : Plan.find(job);
    }

    static List<Space> all(Path folder) throws IOException {
        return plans(folder).stream().map(DrawnSpaces::around).toList();
    }

    private static Space around(Plan plan) {
        SplittableRandom random = new SplittableRandom(plan.job().name().hashCode());
        Setup setup = plan.setup();
        Space space = Space.of(plan)
                .vary(Axis.MIXTURE, near(random, setup.mixture(), 0.06, 2))
                .vary(Axis.RETARD, near(random, 3, 1, 2))
                .vary(Axis.BOOST_FACTOR, near(random, 0.95, 0.2, 3))
                .vary(Axis.BOTTLE_TEMPERATURE, near(random, setup.bottle().startTemperature(), 0.015, 3))
                .vary(Axis.NITROUS_JET, near(random, setup.jets().orElseThrow().nitrousBore(), 0.3, 5))
                .vary(Axis.FUEL_JET, near(random, setup.jets().orElseThrow().fuelBore(), 0.25, 6));
        return setup.ownRegulator().isEmpty()
                ? space
                : space.vary(
                                Axis.FUEL_PRESSURE,
                                near(random, setup.nitrousRegulator().basePressure(), 0.4, 6))
                        .vary(Axis.BOOST_REFERENCE, 0, 1);
    }

    private static double[] near(SplittableRandom random, double middle, double share, int count) {
        return DoubleStream.generate(() -> middle * (1 + share * (2 * random.nextDouble() - 1)))
                .limit(count)
                .toArray();
    }
}
