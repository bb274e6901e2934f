package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.commission.JobList;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.wiring.Cable;
import org.shotledger.wiring.Load;
import org.shotledger.wiring.PinPlacement;
import org.shotledger.wiring.SafetyCircuit;
import org.shotledger.wiring.SafetyContact;
import org.shotledger.wiring.Wiring;

/**
 * The wiring as one SVG: from the battery over isolator, main fuse and each fuse to every added load and back to ground; the safety chain,
 * contact by contact; every signal with its pin. Black on white, told apart by shape and words.
 */
public final class WiringPicture implements Displayable {
    private static final int WIDTH = 1120;
    private static final int ROW = 46;
    private static final int BOX = 30;
    private static final int TOP = 40;
    private static final int LETTER = 7;

    private final String svg;
    private final List<String> lines;

    private WiringPicture(String svg, List<String> lines) {
        this.svg = svg;
        this.lines = List.copyOf(lines);
    }

    /**
     * Draws the wiring of a car.
     *
     * @param wiring the wiring
     * @return the picture
     */
    public static WiringPicture of(Wiring wiring) {
        return new Pen(wiring).draw();
    }

    /**
     * The picture as a file's content.
     *
     * @return SVG
     */
    public String svg() {
        return svg;
    }

    @Override
    public String toText() {
        return String.join("\n", lines);
    }

    @Override
    public String toHtml() {
        return svg;
    }

    /** Draws from the top down. */
    private static final class Pen {
        private final Wiring wiring;
        private final StringBuilder body = new StringBuilder();
        private final List<String> told = new ArrayList<>();
        private int y = TOP;

        Pen(Wiring wiring) {
            this.wiring = wiring;
        }

        WiringPicture draw() {
            heading("Power: battery to load and back");
            power();
            wiring.safety().ifPresent(chain -> {
                heading("Safety chain: all contacts of a line must be closed");
                chain.circuits().forEach(this::circuit);
            });
            heading("Signals and their pins");
            wiring.pins().placements().forEach(this::signal);
            String svg =
                    "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"chart\" role=\"img\" aria-label=\"Wiring of the nitrous system\""
                            + " viewBox=\"0 0 " + WIDTH + " " + (y + 10) + "\" width=\"" + WIDTH + "\" height=\""
                            + (y + 10)
                            + "\" font-family=\"Liberation Sans, Arial, sans-serif\" font-size=\"13\"><title>Wiring of the nitrous system</title>"
                            + "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>" + body + "</svg>";
            return new WiringPicture(svg, told);
        }

        private void heading(String words) {
            y += 12;
            body.append("<text x=\"20\" y=\"")
                    .append(y)
                    .append("\" font-weight=\"bold\" font-size=\"16\">")
                    .append(Display.escapeHtml(words))
                    .append("</text>");
            told.add(words);
            y += 24;
        }

        private void power() {
            List<Cable> cables = wiring.cables().stream()
                    .filter(cable -> cable.load().phase() != Load.Phase.ALWAYS)
                    .toList();
            int first = y + BOX / 2;
            int last = first + (cables.size() - 1) * ROW;
            int middle = (first + last) / 2;
            Optional<Cable> feed = wiring.feed(JobList.FEED_LENGTH);
            String main = feed.map(f -> amps(f.fuse().rating())).orElse("bolted");
            String thick = feed.map(f -> f.wire().words()).orElse("by the fuse");
            box(20, middle, 70, "battery");
            line(90, middle, 110, middle);
            box(110, middle, 66, "isolator");
            line(176, middle, 196, middle);
            fuse(196, middle, main);
            text(196, middle - 24, "main fuse, " + thick);
            line(256, middle, 300, middle);
            line(300, first, 300, last);
            told.add("battery - isolator - main fuse " + main + " (" + thick + ") - fuse box");
            for (Cable cable : cables) {
                load(cable);
            }
            text(
                    20,
                    last + 40,
                    "Every return wire is as thick as its feed and goes to the battery's own ground point, not to the body near the load."
                            + " Connectors are rated at least as its fuse.");
            y = last + 64;
        }

        private void load(Cable cable) {
            Load load = cable.load();
            int at = y + BOX / 2;
            line(300, at, 320, at);
            fuse(320, at, amps(cable.fuse().rating()));
            line(380, at, 400, at);
            String by = switchedBy(load);
            box(400, at, 284, by);
            line(684, at, 850, at);
            String wire = cable.wire().words() + ", " + WireList.length(load.length());
            text(690, at - 5, wire);
            box(850, at, 180, load.name() + " " + amps(load.current()));
            line(1030, at, 1060, at);
            ground(1060, at);
            told.add("  fuse " + amps(cable.fuse().rating()) + " - " + by + " - " + wire + " - " + load.name()
                    + " - ground");
            y += ROW;
        }

