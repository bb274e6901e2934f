package org.shotledger.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;

class KernelTest {

    private static final String KEY = "a secret";

    @Test
    void aKernelAnswersAFrontEndAndEndsWhenAsked() throws IOException, InterruptedException {
        Optional<String> status =
                SelfCheck.run(() -> new JavaSession(SessionOptions.of(List.of("import java.util.*;"))), "1 + 1");
        assertEquals(Optional.of("ok"), status);
    }

    /** Sockets closed under the threads that used them made one end in six fail, and some wait for ever. */
    @Test
    @Timeout(120)
    void itsThreadsEndOneByOneWithoutAnError() throws IOException, InterruptedException {
        List<Throwable> uncaught = new CopyOnWriteArrayList<>();
        Thread.setDefaultUncaughtExceptionHandler((thread, e) -> uncaught.add(e));
        try {
            for (int i = 0; i < 15; i++) {
                assertEquals(
                        Optional.of("ok"), SelfCheck.run(() -> new JavaSession(SessionOptions.of(List.of())), "1 + 1"));
            }
        } finally {
            Thread.setDefaultUncaughtExceptionHandler(null);
        }
        assertEquals(List.of(), uncaught);
    }

    @Test
    void theSignatureIsThatOfRfc4231() {
        // RFC 4231, test case 2: key "Jefe", data "what do ya want for nothing?"
        Signature signature = new Signature("Jefe".getBytes(StandardCharsets.US_ASCII));
        byte[] data = "what do ya want for nothing?".getBytes(StandardCharsets.US_ASCII);
        assertEquals(
                "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
                new String(signature.sign(List.of(data)), StandardCharsets.US_ASCII));
    }

    @Test
    void aMessageComesBackAsItWasSent() {
        Wire wire = new Wire(KEY);
        JsonObject content = Json.one("code", "\"\uD83D\uDC0E é\"");
        List<byte[]> frames = wire.encode(List.of(new byte[] {0, 7}), "execute_request", new JsonObject(), content);
        Message message = wire.decode(frames).orElseThrow();
        assertEquals("execute_request", message.type());
        assertEquals(content, message.content());
        assertEquals(1, message.identities().size());
    }

    @Test
    void whatIsBadlySignedOrMalformedIsNoMessage() {
        Wire wire = new Wire(KEY);
        List<byte[]> good = wire.encode(List.of(), "execute_request", new JsonObject(), Json.one("code", "1"));
        assertTrue(wire.decode(good).isPresent());
        for (int frame = 1; frame < good.size(); frame++) {
            List<byte[]> changed = new ArrayList<>(good);
            changed.set(frame, "{\"code\": \"2\"}".getBytes(StandardCharsets.UTF_8));
            assertFalse(wire.decode(changed).isPresent(), "frame " + frame + " was changed");
        }
        assertFalse(wire.decode(good.subList(0, 5)).isPresent());
        assertFalse(wire.decode(List.of()).isPresent());
    }

    @Test
    void positionsAreCountedInCodePoints() {
        String text = "a\uD83D\uDC0Eb";
        assertEquals(3, CodePoints.toUnits(text, 2));
        assertEquals(2, CodePoints.fromUnits(text, 3));
        assertEquals(4, CodePoints.toUnits(text, 99));
    }

    @Test
    void onlyThisMachineIsListenedTo(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("connection.json");
        Files.writeString(
                file,
                "{\"ip\": \"0.0.0.0\", \"transport\": \"tcp\", \"signature_scheme\": \"hmac-sha256\", \"key\": \"k\"}");
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> ConnectionFile.read(file));
        assertTrue(refusal.getMessage().contains("0.0.0.0"), refusal.getMessage());
    }
}
