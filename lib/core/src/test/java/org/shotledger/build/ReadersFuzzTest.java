package org.shotledger.build;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shotledger.boost.MapReference;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetException;
import org.shotledger.sheet.SheetText;
import org.shotledger.sheet.YamlSheet;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;

/**
 * Whatever the input, a reader answers or refuses with its own exception. The usual build tries the kept inputs again; a
 * search for new ones runs one target at a time with
 * {@code JAZZER_FUZZ=1 mvn -pl lib/core test -Dtest=ReadersFuzzTest#figures -DargLine=-Djazzer.hooks=true -Djacoco.skip}.
 */
class ReadersFuzzTest {
    private static final Path FOLDER = HeronSheetTest.HERON.getParent();

    private final String good = Files.readString(HeronSheetTest.HERON);

    ReadersFuzzTest() throws IOException {}

    @FuzzTest(maxDuration = "60s")
    void figures(FuzzedDataProvider data) {
        QuantityKind kind = data.pickValue(QuantityKind.values());
        try {
            double si = FigureText.read(data.consumeRemainingAsString(), kind).value();
            if (!Double.isFinite(si)) {
                throw new AssertionError("not finite: " + si);
            }
        } catch (UnitException refused) {
            wellSaid(refused.getMessage());
        }
    }

    @FuzzTest(maxDuration = "60s")
    void yaml(byte[] bytes) {
        try {
            Problems problems = new Problems();
            YamlSheet.read(SheetText.decode(bytes, "f.yaml"), "f.yaml", problems);
            problems.list().forEach(p -> wellSaid(p.sentence()));
        } catch (SheetException refused) {
            wellSaid(refused.getMessage());
        }
    }

    @FuzzTest(maxDuration = "60s")
    void sheets(FuzzedDataProvider data) {
        int from = data.consumeInt(0, good.length());
        int to = Math.min(good.length(), from + data.consumeInt(0, 200));
        String text = good.substring(0, from) + data.consumeRemainingAsString() + good.substring(to);
        try {
            Build.read(text, FOLDER);
        } catch (SheetException refused) {
            refused.problems().forEach(p -> wellSaid(p.sentence()));
        }
    }

    @FuzzTest(maxDuration = "60s")
    void tables(FuzzedDataProvider data) {
        boolean pump = data.consumeBoolean();
        String heading = data.consumeBoolean() ? "" : "speed [rpm],flow [kg/s],pressure ratio,efficiency [%]\n";
        try {
            CsvTable table = CsvTable.read(
                    new StringReader(heading + data.consumeRemainingAsString()),
                    "f.csv",
                    pump ? Tables.PUMP : Tables.COMPRESSOR_MAP);
            if (pump) {
                Tables.pump("p", table);
            } else {
                Tables.compressorMap("m", table, MapReference.SI, 200_000);
            }
        } catch (SheetException refused) {
            wellSaid(refused.getMessage());
        }
    }

    private static void wellSaid(String message) {
        if (message == null || message.isBlank() || !message.strip().endsWith(".")) {
            throw new AssertionError("not a sentence: " + message);
        }
    }
}
