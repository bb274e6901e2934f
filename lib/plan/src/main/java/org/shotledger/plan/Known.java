package org.shotledger.plan;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Answers that were worked out about one plan, so that a second study around it begins where the first one ended. They are given up
 * when memory is short. May be shared between threads.
 */
public final class Known {
    private SoftReference<Map<Record, Object>> held = new SoftReference<>(new ConcurrentHashMap<>());

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
        Map<Record, Object> answers = answers();
        Object known = answers.get(question);
        if (known == null) {
            known = answer.get();
            answers.put(question, known);
        }
        return (T) known;
    }

    private synchronized Map<Record, Object> answers() {
        Map<Record, Object> answers = held.get();
        if (answers == null) {
            answers = new ConcurrentHashMap<>();
            held = new SoftReference<>(answers);
        }
        return answers;
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
