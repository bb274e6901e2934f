package org.shotledger.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What was run in this session. */
final class History {

    private static final int SESSION = 1;
    private static final int OUTPUT_LIMIT = 2_000;

    private record Entry(int number, String source, String output) {}

    private final List<Entry> entries = new ArrayList<>();

    synchronized void add(int number, String source, String output) {
        String kept = output != null && output.length() > OUTPUT_LIMIT ? output.substring(0, OUTPUT_LIMIT) : output;
        entries.add(new Entry(number, source, kept));
    }

    synchronized JsonObject reply(Message request) {
        List<Entry> found = switch (request.text("hist_access_type", "tail")) {
            case "range" -> range(request);
            case "search" -> search(request);
            default -> last(entries, request.number("n", Integer.MAX_VALUE));
        };
        JsonArray history = new JsonArray();
        boolean output = request.flag("output", false);
        found.forEach(entry -> history.add(row(entry, output)));
        JsonObject content = new JsonObject();
        content.addProperty("status", "ok");
        content.add("history", history);
        return content;
    }

    private List<Entry> range(Message request) {
        int session = request.number("session", 0);
        if (session != SESSION && session != 0) {
            return List.of();
        }
        int start = request.number("start", 1);
        int stop = request.number("stop", Integer.MAX_VALUE);
        return entries.stream()
                .filter(e -> e.number() >= start && e.number() < stop)
                .toList();
    }

    private List<Entry> search(Message request) {
        Pattern glob = glob(request.text("pattern", "*"));
        Stream<Entry> matching =
                entries.stream().filter(e -> glob.matcher(e.source()).matches());
        List<Entry> found = new ArrayList<>(matching.toList());
        if (request.flag("unique", false)) {
            Set<String> seen = new HashSet<>();
            java.util.Collections.reverse(found);
            found.removeIf(e -> !seen.add(e.source()));
            java.util.Collections.reverse(found);
        }
        return last(found, request.number("n", Integer.MAX_VALUE));
    }

    private static List<Entry> last(List<Entry> all, int n) {
        return all.subList(Math.max(0, all.size() - Math.max(0, n)), all.size());
    }

    private static Pattern glob(String pattern) {
        StringBuilder regex = new StringBuilder();
        pattern.codePoints().forEach(c -> {
            switch (c) {
                case '*' -> regex.append(".*");
                case '?' -> regex.append('.');
                default -> regex.append(Pattern.quote(Character.toString(c)));
            }
        });
        return Pattern.compile(regex.toString(), Pattern.DOTALL);
    }

    private static JsonArray row(Entry entry, boolean output) {
        JsonArray row = new JsonArray();
        row.add(SESSION);
        row.add(entry.number());
        if (output) {
            JsonArray pair = new JsonArray();
            pair.add(entry.source());
            if (entry.output() == null) {
                pair.add(JsonNull.INSTANCE);
            } else {
                pair.add(entry.output());
            }
            row.add(pair);
        } else {
            row.add(entry.source());
        }
        return row;
    }
}
