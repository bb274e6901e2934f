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
        return new View(List.copyOf(Arrays.asList(parts)));
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
