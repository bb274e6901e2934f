package org.shotledger.chart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shotledger.units.UnitSystem;

/** Writes one page with every kind of chart, to be looked at after a change. */
public final class Gallery {
    private Gallery() {}

    /**
     * Writes the page.
     *
     * @param arguments the file to write
     * @throws IOException when it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        StringBuilder page = new StringBuilder("<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\">"
                + "<title>Every kind of chart</title></head><body><h1>Every kind of chart, with made-up numbers</h1>");
        for (UnitSystem system : new UnitSystem[] {UnitSystem.US}) {
            for (ChartPicture picture : Samples.all(system)) {
                page.append(picture.toHtml());
            }
        }
        Path file = Path.of(arguments[0]);
        Files.writeString(file, page.append("</body></html>"));
        for (ChartPicture picture : Samples.all(UnitSystem.SI)) {
            Files.write(file.resolveSibling(picture.key() + ".png"), picture.png(1140));
            Files.writeString(file.resolveSibling(picture.key() + ".svg"), picture.svg());
        }
    }
}
