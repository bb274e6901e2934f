package org.shotledger.runner;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.display.DisplaySink;
import org.shotledger.ipynb.MimeJson;
import org.shotledger.ipynb.Output;
import org.shotledger.snippet.OutputListener;
import org.shotledger.snippet.OutputRouter;

/** Collects the outputs of the running cell, in the way a front end would show them. */
final class CellRecorder implements DisplaySink, OutputListener {

    private record Named(List<Output> outputs, int index) {}

    private final OutputRouter router;
    private final Map<String, List<Named>> named = new HashMap<>();
    private List<Output> outputs = new ArrayList<>();
    private boolean clearNext;

    CellRecorder(OutputRouter router) {
        this.router = router;
    }

    /** Starts a cell; what its threads print later still goes to the list returned here. */
    synchronized List<Output> begin() {
        List<Output> fresh = new ArrayList<>();
        outputs = fresh;
        clearNext = false;
        router.begin(this);
        return fresh;
    }

    /** What a cell printed belongs to it, also where it ends without a result. */
    void end() {
        router.flush();
    }

    /** Adds an output at the end of the running cell. */
    void add(Output output) {
        router.flush();
        append(output);
    }

    private synchronized void append(Output output) {
        clearIfDue();
        outputs.add(output);
    }

    @Override
    public synchronized void printed(String stream, String text) {
        clearIfDue();
        int last = outputs.size() - 1;
        boolean continues = last >= 0
                && outputs.get(last).type().equals("stream")
                && outputs.get(last).text("name").equals(stream);
        if (continues) {
            outputs.set(last, Output.stream(stream, outputs.get(last).text("text") + text));
        } else {
            outputs.add(Output.stream(stream, text));
        }
    }

    @Override
    public void show(Map<String, Object> bundle, String id) {
        router.flush();
        synchronized (this) {
            clearIfDue();
            if (id != null) {
                named.computeIfAbsent(id, key -> new ArrayList<>()).add(new Named(outputs, outputs.size()));
            }
            outputs.add(Output.display(MimeJson.of(bundle)));
        }
    }

    @Override
    public synchronized void update(Map<String, Object> bundle, String id) {
        JsonObject data = MimeJson.of(bundle);
        for (Named place : named.getOrDefault(id, List.of())) {
            if (place.index() < place.outputs().size()) {
                place.outputs().set(place.index(), Output.display(data));
            }
        }
    }

    @Override
    public void clear(boolean whenNextArrives) {
        router.flush();
        synchronized (this) {
            clearNext = true;
            if (!whenNextArrives) {
                clearIfDue();
            }
        }
    }

    @Override
    public String ask(String prompt, boolean hidden) {
        throw new IllegalStateException("nobody can be asked \"" + prompt + "\" in a headless run."
                + " Put the value into the cell tagged parameters and give it with --set.");
    }

    private void clearIfDue() {
        if (clearNext) {
            outputs.clear();
            named.values().forEach(places -> places.removeIf(place -> place.outputs() == outputs));
            clearNext = false;
        }
    }
}
