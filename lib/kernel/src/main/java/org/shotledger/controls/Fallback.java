package org.shotledger.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/** What stands in place of the controls where nothing can be moved: where they stand, and some positions to open. */
final class Fallback implements Displayable {
    private static final String WHY =
            "Nothing can be moved here: the figures are for these values. Live controls need a running kernel,"
                    + " and a front end with the widget extension (package ipywidgets).";

    private record Position(String name, String words, Object shown) {}

    private final Panel panel;
    private final Values values;
    private final List<Position> positions = new ArrayList<>();

    Fallback(Panel panel, Values values) {
        this.panel = panel;
        this.values = values;
        panel.brief()
                .ifPresent(brief -> panel.controls().stream()
                        .filter(Control::whileMoving)
                        .forEach(control -> workOut(control, brief)));
    }

    /** A position that has no answer says so; the panel is shown all the same. */
    private <T> void workOut(Control<T> control, Handler brief) {
        for (T value : control.look().some(panel.positions())) {
            Values there = values.with(control, value);
            Object shown;
            try {
                shown = brief.show(there);
            } catch (Exception e) {
                shown = Failure.of(e, there);
            }
            positions.add(new Position(control.name(), control.words(value), shown));
        }
    }

    @Override
    public String toText() {
        return panel.controls().stream()
                .map(control -> control.name() + ": " + values.text(control.name()))
                .collect(Collectors.joining("\n"));
    }

    @Override
    public String toHtml() {
        StringBuilder out = new StringBuilder("<table class=\"listing\"><thead><tr><th scope=\"col\">Control</th>"
                + "<th scope=\"col\">Stands at</th></tr></thead><tbody>");
        panel.controls()
                .forEach(control -> out.append("<tr><td>")
                        .append(Display.escapeHtml(control.name()))
                        .append("</td><td>")
                        .append(Display.escapeHtml(values.text(control.name())))
                        .append("</td></tr>"));
        out.append("</tbody></table><p>").append(WHY).append("</p>");
        String last = "";
        for (Position position : positions) {
            out.append(last.equals(position.name) || last.isEmpty() ? "" : "</details>");
            out.append(
                    last.equals(position.name)
                            ? ""
                            : "<details><summary>" + Display.escapeHtml(position.name) + " at other values</summary>");
            out.append("<p><strong>").append(Display.escapeHtml(position.words)).append("</strong></p>");
            out.append(html(position.shown));
            last = position.name;
        }
        return out.append(last.isEmpty() ? "" : "</details>").toString();
    }

    private static String html(Object shown) {
        var forms = Display.bundle(shown);
        Object html = forms.get(Display.HTML);
        return html == null
                ? "<p>" + Display.escapeHtml(String.valueOf(forms.get(Display.TEXT))) + "</p>"
                : html.toString();
    }
}
