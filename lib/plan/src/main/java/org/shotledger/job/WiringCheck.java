package org.shotledger.job;

import java.util.List;
import java.util.stream.Stream;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.sheet.Problem;
import org.shotledger.wiring.PinPlacement;
import org.shotledger.wiring.SafetyFinding;
import org.shotledger.wiring.Wiring;

/** What is wrong with the wiring of a sheet that reads well: signals without a pin, a safety chain with a gap. */
final class WiringCheck {
    private WiringCheck() {}

    /** A signal that must be there and has no pin: the nitrous must not be armed. */
    static List<Problem> problems(Job job) {
        return wiring(job.car())
                .flatMap(wiring -> wiring.pins().missing().stream())
                .map(missing -> problem(job, missing))
                .toList();
    }

    private static Problem problem(Job job, PinPlacement missing) {
        String path = "wiring.signals." + missing.signal().name().replace(' ', '-');
        return said(
                job,
                path + ".need",
                path,
                missing.signal().name() + " must be there and has no pin: " + missing.why()
                        + "; free a pin, give it another way or add an expander, the nitrous must not be armed without it.");
    }

    /** Rules of the safety chain that do not hold, where the sheet describes the chain. */
    static List<Problem> notices(Job job) {
        return wiring(job.car())
                .flatMap(wiring -> wiring.safety().stream())
                .flatMap(chain -> chain.findings().stream())
                .filter(finding -> !finding.holds())
                .map(finding -> notice(job, finding))
                .toList();
    }

    private static Problem notice(Job job, SafetyFinding finding) {
        return said(
                job,
                "wiring.output-current",
                "wiring.safety",
                "It does not hold that " + finding.rule() + " (" + finding.because() + ").");
    }

    private static Stream<Wiring> wiring(Car car) {
        return car.wiring().stream();
    }

    private static Problem said(Job job, String origin, String path, String sentence) {
        int line = job.car().origin(origin).map(Origin::line).orElse(1);
        return new Problem(job.source().file(), line, 0, path, "", sentence);
    }
}
