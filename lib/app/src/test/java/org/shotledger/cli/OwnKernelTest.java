package org.shotledger.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** File names and fields after Jupyter's documentation, "Kernel specs". */
class OwnKernelTest {

    @TempDir
    Path folder;

    @Test
    void theEntryHasAllThatJupyterShows() throws IOException {
        Path entry = folder.resolve("kernels/shotledger");
        new OwnKernel(Path.of("/somewhere")).install(entry);
        JsonObject spec = JsonParser.parseString(Files.readString(entry.resolve("kernel.json")))
                .getAsJsonObject();
        assertEquals("{connection_file}", spec.getAsJsonArray("argv").get(4).getAsString());
        assertEquals("java", spec.get("language").getAsString());
        for (int side : new int[] {32, 64}) {
            var picture = ImageIO.read(
                    entry.resolve("logo-" + side + "x" + side + ".png").toFile());
            assertEquals(side, picture.getWidth());
            assertEquals(side, picture.getHeight());
        }
        assertTrue(Files.readString(entry.resolve("logo-svg.svg")).contains("http://www.w3.org/2000/svg"));
        assertTrue(KernelSpec.remove(entry));
        assertTrue(Files.notExists(entry));
    }
}
