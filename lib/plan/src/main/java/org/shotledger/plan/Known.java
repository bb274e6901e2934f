package org.shotledger.plan;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Answers that were worked out about one plan, so that a second study around it begins where the first one ended. Those not asked for
 * longest are given up when there are many, all of them when memory is short. May be shared between threads.
 */
public final class Known {
    /** Our choice: those of some twenty values of boost and mixture, 22 MB for the demonstration. */
    private static final int MOST = 2048;

    private SoftReference<Map<Record, Object>> held = new SoftReference<>(new Answers());

    /** In the order in which they were asked for last. */
    private static final class Answers extends LinkedHashMap<Record, Object> {
        private static final long serialVersionUID = 1;

        Answers() {
            super(MOST, 1, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Record, Object> eldest) {
            return size() > MOST;
        }
    }

    /** Nothing known yet. */
    public Known() {}

    /**
     * The answer to a question.
     *
     * @param question states all that the answer depends on beside the plan; a kind of question has one kind of answer
     * @param answer works it out where it is not known; two threads that ask at once may both do so
     * @param <T> kind of the answer
     * @return the answer
     */
    @SuppressWarnings("unchecked")
    public <T> T of(Record question, Supplier<T> answer) {
        Object known = known(question);
        if (known == null) {
            known = answer.get();
            keep(question, known);
        }
        return (T) known;
    }

    private synchronized Object known(Record question) {
        Map<Record, Object> answers = held.get();
        return answers == null ? null : answers.get(question);
    }

    private synchronized void keep(Record question, Object answer) {
        Map<Record, Object> answers = held.get();
        if (answers == null) {
            answers = new Answers();
            held = new SoftReference<>(answers);
        }
        answers.put(question, answer);
    }

    /** Equal plans are the same, whatever has been asked about them yet. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Known;
    }

    @Override
    public int hashCode() {
        return 0;
    }
}
