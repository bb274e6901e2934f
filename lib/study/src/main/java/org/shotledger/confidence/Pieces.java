package org.shotledger.confidence;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Long pieces of work on all threads, each taking the next when it is free: a parallel stream cuts them into shares beforehand. */
final class Pieces {
    private Pieces() {}

    /** The results in the order of their numbers from zero on. */
    static double[][] of(int count, IntFunction<double[]> piece) {
        double[][] results = new double[count][];
        AtomicInteger next = new AtomicInteger();
        IntStream.rangeClosed(0, ForkJoinPool.getCommonPoolParallelism())
                .parallel()
                .forEach(worker -> {
                    for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                        results[i] = piece.apply(i);
                    }
                });
        return results;
    }
}
