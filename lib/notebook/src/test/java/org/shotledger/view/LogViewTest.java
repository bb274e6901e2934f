package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shotledger.display.Display;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.Finding;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.reconcile.ComparedChannel;
import org.shotledger.reconcile.FlowFit;
import org.shotledger.reconcile.NitrousShare;
import org.shotledger.reconcile.Reconciliation;
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
    void the_share_and_the_fit_show_themselves() {
        assertTrue(html(NitrousShare.of(RUN, WITH, findings("pull-without-nitrous.csv")))
                .contains("the nitrous added"));
        assertTrue(html(FlowFit.of(RUN, WITH)).contains("the nitrous fuel flows 0.92"));
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