        private String switchedBy(Load load) {
            String pin = wiring.pins().placements().stream()
                    .filter(one -> one.signal().name().equals(load.name()))
                    .findFirst()
                    .map(one -> one.placed()
                            ? one.pin().map(p -> " by " + p.name()).orElse(" by its own device")
                            : " by no pin")
                    .orElse("");
            String how = load.current() <= wiring.outputCurrent()
                    ? "output"
                    : load.pulsed() ? "solid-state switch" : "relay";
            return how + pin;
        }

        private void circuit(SafetyCircuit circuit) {
            int at = y + BOX / 2;
            int x = 20;
            StringBuilder words = new StringBuilder("  ");
            for (SafetyContact contact : circuit.contacts()) {
                int width = Math.max(90, LETTER * contact.name().length() + 16);
                if (x + width + 200 > WIDTH) {
                    line(x, at, x + 10, at);
                    y += ROW;
                    at = y + BOX / 2;
                    x = 60;
                }
                contact(x, at, width, contact);
                line(x + width, at, x + width + 14, at);
                x += width + 14;
                words.append(contact.name()).append(" - ");
            }
            box(x, at, LETTER * circuit.name().length() + 20, circuit.name());
            told.add(words + circuit.name());
            y += ROW;
        }

        private void signal(PinPlacement one) {
            int at = y + BOX / 2;
            box(
                    20,
                    at,
                    250,
                    one.signal().name() + " (" + one.signal().importance().words() + ")");
            if (one.placed()) {
                line(270, at, 330, at);
            } else {
                body.append("<text x=\"292\" y=\"").append(at + 5).append("\" font-size=\"18\">\u2715</text>");
            }
            box(330, at, 210, PinTables.where(one));
            text(556, at + 4, shortened(one.why()));
            told.add("  " + one.signal().name() + " - " + PinTables.where(one) + " (" + one.why() + ")");
            y += ROW - 8;
        }

        private static String shortened(String words) {
            int most = (WIDTH - 570) / LETTER;
            return words.length() <= most ? words : words.substring(0, most - 1) + "\u2026";
        }

        private static String amps(double current) {
            return String.format(Locale.ROOT, current == Math.rint(current) ? "%.0f A" : "%.1f A", current);
        }

        /** A contact: two ends and a lever; what holds it stands below. */
        private void contact(int x, int at, int width, SafetyContact contact) {
            if (contact.holder() == SafetyContact.Holder.FUSE) {
                body.append("<rect x=\"")
                        .append(x)
                        .append("\" y=\"")
                        .append(at - 7)
                        .append("\" width=\"")
                        .append(width)
                        .append("\" height=\"14\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.5\"/>");
                line(x, at, x + width, at);
            } else {
                int left = x + width / 2 - 14;
                line(x, at, left, at);
                line(left, at, left + 26, at - 12);
                line(left + 28, at, x + width, at);
            }
            text(x + 6, at - 14, contact.name());
        }

        private void fuse(int x, int at, String rating) {
            body.append("<rect x=\"")
                    .append(x)
                    .append("\" y=\"")
                    .append(at - 9)
                    .append("\" width=\"60\" height=\"18\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"1.5\"/>");
            body.append("<text x=\"")
                    .append(x + 30)
                    .append("\" y=\"")
                    .append(at + 5)
                    .append("\" text-anchor=\"middle\">")
                    .append(rating)
                    .append("</text>");
        }

        private void ground(int x, int at) {
            line(x, at, x, at + 8);
            for (int i = 0; i < 3; i++) {
                line(x - 10 + 3 * i, at + 8 + 4 * i, x + 10 - 3 * i, at + 8 + 4 * i);
            }
        }

        private void box(int x, int at, int width, String words) {
            body.append("<rect x=\"")
                    .append(x)
                    .append("\" y=\"")
                    .append(at - BOX / 2)
                    .append("\" width=\"")
                    .append(width)
                    .append("\" height=\"")
                    .append(BOX)
                    .append("\" rx=\"3\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"1.5\"/>");
            body.append("<text x=\"")
                    .append(x + width / 2)
                    .append("\" y=\"")
                    .append(at + 5)
                    .append("\" text-anchor=\"middle\">")
                    .append(Display.escapeHtml(words))
                    .append("</text>");
        }

        private void text(int x, int at, String words) {
            body.append("<text x=\"")
                    .append(x)
                    .append("\" y=\"")
                    .append(at)
                    .append("\" font-size=\"12\">")
                    .append(Display.escapeHtml(words))
                    .append("</text>");
        }

        private void line(int x1, int y1, int x2, int y2) {
            body.append("<line x1=\"")
                    .append(x1)
                    .append("\" y1=\"")
                    .append(y1)
                    .append("\" x2=\"")
                    .append(x2)
                    .append("\" y2=\"")
                    .append(y2)
                    .append("\" stroke=\"#000\" stroke-width=\"1.5\"/>");
        }
    }
}
