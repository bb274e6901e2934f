package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shotledger.causes.Causes;
import org.shotledger.display.Display;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.Finding;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.reconcile.ComparedChannel;
import org.shotledger.reconcile.NitrousShare;
import org.shotledger.reconcile.Reconciliation;
import org.shotledger.revision.NextStep;
import org.shotledger.revision.RunSetup;
import org.shotledger.table.Shown;
import org.shotledger.units.UnitSystem;

/** How logs and what they say of a plan are shown. */
class LogViewTest {
    private static final Path FOLDER = Demo.FOLDER;
    private static final Outcome RUN = Demo.PLAN.stated();
    private static final LogFindings WITH = findings("pull-with-nitrous.csv");

    private static LogFindings findings(String name) {
        return EngineLog.read(FOLDER.resolve("logs").resolve(name)).findings();
    }

    private static String html(Object shown) {
        return String.valueOf(Display.bundle(shown).get(Display.HTML));
    }

    @Test
    void a_log_shows_what_is_wrong_with_it() {
        assertTrue(html(WITH.log()).contains("clipped"));
        assertEquals(WITH.all().size(), LogTables.of(WITH).in(Shown.SI).table().rowCount());
    }

    @Test
    void a_comparison_shows_its_sentences_table_and_charts() {
        Reconciliation laid = Reconciliation.of(RUN, WITH);
        String html = html(laid);
        assertTrue(html.contains("leaner than expected"));
        assertEquals(3, html.split("<svg", -1).length, "power and lambda are drawn");
        String alt = LogCharts.of(laid.overlay(ComparedChannel.LAMBDA), UnitSystem.SI)
                .alt();
        assertTrue(alt.contains("root mean square"), alt);
        assertTrue(html(laid.overlay(ComparedChannel.MANIFOLD_PRESSURE)).contains("left out"));
    }

    @Test
    void the_share_shows_itself() {
        assertTrue(html(NitrousShare.of(RUN, WITH, findings("pull-without-nitrous.csv")))
                .contains("the nitrous added"));
    }

    @Test
    void causes_show_their_sentences_a_table_and_every_channel_in_one_column() {
        Causes causes = Causes.of(RUN, WITH);
        String html = html(causes);
        assertTrue(html.contains(causes.suspects().get(0).cause().words()), html);
        assertEquals(2, html.split("<svg", -1).length, "one picture");
        String svg = LogCharts.of(causes, UnitSystem.US).svg();
        causes.traces().forEach(t -> assertTrue(svg.contains(t.channel().words()), t.channel()::words));
    }

    @Test
    void a_call_shows_its_checkpoints() {
        RunSetup run = RunSetup.of(Demo.PLAN, WITH.log(), FOLDER.resolve("logs"));
        NextStep next = NextStep.of(run, WITH);
        String html = html(next);
        assertTrue(html.contains(next.call().word()), html);
        next.readings().forEach(r -> assertTrue(html.contains(r.checkpoint().what()), html));
    }

    @Test
    void values_not_to_be_trusted_are_drawn_apart() {
        String svg =
                LogCharts.of(WITH, LogChannel.MANIFOLD_PRESSURE, UnitSystem.US).svg();
        int clipped =
                WITH.of(Finding.Kind.CLIPPED).stream().mapToInt(Finding::count).sum();
        assertTrue(clipped > 20 && svg.contains("not to be trusted (" + clipped + " samples)"), "clipped " + clipped);
    }
}
