package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.logs.MappingProposal.Proposed;

/** Mappings proposed for made-up headings. */
class MappingProposalTest {
    private static MappingProposal of(String text) {
        return MappingProposal.of(new StringReader(text), "run.csv");
    }

    private static Proposed of(MappingProposal proposal, LogChannel channel) {
        return proposal.channels().stream()
                .filter(p -> p.column().channel() == channel)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + channel + " in\n" + proposal.yaml()));
    }

    private static final String GERMAN = """
            Fahrzeug;Versuch
            Zeit;Drehzahl;Ladedruck;Lambda 1;Kraftstoffdruck;Lachgas aktiv;Ladelufttemperatur;Geschwindigkeit;Bemerkung
            [s];[1/min];[kPa];[-];[bar];;[°C];[km/h];
            0,00;2.850;-40,5;1,002;3,01;AUS;31,5;61,2;a
            0,02;2.861;-38,0;0,998;3,02;AUS;31,6;61,3;b
            0,04;12.870;95,5;0,802;4,02;EIN;31,6;61,5;c
            """;

    @Test
    void headings_units_and_values_make_a_proposal_with_reasons() {
        MappingProposal proposal = of(GERMAN);
        Map<LogChannel, String> units = proposal.channels().stream()
                .collect(Collectors.toMap(
                        p -> p.column().channel(), p -> p.column().unit()));
        assertEquals("s", units.get(LogChannel.TIME), proposal.yaml());
        assertEquals("rpm", units.get(LogChannel.ENGINE_SPEED));
        assertEquals("kPa gauge", units.get(LogChannel.MANIFOLD_PRESSURE));
        assertEquals("bar gauge", units.get(LogChannel.FUEL_PRESSURE));
        assertEquals("degC", units.get(LogChannel.CHARGE_TEMPERATURE));
        assertEquals("km/h", units.get(LogChannel.VEHICLE_SPEED));
        assertEquals(
                "Lachgas aktiv", of(proposal, LogChannel.NITROUS_ON).column().heading());
        assertEquals("[Bemerkung]", proposal.leftOver().toString());
        assertEquals(Certainty.SURE, of(proposal, LogChannel.ENGINE_SPEED).confidence());
        assertTrue(of(proposal, LogChannel.MANIFOLD_PRESSURE).reason().contains("down to ambient or below"));
    }

    @Test
    void the_written_file_is_read_again_and_reads_the_log() {
        MappingProposal proposal = of(GERMAN);
        LogMapping mapping = LogMapping.read(proposal.yaml(), "run.log.yaml");
        assertEquals(proposal.mapping().columns().size(), mapping.columns().size());
        EngineLog log = EngineLog.read(new StringReader(GERMAN), "run.csv", mapping.withAmbient(1e5));
        assertEquals(12870, log.values(LogChannel.ENGINE_SPEED)[2]);
        assertEquals(1.955e5, log.values(LogChannel.MANIFOLD_PRESSURE)[2], 1e-6);
        assertEquals(1, log.values(LogChannel.NITROUS_ON)[2]);
        assertEquals(61.2 / 3.6, log.values(LogChannel.VEHICLE_SPEED)[0], 1e-12);
    }

    @Test
    void what_the_file_leaves_open_is_doubtful_and_does_not_count() {
        MappingProposal proposal = of("""
                Time,RPM,AFR,Boost,Air Temp
                0.00,3000,11.8,150,30
                0.02,3010,11.7,151,30
                0.04,3020,11.7,152,31
                """);
        assertEquals(Certainty.LIKELY, of(proposal, LogChannel.TIME).confidence());
        assertEquals(Certainty.LIKELY, of(proposal, LogChannel.ENGINE_SPEED).confidence());
        assertEquals(Certainty.DOUBTFUL, of(proposal, LogChannel.LAMBDA).confidence());
        assertEquals(
                Certainty.DOUBTFUL, of(proposal, LogChannel.MANIFOLD_PRESSURE).confidence());
        assertEquals(
                Certainty.DOUBTFUL, of(proposal, LogChannel.CHARGE_TEMPERATURE).confidence());
        assertEquals(2, LogMapping.read(proposal.yaml(), "m.yaml").columns().size(), proposal.yaml());
    }

    @Test
    void targets_and_corrections_are_not_taken_for_what_is_measured() {
        MappingProposal proposal = of("""
                Time [s],Lambda Target,Lambda,Boost Target [kPa],MAP [kPa],Turbo RPM,Engine RPM
                0.00,0.80,0.99,250,40,60000,3000
                0.02,0.80,0.98,250,41,61000,3010
                0.04,0.80,0.97,250,42,62000,3020
                """);
        assertEquals("Lambda", of(proposal, LogChannel.LAMBDA).column().heading());
        assertEquals("MAP", of(proposal, LogChannel.MANIFOLD_PRESSURE).column().heading());
        assertEquals(
                "Engine RPM", of(proposal, LogChannel.ENGINE_SPEED).column().heading());
        assertEquals(3, proposal.leftOver().size(), proposal.yaml());
    }

    @Test
    void the_demonstration_is_proposed_as_it_is_mapped() {
        Path folder = Path.of("../../data/whimbrel/logs");
        Map<LogChannel, String> mapped = LogMapping.read(folder.resolve("log.yaml")).columns().stream()
                .collect(Collectors.toMap(LogColumn::channel, LogColumn::heading));
        MappingProposal proposal = MappingProposal.of(folder.resolve("pull-with-nitrous.csv"));
        for (Proposed p : proposal.channels()) {
            assertEquals(mapped.get(p.column().channel()), p.column().heading(), proposal.yaml());
        }
        assertEquals(mapped.size(), proposal.channels().size(), proposal.yaml());
    }

    @Test
    void one_byte_text_is_read_with_its_degrees(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("a.csv");
        Files.write(file, GERMAN.getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                "degC",
                of(MappingProposal.of(file), LogChannel.CHARGE_TEMPERATURE)
                        .column()
                        .unit());
    }
}
