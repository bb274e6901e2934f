package org.shotledger.study;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Long pieces of work on all threads, each taking the next when it is free. A parallel stream cuts them into shares beforehand, and where
 * a piece is itself worked at in parallel, the thread whose share is done first spins until the others are.
 */
public final class Pieces {
    private Pieces() {}

    /**
     * Works the pieces out.
     *
     * @param count how many there are
     * @param piece gives the result of the piece with a number, from zero on; called by several threads; null is a result
     * @param <T> what a piece gives
     * @return the results, by number
     */
    public static <T> List<T> of(int count, IntFunction<T> piece) {
        AtomicReferenceArray<T> results = new AtomicReferenceArray<>(count);
        AtomicInteger next = new AtomicInteger();
        IntStream.rangeClosed(0, ForkJoinPool.getCommonPoolParallelism())
                .parallel()
                .forEach(worker -> {
                    for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                        results.set(i, piece.apply(i));
                    }
                });
        return IntStream.range(0, count).mapToObj(results::get).toList();
    }
}
