package org.shotledger.comm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/** All comms of one kernel: opens them to the page, and answers those that the page opens. */
public final class Comms {

    private static final AtomicReference<Comms> CURRENT = new AtomicReference<>();

    private final Map<String, BiConsumer<Comm, CommMessage>> targets = new ConcurrentHashMap<>();
    private final Map<String, Comm> open = new ConcurrentHashMap<>();
    private final Map<Object, Task> later = new LinkedHashMap<>();
    private final Map<String, List<Runnable>> cells = new ConcurrentHashMap<>();
    private final CommWay way;
    private volatile String cell = "";

    /**
     * No comms yet.
     *
     * @param way how messages reach the page
     */
    public Comms(CommWay way) {
        this.way = way;
    }

    /**
     * The comms of the kernel that runs the notebook.
     *
     * @return nothing in a headless run or a plain program, where no page listens
     */
    public static Optional<Comms> current() {
        return Optional.ofNullable(CURRENT.get());
    }

    /**
     * Called by a kernel when it starts and ends.
     *
     * @param comms its comms, or null at its end
     */
    public static void install(Comms comms) {
        CURRENT.set(comms);
    }

    /**
     * Says who answers when the page opens a comm.
     *
     * @param target the name the page asks for
     * @param opened given the new comm and the page's first message; an older one for the same target is replaced
     */
    public void register(String target, BiConsumer<Comm, CommMessage> opened) {
        targets.put(target, opened);
    }

    /**
     * Opens a comm to the page.
     *
     * @param target the name under which the page knows what to do with it
     * @param first what the page is told first
     * @return the open comm
     */
    public Comm open(String target, CommMessage first) {
        Comm comm = new Comm(this, UUID.randomUUID().toString().replace("-", ""), target);
        open.put(comm.id(), comm);
        way.send("comm_open", comm, first);
        return comm;
    }

    /**
     * The page opens a comm. Where nobody answers for the target it is closed again, as the protocol asks.
     *
     * @param id what the page calls it
     * @param target what it is for
     * @param message the page's first message
     */
    public void opened(String id, String target, CommMessage message) {
        Comm comm = new Comm(this, id, target);
        BiConsumer<Comm, CommMessage> answer = targets.get(target);
        if (answer == null) {
            way.send("comm_close", comm, CommMessage.of(Map.of()));
            return;
        }
        open.put(id, comm);
        answer.accept(comm, message);
    }

    /**
     * A message of the page; ignored if no such comm is open, as after a restart of the kernel.
     *
     * @param id the comm
     * @param message the message
     */
    public void received(String id, CommMessage message) {
        Comm comm = open.get(id);
        if (comm != null) {
            comm.receive(message);
        }
    }

    /**
     * The page has closed a comm, or knows nothing of its target.
     *
     * @param id the comm
     */
    public void closed(String id) {
        Comm comm = open.remove(id);
        if (comm != null) {
            comm.closed();
        }
    }

    /**
     * The open comms, for a page that was loaded anew.
     *
     * @param target only those for this target; all if empty
     * @return target by id
     */
    public Map<String, String> list(String target) {
        Map<String, String> found = new LinkedHashMap<>();
        open.values().stream()
                .filter(comm -> target.isEmpty() || comm.target().equals(target))
                .forEach(comm -> found.put(comm.id(), comm.target()));
        return found;
    }

    /**
     * The open comms themselves.
     *
     * @param target what they are for
     * @return those for this target
     */
    public List<Comm> all(String target) {
        return open.values().stream()
                .filter(comm -> comm.target().equals(target))
                .toList();
    }

    /**
     * Puts a task off until every message that has already arrived is taken in: what a page has changed meanwhile outdates what it asked
     * before. Called from the thread that takes messages.
     *
     * @param key what the task is about; an older task about the same is dropped
     * @param task run by {@link #settle}; it catches what goes wrong in it
     */
    public void later(Object key, Task task) {
        later.put(key, task);
    }

    /**
     * Runs what was put off; a kernel calls it when no further message waits.
     *
     * @param runner runs one piece of work and says whether it came to its own end
     */
    public void settle(Predicate<Runnable> runner) {
        List<Task> due = new ArrayList<>(later.values());
        later.clear();
        for (Task task : due) {
            if (!runner.test(task.work())) {
                task.stopped().run();
            }
        }
    }

    /**
     * Work that is put off.
     *
     * @param work what to do
     * @param stopped what to do instead of the rest when somebody stops it
     */
    public record Task(Runnable work, Runnable stopped) {}

    /**
     * A kernel is about to run a cell: what the same cell left behind for its next run is done now.
     *
     * @param id what the front end calls the cell, the same each time it is run
     */
    public void beginCell(String id) {
        cell = id;
        List<Runnable> left = cells.remove(id);
        if (left != null) {
            left.forEach(Runnable::run);
        }
    }

    /**
     * Leaves a task for the next run of the running cell, which replaces what this run shows.
     *
     * @param task run once, before the cell
     */
    public void whenRunAgain(Runnable task) {
        cells.computeIfAbsent(cell, id -> new ArrayList<>()).add(task);
    }

    void send(String type, Comm comm, CommMessage message) {
        way.send(type, comm, message);
    }

    void close(Comm comm) {
        if (open.remove(comm.id(), comm)) {
            way.send("comm_close", comm, CommMessage.of(Map.of()));
        }
    }

    boolean isOpen(Comm comm) {
        return open.get(comm.id()) == comm;
    }
}
