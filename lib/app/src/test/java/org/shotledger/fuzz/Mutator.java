package org.shotledger.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes bad files of good ones as people and machines do: a word or figure exchanged, a line lost, doubled or moved, a file
 * cut short, a piece repeated, bytes broken. Knows lines and words, so that most of what it makes gets past the first
 * check of a reader.
 */
final class Mutator {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\d.+-]+|[^\\p{L}\\d\\s]");
    private static final int LONGEST = 12_000;

    private final List<String> seeds;
    private final List<String> words;
    private final SplittableRandom random;

    /** Takes good files, the words to strew in, and the seed of the sequence. */
    Mutator(List<String> seeds, List<String> words, long seed) {
        this.seeds = seeds;
        this.words = words;
        this.random = new SplittableRandom(seed);
    }

    /** The next input. */
    byte[] next() {
        StringBuilder text = new StringBuilder(pick(seeds));
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            change(text);
        }
        if (text.length() > LONGEST) {
            text.setLength(LONGEST);
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (bytes.length > 0 && random.nextInt(16) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private void change(StringBuilder text) {
        switch (random.nextInt(9)) {
            case 0 -> line(text, "");
            case 1 -> line(text, pick(words) + "\n");
            case 2 -> text.insert(lineStart(text), someLine(pick(seeds)));
            case 3 -> text.setLength(random.nextInt(text.length() + 1));
            case 4 -> text.insert(random.nextInt(text.length() + 1), pick(words));
            case 5 -> repeat(text);
            case 6 -> text.insert(random.nextInt(text.length() + 1), (char) random.nextInt(1, 0x2100));
            default -> word(text);
        }
    }

    private void word(StringBuilder text) {
        Matcher word = WORD.matcher(text);
        if (word.find(random.nextInt(text.length() + 1))) {
            text.replace(word.start(), word.end(), pick(words));
        }
    }

    private void line(StringBuilder text, String instead) {
        int start = lineStart(text);
        int end = text.indexOf("\n", start);
        text.replace(start, end < 0 ? text.length() : end + 1, instead);
    }

    private void repeat(StringBuilder text) {
        int from = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), from + random.nextInt(40));
        text.insert(to, text.substring(from, to).repeat(random.nextInt(random.nextInt(8) == 0 ? 200 : 4)));
    }

    private String someLine(String seed) {
        int start = seed.lastIndexOf('\n', random.nextInt(seed.length() + 1)) + 1;
        int end = seed.indexOf('\n', start);
        return end < 0 ? seed.substring(start) : seed.substring(start, end + 1);
    }

    private int lineStart(StringBuilder text) {
        return text.lastIndexOf("\n", random.nextInt(text.length() + 1)) + 1;
    }

    private String pick(List<String> list) {
        return list.get(random.nextInt(list.size()));
    }
}
