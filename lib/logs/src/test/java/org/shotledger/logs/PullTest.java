package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Finding the pull and the nitrous in a made-up log of known shape: idle, a pull from 3 s to 7 s, coasting. */
class PullTest {
    private static LogFindings log(String extra) {
        Random random = new Random(9);
        StringBuilder text =
                new StringBuilder("time [s],engine speed [rpm],manifold pressure [bar abs]" + extra + "\n");
        for (int i = 0; i < 500; i++) {
            double t = 0.02 * i;
            double rpm = t < 3 ? 3000 : t < 7 ? 3000 + 1000 * (t - 3) : 7000 - 800 * (t - 7);
            double map = t > 2.9 && t < 7 ? 2.2 : 0.6;
            text.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.1f,%.3f",
                    t,
                    rpm + 8 * random.nextGaussian(),
                    map + 0.01 * random.nextGaussian()));
            boolean on = t >= 5 && t <= 6.5;
            if (extra.contains("nitrous")) {
                text.append(on ? ",1" : ",0");
            }
            if (extra.contains("bottle")) {
                double bar = t < 5 ? 60 : t < 6.5 ? 60 - 1.2 * (t - 5) : 60 - 1.2 * 1.5;
                text.append(String.format(Locale.ROOT, ",%.3f", bar + 0.01 * random.nextGaussian()));
            }
            text.append("\n");
        }
        return EngineLog.read(new StringReader(text.toString()), "pull.csv", LogMapping.NONE)
                .findings();
    }

    @Test
    void the_pull_is_where_the_engine_runs_up_under_load() {
        List<Pull> pulls = Pull.in(log(""), PullRule.USUAL);
        assertEquals(1, pulls.size());
        Pull pull = pulls.get(0);
        assertEquals(3, pull.from(), 0.1);
        assertEquals(7, pull.to(), 0.1);
        assertEquals(4000, pull.rpmHigh() - pull.rpmLow(), 150);
        assertTrue(pull.why().contains("greatest manifold pressure"), pull.why());
    }

    @Test
    void the_state_tells_when_the_nitrous_is_on() {
        OnInterval on = OnInterval.in(log(",nitrous on")).get(0);
        assertEquals(5, on.from(), 1e-9);
        assertEquals(6.5, on.to(), 1e-9);
    }

    @Test
    void without_a_state_the_bottle_tells() {
        List<OnInterval> found = OnInterval.in(log(",bottle pressure [bar abs]"));
        assertEquals(1, found.size());
        assertEquals(5, found.get(0).from(), 0.3);
        assertEquals(6.5, found.get(0).to(), 0.3);
        assertTrue(found.get(0).why().contains("bottle pressure falls"));
    }
}
