package org.shotledger.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.shotledger.confidence.ConfidenceStudy;
import org.shotledger.confidence.Unknowns;
import org.shotledger.document.Block;
import org.shotledger.document.CustomerDocument;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Side;
import org.shotledger.plan.Plan;
import org.shotledger.table.Listing;
import org.shotledger.table.Shown;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What the customer's document of a plan says. */
class PlanDocumentTest {
    private static final Plan PLAN = Demo.PLAN;
    private static final CustomerDocument DOCUMENT = Demo.Written.DOCUMENT;

    @Test
    void theFirstPageHoldsWhatIsAskedProposedAndClosest() {
        String page = text(Section.DECISION);
        assertTrue(page.contains(QuantityKind.POWER.text(PLAN.target().wheelPower(), UnitSystem.US)), page);
        assertTrue(page.contains(Math.round(PLAN.stated().power() / 1000) + " kW"), page);
        PLAN.closest(3)
                .forEach(limit -> assertTrue(page.contains(limit.name()) && page.contains(limit.caseName()), page));
        assertTrue(page.contains("Next step"), page);
    }

    @Test
    void theSettingsOnTheCardsAreThoseOfTheSetup() {
        var setup = PLAN.setup();
        String tuner = text(Section.TUNER);
        assertTrue(tuner.contains(SetupTables.entered(setup).toText()), tuner);
        SetupTables.across(setup).forEach(table -> assertTrue(tuner.contains(table.toText()), tuner));
        assertTrue(text(Section.MECHANIC).contains(SetupTables.fitted(setup).toText()));
        assertTrue(text(Section.TRACK).contains(SetupTables.filled(setup).toText()));
        String all = SetupTables.of(setup).toText();
        for (Listing part : List.of(SetupTables.fitted(setup), SetupTables.entered(setup), SetupTables.filled(setup))) {
            Demo.column(part, 0).forEach(name -> assertTrue(all.contains(name), name));
        }
    }

    @Test
    void theFirstPageTellsTheChance() {
        var sure = ConfidenceStudy.quick(PLAN, Unknowns.of(PLAN), 1600, 1);
        String page = text(Section.DECISION);
        assertTrue(
                page.contains(String.format(
                        Locale.ROOT,
                        "%.0f %% that the power is reached",
                        100 * sure.stated().both().probability())),
                page);
    }

    // CGA G-8.2 and G-8.3 (nitrous oxide: asphyxiant, oxidiser, cold), 49 CFR 173.301 (transport), from memory
    @Test
    void theCautionsNameEveryHazardOfTheGas() {
        String said = text(Section.CAUTIONS).toLowerCase(Locale.ROOT);
        for (String hazard : List.of(
                "suffocate without warning",
                "burn skin by cold",
                "oil, grease",
                "open flame",
                "outside the car",
                "outdoors",
                "away from people",
                "backfire",
                "second nitrous valve in series",
                "without the controller",
                "transport",
                "closed courses")) {
            assertTrue(said.contains(hazard), hazard);
        }
    }

    @Test
    void theFirstPageTellsWhatNothingCatchesAndWhatToDo() {
        String page = text(Section.DECISION);
        var faults = org.shotledger.risk.Faults.of(PLAN);
        assertFalse(faults.uncaught().isEmpty());
        for (var effect : faults.uncaught()) {
            assertTrue(page.contains(effect.fault().name()), effect.fault().name());
            assertTrue(page.contains(FaultAdvice.advice(effect)), effect.fault().name());
        }
    }

    @Test
    void theDayStandsInTheDocumentAndIsThatOfThePlan() {
        String said = text(Section.PASS);
        var day = PLAN.day().orElseThrow();
        DayViews.tables(day)
                .forEach(table -> assertTrue(said.contains(table.in(Shown.US).toText()), table.caption()));
        DayViews.sentences(day).forEach(sentence -> assertTrue(said.contains(sentence), sentence));
        assertTrue(said.contains("suffocate without warning"));
        assertEquals(day.scale().size(), DayViews.scale(day).table().rowCount());
        assertTrue(DayViews.refills(day).toText().contains("Chill to"));
    }

    /** Nearly all ethanol stays liquid at the demonstration's charge temperature; the page and the cell say what is seen. */
    @Test
    void aColdChargeIsToldWithWhatIsSeen() {
        String note = ColdChargeNotes.of(PLAN.outcomes());
        for (String said :
                List.of("calculated, not measured", "still liquid", "wet runners", "frost", "melts by itself")) {
            assertTrue(note.contains(said), note);
        }
        assertTrue(text(Section.OUTCOMES).contains(note));
        assertEquals("", ColdChargeNotes.of(List.of()));
        assertTrue(new ResultRenderer.OfPlan().render(PLAN).toString().contains("wet runners"));
    }

    @Test
    void aBrokenPlanIsNotToBeRun() {
        Plan broken = with(limit("crank-torque", false, 950));
        assertTrue(DecisionPage.next(broken).startsWith("Do not run this setup"), DecisionPage.next(broken));
        assertTrue(DecisionPage.next(broken).contains("crank-torque"));
        assertTrue(limits(broken).contains("crank-torque is broken"));
    }

    @Test
    void aHardLimitSaysThatItIsNotToBeMoved() {
        Plan broken = with(limit("relief-disc", true, 950));
        String said = String.join("\n", DecisionPage.needs(broken));
        assertTrue(said.contains("not to be moved"), said);
        assertFalse(limits(broken).matches("(?s).*\\b(relax|relieve|loosen)\\w*.*"));
    }

    /** That section alone: chances and faults are not worked out for it. */
    private static String limits(Plan plan) {
        DocumentContent.Builder builder = DocumentContent.titled("limits", plan.verdict(), "of a plan");
        PlanDocument.limits(builder, plan, UnitSystem.US);
        return text(builder.build(), Section.LIMITS);
    }

    private static Plan with(Limit limit) {
        return new Plan(
                PLAN.job(),
                PLAN.setup(),
                PLAN.outcomes(),
                new Limits(List.of(limit)),
                List.of(),
                PLAN.stopped(),
                List.of());
    }

    private static Limit limit(String key, boolean hard, double value) {
        return new Limit(
                key,
                key,
                QuantityKind.TORQUE,
                value,
                900,
                Side.AT_MOST,
                hard,
                "it fails",
                Provenance.ASSUMED,
                "a test",
                "6,000 rpm",
                "event",
                900);
    }

    private static String text(Section section) {
        return text(DOCUMENT.content(), section);
    }

    private static String text(DocumentContent content, Section section) {
        StringBuilder said = new StringBuilder();
        for (Block block : content.sections().getOrDefault(section, List.of())) {
            if (block instanceof Block.Paragraph paragraph) {
                said.append(paragraph.words()).append('\n');
            } else if (block instanceof Block.Fact fact) {
                said.append(fact.name()).append(": ").append(fact.words()).append('\n');
            } else if (block instanceof Block.Points points) {
                points.points().forEach(point -> said.append(point).append('\n'));
            } else if (block instanceof Block.Rows rows) {
                said.append(rows.listing().toText()).append('\n');
            }
        }
        assertFalse(said.isEmpty(), section.heading());
        return said.toString();
    }

    @Test
    void theVerdictOfTheDocumentIsThatOfThePlan() {
        assertEquals(PLAN.verdict(), DOCUMENT.content().verdict());
    }
}
