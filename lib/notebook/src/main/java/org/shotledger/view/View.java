package org.shotledger.view;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.shotledger.display.Displayable;

/** Several pieces shown one below the other: a sentence, a chart, a table. */
final class View implements Displayable {
    private final List<Displayable> parts;

    private View(List<Displayable> parts) {
        this.parts = parts;
    }

    static View of(Displayable... parts) {
        return new View(Arrays.stream(parts).filter(View::says).toList());
    }

    /** A sentence may have nothing to say. */
    private static boolean says(Displayable part) {
        return !(part instanceof Sentence sentence && sentence.words().isEmpty());
    }

    @Override
    public String toText() {
        return parts.stream().map(Displayable::toText).collect(Collectors.joining("\n\n"));
    }

    @Override
    public String toHtml() {
        return parts.stream().map(Displayable::toHtml).collect(Collectors.joining());
    }
}
