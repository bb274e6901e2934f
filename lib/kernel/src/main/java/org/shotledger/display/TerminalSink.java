package org.shotledger.display;

import java.util.Map;

/** Prints the plain-text form; used where no notebook is attached. */
final class TerminalSink implements DisplaySink {

    @Override
    public void show(Map<String, Object> bundle, String id) {
        System.out.println(bundle.get(Display.TEXT));
    }

    @Override
    public void update(Map<String, Object> bundle, String id) {
        show(bundle, id);
    }

    @Override
    public void clear(boolean whenNextArrives) {
        // what a terminal has printed stays
    }

    @Override
    public String ask(String prompt, boolean hidden) {
        throw new IllegalStateException("nobody can be asked \"" + prompt + "\" here: no notebook is attached."
                + " Set the value in a cell tagged parameters instead.");
    }
}
