package org.shotledger.reconcile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.Budget;
import org.shotledger.build.Build;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.Finding;
import org.shotledger.logs.LogFindings;
import org.shotledger.units.UnitSystem;

/** The demonstration's logs: their stated errors are found again. */
class ReconciliationTest {
    private static final Path HERON = Path.of("../../data/heron");
    private static final Budget BUDGET = Budget.plan(Build.load(HERON.resolve("build.yaml")));

    private static LogFindings log(String name) {
        return EngineLog.read(HERON.resolve("logs").resolve(name)).findings();
    }

    @Test
    void print() throws IOException {
        Files.writeString(HERON.resolve("logs/pull-with-nitrous.csv"), DemoLog.text(BUDGET, true));
        Files.writeString(HERON.resolve("logs/pull-without-nitrous.csv"), DemoLog.text(BUDGET, false));
        for (String n : new String[] {"pull-with-nitrous.csv", "pull-without-nitrous.csv"}) {
            System.out.println(log(n));
            Reconciliation r = Reconciliation.of(BUDGET, log(n));
            r.sentences(UnitSystem.US).forEach(System.out::println);
        }
    }
}
