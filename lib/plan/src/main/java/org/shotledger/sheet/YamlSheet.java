package org.shotledger.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.sheet.SheetNode.Entry;
import org.shotledger.sheet.SheetNode.Items;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetNode.Place;
import org.shotledger.sheet.SheetNode.Scalar;
import org.shotledger.units.Excerpt;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads the part of YAML a sheet needs: one document of sections, lists and plain text.
 *
 * <p>The tree is made from the parser's events with a stack of its own, so that no nesting can exhaust the machine's;
 * anchors, aliases and tags are refused, so that nothing expands and nothing is constructed.
 */
public final class YamlSheet {
    private static final int DEEPEST = 16;
    private static final int MOST_VALUES = 50_000;

    private final String file;
    private final Problems problems;
    private final Deque<Open> stack = new ArrayDeque<>();
    private SheetNode root;
    private int values;

    private YamlSheet(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /** A section or list whose end has not been met. */
    private static final class Open {
        final Place at;
        final List<SheetNode> items;
        final List<Entry> entries;
        final Map<String, Integer> lines = new HashMap<>();
        final boolean flow;
        Scalar key;
        boolean skip;
        int end;

        Open(Place at, boolean mapping, boolean flow) {
            this.at = at;
            this.flow = flow;
            this.end = at.offset();
            this.items = mapping ? null : new ArrayList<>();
            this.entries = mapping ? new ArrayList<>() : null;
        }
    }

    /**
     * Reads a text.
     *
     * @param text the YAML text, already free of control characters
     * @param file the file as the user named it
     * @param problems receives what is wrong
     * @return the sections of the document, or empty when the text cannot be read at all
     */
    public static Optional<Mapping> read(String text, String file, Problems problems) {
        return new YamlSheet(file, problems).read(text);
    }

    private Optional<Mapping> read(String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(SheetText.LARGEST)
                .build();
        try {
            for (Event event : new Parse(settings).parseString(text)) {
                if (!accept(event)) {
                    return Optional.empty();
                }
            }
        } catch (MarkedYamlEngineException e) {
            report(e.getProblemMark().map(YamlSheet::place).orElse(new Place(0, 0, 0)), "", yaml(e.getProblem()));
            return Optional.empty();
        } catch (YamlEngineException e) {
            report(new Place(0, 0, 0), "", yaml(String.valueOf(e.getMessage())));
            return Optional.empty();
        } catch (NumberFormatException e) {
            // the parser reads the digits of an escape without looking whether there are any
            report(new Place(0, 0, 0), "", yaml("a backslash in double quotes is not followed by what it announces"));
            return Optional.empty();
        }
        if (root instanceof Mapping mapping) {
            return Optional.of(mapping);
        }
        report(
                new Place(1, 1, 0),
                "",
                "The file holds no sections; write lines such as \"engine:\" with values below.");
        return Optional.empty();
    }

    private static String yaml(String problem) {
        String first = Excerpt.of(problem.lines().findFirst().orElse("").strip(), 120);
        return "This is not YAML (" + first
                + "); check the indentation and the colons here, and put text that holds \": \" or \" #\" in quotes.";
    }

    private boolean accept(Event event) {
        Place at = event.getStartMark().map(YamlSheet::place).orElse(new Place(0, 0, 0));
        if (event instanceof NodeEvent node && !acceptNode(node, at)) {
            return false;
        }
        if (event instanceof DocumentStartEvent && root != null) {
            report(at, "", "A second document begins here; a sheet is one document, remove the line of dashes.");
            return false;
        }
        if (event instanceof MappingStartEvent mapping) {
            stack.push(new Open(at, true, mapping.isFlow()));
        } else if (event instanceof SequenceStartEvent sequence) {
            stack.push(new Open(at, false, sequence.isFlow()));
        } else if (event.getEventId() == Event.ID.MappingEnd) {
            Open open = stack.pop();
            close(new Mapping(List.copyOf(open.entries), open.at, end(open, event), open.flow));
        } else if (event.getEventId() == Event.ID.SequenceEnd) {
            Open open = stack.pop();
            close(new Items(List.copyOf(open.items), open.at, end(open, event)));
        } else if (event instanceof ScalarEvent scalar) {
            int end = scalar.getEndMark().map(Mark::getIndex).orElse(at.offset());
            close(new Scalar(scalar.getValue(), at, end, scalar.isPlain()));
        }
        return true;
    }

    private boolean acceptNode(NodeEvent node, Place at) {
        if (node instanceof AliasEvent || node.getAnchor().isPresent()) {
            report(at, "", "Anchors and aliases are not read in a sheet; write the value out.");
            return false;
        }
        if (tagged(node)) {
            report(at, "", "Tags are not read in a sheet; write the bare value.");
            return false;
        }
        if (stack.size() >= DEEPEST) {
            report(at, "", "The sheet nests deeper than " + DEEPEST + " levels; check the indentation and brackets.");
            return false;
        }
        if (++values > MOST_VALUES) {
            report(at, "", "The sheet has more than " + MOST_VALUES + " values; move tables to CSV files.");
            return false;
        }
        return true;
    }

    /** Brackets end where they close; a block ends with its last value, for its own mark lies before what follows it. */
    private static int end(Open open, Event event) {
        return open.flow ? event.getEndMark().map(Mark::getIndex).orElse(open.end) : open.end;
    }

    private static boolean tagged(NodeEvent node) {
        if (node instanceof ScalarEvent scalar) {
            return scalar.getTag().isPresent();
        }
        if (node instanceof MappingStartEvent mapping) {
            return mapping.getTag().isPresent();
        }
        return node instanceof SequenceStartEvent sequence && sequence.getTag().isPresent();
    }

    private void close(SheetNode node) {
        if (stack.isEmpty()) {
            root = node;
            return;
        }
        Open open = stack.peek();
        open.end = node.end();
        if (open.items != null) {
            open.items.add(node);
        } else if (open.key == null) {
            key(open, node);
        } else {
            if (!open.skip) {
                open.entries.add(new Entry(open.key.text(), open.key.at(), open.key.end(), node));
            }
            open.key = null;
        }
    }

    private void key(Open open, SheetNode node) {
        if (!(node instanceof Scalar scalar)) {
            report(node.at(), "", "A name of a value must be plain text.");
            open.key = new Scalar("", node.at(), node.at().offset(), true);
            open.skip = true;
            return;
        }
        open.key = scalar;
        open.skip = false;
        Integer first = open.lines.putIfAbsent(scalar.text(), scalar.at().line());
        if (first != null) {
            report(
                    scalar.at(),
                    Excerpt.of(scalar.text()),
                    Excerpt.quoted(scalar.text()) + " stands here a second time, first on line " + first
                            + "; keep one of them.");
            open.skip = true;
        }
    }

    private void report(Place at, String field, String sentence) {
        problems.add(new Problem(file, at.line(), at.column(), field, "", sentence));
    }

    private static Place place(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1, mark.getIndex());
    }
}
