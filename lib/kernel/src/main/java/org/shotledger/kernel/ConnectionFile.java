package org.shotledger.kernel;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/**
 * Where a front end wants to meet the kernel.
 *
 * @param ip loopback address
 * @param shell port of requests
 * @param control port of requests that must not wait
 * @param iopub port of broadcasts
 * @param stdin port of questions to the user
 * @param heartbeat port of the echo
 * @param key secret both sides sign with; empty for no signature
 */
public record ConnectionFile(String ip, int shell, int control, int iopub, int stdin, int heartbeat, String key) {

    private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "::1");

    /**
     * Reads a connection file.
     *
     * @param file as written by Jupyter
     * @return its content
     * @throws IOException if it cannot be read
     * @throws IllegalArgumentException if it names another machine, another transport or another signature
     */
    public static ConnectionFile read(Path file) throws IOException {
        JsonObject json = JsonParser.parseString(Files.readString(file)).getAsJsonObject();
        require(json, "transport", "tcp");
        require(json, "signature_scheme", "hmac-sha256");
        String ip = json.get("ip").getAsString();
        if (!LOOPBACK.contains(ip)) {
            throw new IllegalArgumentException(
                    "the kernel runs code for whoever reaches it and so listens on this machine"
                            + " only; the connection file asks for " + ip + ". Start it with 127.0.0.1.");
        }
        return new ConnectionFile(
                ip,
                port(json, "shell_port"),
                port(json, "control_port"),
                port(json, "iopub_port"),
                port(json, "stdin_port"),
                port(json, "hb_port"),
                json.get("key").getAsString());
    }

    private static int port(JsonObject json, String name) {
        return json.get(name).getAsInt();
    }

    private static void require(JsonObject json, String name, String only) {
        String value = json.has(name) ? json.get(name).getAsString() : only;
        if (!value.isEmpty() && !value.equals(only)) {
            throw new IllegalArgumentException(
                    "the connection file's " + name + " is " + value + "; only " + only + " is spoken here.");
        }
    }

    /**
     * The address of a port.
     *
     * @param port one of the ports
     * @return as the transport writes it
     */
    String address(int port) {
        return "tcp://" + (ip.contains(":") ? "[" + ip + "]" : ip) + ":" + port;
    }
}
