package org.shotledger.chart;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Knows words by the outlines of their letters. XChart fills outlines where a drawing should hold text; with this index
 * the text is put back, so that a reader can select it, search it, and have it read out.
 */
final class Words {
    /** A word as it was set. */
    record Word(String text, Font font, boolean upright) {}

    private static final AffineTransform QUARTER_TURN = AffineTransform.getRotateInstance(-Math.PI / 2, 0, 0);

    private final FontRenderContext context;
    private final List<Font> fonts;
    private final Map<Integer, Word> byOutline = new HashMap<>();
    private final Set<String> known = new HashSet<>();

    Words(FontRenderContext context, List<Font> fonts) {
        this.context = context;
        this.fonts = List.copyOf(fonts);
    }

    void learn(String text) {
        if (text == null || text.isBlank() || !known.add(text)) {
            return;
        }
        for (Font font : fonts) {
            TextLayout layout = new TextLayout(text, font, context);
            byOutline.putIfAbsent(print(layout.getOutline(null)), new Word(text, font, true));
            byOutline.putIfAbsent(print(layout.getOutline(QUARTER_TURN)), new Word(text, font, false));
        }
    }

    Optional<Word> find(Shape shape) {
        return Optional.ofNullable(byOutline.get(print(shape)));
    }

    private static int print(Shape shape) {
        double[] at = new double[6];
        int hash = 1;
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            Arrays.fill(at, 0);
            hash = 31 * hash + i.currentSegment(at);
            for (double value : at) {
                hash = 31 * hash + (int) Math.round(value * 64);
            }
        }
        return hash;
    }
}
