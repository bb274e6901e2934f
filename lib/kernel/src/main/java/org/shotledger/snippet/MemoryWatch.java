package org.shotledger.snippet;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Notices that a cell has used up the memory. The JVM itself gives up only after it has searched for a few free bytes many times, which
 * takes the better part of a minute.
 */
final class MemoryWatch {

    private static final long LOOK_MILLIS = 250;

    /** Memory counts as used up if this share of the largest heap is left in use after a search: our choice, a cell that works on stays below. */
    private static final double FULL = 0.95;

    /** How long to wait for the JVM to search of itself: what was used and is not any more stays where it is until then. */
    private static final long LASTS_NANOS = 3_000_000_000L;

    private static final ScheduledExecutorService CLOCK = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "memory");
        thread.setDaemon(true);
        return thread;
    });

    /** Kept so that there is something to give back when the memory is used up: the way out needs a little as well. */
    private static final AtomicReference<byte[]> RESERVE = new AtomicReference<>(new byte[4_000_000]);

    private final Runnable usedUp;
    private long fullSince;
    private long collectionsThen;

    private MemoryWatch(Runnable usedUp) {
        this.usedUp = usedUp;
    }

    /** Watches until the result is cancelled. */
    static ScheduledFuture<?> start(Runnable usedUp) {
        MemoryWatch watch = new MemoryWatch(usedUp);
        return CLOCK.scheduleWithFixedDelay(watch::look, LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    private void look() {
        if (!isFull()) {
            fullSince = 0;
        } else if (fullSince == 0) {
            fullSince = System.nanoTime();
            collectionsThen = Collections.number();
        } else if (isHopeless()) {
            fullSince = 0;
            usedUp.run();
        } else if (System.nanoTime() - fullSince > LASTS_NANOS) {
            fullSince = 0;
            System.gc();
            if (isFull()) {
                usedUp.run();
            }
        }
    }

    /** Whether all of the memory was searched for what is not used any more since it was found full, and little was found. */
    private boolean isHopeless() {
        return Collections.number() > collectionsThen && Collections.left() > FULL;
    }

    /** What the JVM says of its collections of the memory in which things stay; asked only when memory is short, as that takes a while to load. */
    private static final class Collections {
        private static final Optional<MemoryPoolMXBean> LASTING = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP && pool.getCollectionUsage() != null)
                .filter(pool ->
                        pool.getName().contains("Tenured") || pool.getName().contains("Old"))
                .findFirst();

        /** How many there were so far. */
        static long number() {
            return ManagementFactory.getGarbageCollectorMXBeans().stream()
                    .filter(one -> LASTING.isPresent()
                            && List.of(one.getMemoryPoolNames())
                                    .contains(LASTING.get().getName()))
                    .mapToLong(GarbageCollectorMXBean::getCollectionCount)
                    .sum();
        }

        /** The share of that memory that was in use after the newest. */
        static double left() {
            return LASTING.map(MemoryPoolMXBean::getCollectionUsage)
                    .filter(usage -> usage.getMax() > 0)
                    .map(usage -> (double) usage.getUsed() / usage.getMax())
                    .orElse(0.0);
        }
    }

    /** Gives back the reserve. */
    static void release() {
        RESERVE.set(null);
    }

    /** Keeps a reserve again. */
    static void keepReserve() {
        if (RESERVE.get() == null && !isFull()) {
            RESERVE.set(new byte[4_000_000]);
        }
    }

    /** Whether hardly any memory is left. */
    static boolean isFull() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory() > FULL * runtime.maxMemory();
    }
}
