package org.shotledger.display;

import java.util.Map;

/** Where a running cell shows things: a notebook front end, or the terminal when there is none. */
public interface DisplaySink {

    /**
     * Shows a value now.
     *
     * @param bundle MIME type to content, as made by {@link Display#bundle}
     * @param id the name under which it can be replaced later, or null
     */
    void show(Map<String, Object> bundle, String id);

    /**
     * Replaces everything shown under a name.
     *
     * @param bundle MIME type to content
     * @param id the name given to {@link #show}
     */
    void update(Map<String, Object> bundle, String id);

    /**
     * Removes the output of the running cell.
     *
     * @param whenNextArrives true to keep the old output until new output replaces it, which avoids flicker
     */
    void clear(boolean whenNextArrives);

    /**
     * Asks the person at the notebook for a line.
     *
     * @param prompt shown in front of the field
     * @param hidden true for a password
     * @return the line, without its end
     * @throws IllegalStateException if nobody can be asked
     */
    String ask(String prompt, boolean hidden);
}
