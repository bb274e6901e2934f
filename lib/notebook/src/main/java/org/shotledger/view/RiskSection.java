package org.shotledger.view;

import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.risk.Drift;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.Faults;
import org.shotledger.units.UnitSystem;

/** The section on what could go wrong, what catches it, and how far the inputs may stray. */
final class RiskSection {
    private RiskSection() {}

    static void write(DocumentContent.Builder builder, Faults faults, Drift drift, UnitSystem charts) {
        builder.say(
                Section.RISKS,
                "Each fault changes one thing of this car or setup and evaluates it anew. How long an engine bears a"
                        + " broken limit is common practice, no source: treat every such time as a guess.");
        builder.rows(Section.RISKS, RiskTables.effects(faults));
        builder.rows(Section.RISKS, RiskTables.catches(faults));
        builder.picture(Section.RISKS, RiskCharts.of(faults, charts));
        builder.rows(Section.RISKS, RiskTables.of(faults.leak()));
        faults.arming().reachingTooFar().forEach(sentence -> builder.say(Section.RISKS, sentence));
        builder.rows(Section.RISKS, RiskTables.of(faults.arming()));
        builder.rows(Section.RISKS, RiskTables.reasons(faults.arming()));
        DriftMap map = DriftMap.of(drift, 0);
        builder.picture(Section.RISKS, RiskCharts.of(map, charts));
        builder.rows(Section.RISKS, RiskTables.of(map));
    }
}
