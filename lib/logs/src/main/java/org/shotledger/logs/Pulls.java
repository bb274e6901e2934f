package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * All pulls of a log in order of time, numbered from 1.
 *
 * @param all the pulls
 * @param why how they were found; when there are none, what the engine speed does instead and which part of the rule that misses
 */
public record Pulls(List<Pull> all, String why) {

    public Pulls {
        all = List.copyOf(all);
    }

    /**
     * Finds the pulls of a log. Rows that are lost do not end a pull as long as the engine speed goes on behind them within half a
     * second; the other channels stay without value there.
     *
     * @param findings the log with its findings
     * @param rule what counts as a pull
     * @return the pulls
     * @throws IllegalArgumentException when the log has no engine speed
     */
    public static Pulls in(LogFindings findings, PullRule rule) {
        return new PullSearch(findings, rule).pulls();
    }

    /**
     * The pull over the widest range of engine speed.
     *
     * @return the pull
     * @throws IllegalArgumentException when there is none; the sentence says why
     */
    public Pull widest() {
        return all.stream()
                .max(Comparator.comparingDouble(p -> p.rpmHigh() - p.rpmLow()))
                .orElseThrow(() -> new IllegalArgumentException(why));
    }

    /**
     * Chosen pulls.
     *
     * @param choice {@code "all"}, {@code "widest"}, or numbers from 1 with commas between, such as {@code "1, 3"}
     * @return the pulls in the order named
     * @throws IllegalArgumentException when there is no pull, or none of a number
     */
    public List<Pull> chosen(String choice) {
        if (all.isEmpty()) {
            throw new IllegalArgumentException(why);
        }
        String wanted = choice.strip();
        if (wanted.equals("all")) {
            return all;
        }
        if (wanted.equals("widest")) {
            return List.of(widest());
        }
        List<Pull> chosen = new ArrayList<>();
        for (String number : wanted.split(",", -1)) {
            String digits = number.strip();
            int n = digits.matches("\\d{1,6}") ? Integer.parseInt(digits) : 0;
            if (n < 1 || n > all.size()) {
                throw new IllegalArgumentException(
                        "There is no pull \"" + digits + "\"; write \"all\", \"widest\" or numbers" + " from 1 to "
                                + all.size() + ": " + list() + ".");
            }
            chosen.add(all.get(n - 1));
        }
        return List.copyOf(chosen);
    }

    /**
     * The pulls in one line.
     *
     * @return for example {@code "pull 1 from 3.02 s, 3010 to 6980 rpm; pull 2 ..."}
     */
    public String list() {
        return IntStream.range(0, all.size())
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "pull %d from %.2f s, %.0f to %.0f rpm",
                        i + 1,
                        all.get(i).from(),
                        all.get(i).rpmLow(),
                        all.get(i).rpmHigh()))
                .collect(Collectors.joining("; "));
    }
}
