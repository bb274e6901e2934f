package org.shotledger.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.units.UnitSystem;

/** Writes the picture gallery, {@code target/gallery/*.html}, to be looked at after a change: US, SI, and as a grey printer sees it. */
class GalleryTest {
    @ParameterizedTest
    @CsvSource({"us, US, none", "si, SI, none", "grey, US, grayscale(1)"})
    void everyKindOfChartStandsOnThePage(String name, UnitSystem system, String filter) throws IOException {
        List<ChartPicture> pictures = Samples.all(system);
        StringBuilder page = new StringBuilder("<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\">"
                + "<title>Every kind of chart</title></head><body style=\"filter: " + filter
                + "\"><h1>Every kind of chart, with made-up numbers</h1>");
        pictures.forEach(picture -> page.append(picture.toHtml()));
        Path folder = Files.createDirectories(Path.of("target", "gallery"));
        Path file = Files.writeString(folder.resolve(name + ".html"), page.append("</body></html>"));
        String written = Files.readString(file);
        assertEquals(pictures.size(), written.split("<svg", -1).length - 1);
        for (ChartPicture picture : pictures) {
            assertEquals(2, written.split("id=\"" + picture.key() + "\"", -1).length, picture.key());
        }
    }
}
