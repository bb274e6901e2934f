package org.shotledger.snippet;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl;

/** Runs compiled snippets in this process and keeps the raw value, the real throwable and the values of variables. */
final class CellControl extends LocalExecutionControl {

    private static final Method RUN = runMethod();

    private final Linker linker = new Linker();
    private final Variables variables = new Variables(this::find);
    private final BiConsumer<Thread, Throwable> uncaught;
    private final CellLoader loader;
    private volatile Call current;
    private volatile boolean memoryUsedUp;
    private volatile boolean stopRequested;

    /**
     * A control.
     *
     * @param uncaught told what a thread that a cell started throws, in that thread
     */
    CellControl(BiConsumer<Thread, Throwable> uncaught) {
        this(uncaught, new CellLoader());
    }

    private CellControl(BiConsumer<Thread, Throwable> uncaught, CellLoader loader) {
        super(loader);
        this.uncaught = uncaught;
        this.loader = loader;
    }

    @Override
    public void load(ExecutionControl.ClassBytecodes[] classes)
            throws ExecutionControl.ClassInstallException, ExecutionControl.NotImplementedException,
                    ExecutionControl.EngineTerminationException {
        loadAll(linker.load(classes));
        take(classes);
    }

    /** Puts new bodies behind what cells use already; what offers something else is made anew by the compiler. */
    @Override
    public void redefine(ExecutionControl.ClassBytecodes[] classes)
            throws ExecutionControl.ClassInstallException, ExecutionControl.NotImplementedException,
                    ExecutionControl.EngineTerminationException {
        ExecutionControl.ClassBytecodes[] linked = linker.redefine(classes);
        if (linked == null) {
            throw new ExecutionControl.NotImplementedException("what the class offers has changed");
        }
        loadAll(linked);
        take(classes);
    }

    /** Newer Java weaves into the cells' classes what can stop them; the stubs between cells need none of it. */
    private void loadAll(ExecutionControl.ClassBytecodes[] classes)
            throws ExecutionControl.ClassInstallException, ExecutionControl.NotImplementedException,
                    ExecutionControl.EngineTerminationException {
        loader.load(Stream.of(classes)
                .filter(c -> Linker.holderOf(c.name()) == null)
                .toArray(ExecutionControl.ClassBytecodes[]::new));
        super.load(Stream.of(classes)
                .filter(c -> Linker.holderOf(c.name()) != null)
                .toArray(ExecutionControl.ClassBytecodes[]::new));
    }

    private void take(ExecutionControl.ClassBytecodes[] classes)
            throws ExecutionControl.ClassInstallException, ExecutionControl.NotImplementedException,
                    ExecutionControl.EngineTerminationException {
        for (Map.Entry<String, Holder> lead : linker.takeLeads().entrySet()) {
            Linker.Stub entrance = linker.entranceNamed(lead.getKey());
            String owner = lead.getValue().actualName();
            String guide = entrance.className() + "$" + owner.substring(owner.lastIndexOf('$') + 1);
            byte[] bytes = Stubs.guide(guide, entrance.className(), owner, entrance.name(), entrance.descriptor());
            loader.load(new ExecutionControl.ClassBytecodes[] {
                new ExecutionControl.ClassBytecodes(guide.replace('/', '.'), bytes)
            });
            lead(find(entrance.className()), find(guide));
        }
        for (ExecutionControl.ClassBytecodes one : classes) {
            variables.declared(linker.places(one.name()));
        }
    }

    private static void lead(Class<?> entrance, Class<?> guide) {
        try {
            entrance.getField(Stubs.CURRENT).set(null, guide.getConstructor().newInstance());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the method behind " + entrance + " cannot be changed", e);
        }
    }

    @Override
    public String invoke(String className, String methodName)
            throws ExecutionControl.RunException, ExecutionControl.InternalException,
                    ExecutionControl.EngineTerminationException {
        variables.carryOver(linker.places(className));
        return super.invoke(linker.actualName(className), methodName);
    }

    @Override
    protected String invoke(Method method) throws Exception {
        Call call = new Call(() -> method.invoke(null), uncaught);
        perform(call);
        if (!call.isStopped() && call.thrown() != null) {
            throw new InvocationTargetException(call.thrown());
        }
        // the value itself is asked for with lastCall(): its text is made later, guarded, and only if it is shown
        return "";
    }

    /**
     * Runs work that no cell holds, so that it can be stopped as a cell can.
     *
     * @return whether it came to its own end
     */
    boolean run(Runnable work) {
        Call call = new Call(
                () -> {
                    work.run();
                    return null;
                },
                uncaught);
        try {
            clientCodeEnter(); // takes back an earlier wish to stop
            try {
                perform(call);
            } finally {
                clientCodeLeave();
            }
        } catch (Exception e) {
            throw new IllegalStateException("the work of a page cannot be run", e);
        } finally {
            current = null;
        }
        return !call.isStopped();
    }

    private void perform(Call call) throws Exception {
        current = call;
        if (stopRequested) {
            call.refuse(); // asked to stop while the cell was still being compiled
            return;
        }
        call.offer();
        try {
            super.invoke(RUN);
        } catch (ExecutionControl.StoppedException e) {
            return; // the call itself knows
        } finally {
            Call.withdraw();
        }
    }

    /** From now on, until the next call of {@link #allow}, nothing is started. */
    void requestStop() {
        stopRequested = true;
    }

    void allow() {
        stopRequested = false;
        memoryUsedUp = false;
    }

    /** The running cell is to be stopped because it has used up the memory. */
    void noteMemoryUsedUp() {
        memoryUsedUp = true;
    }

    boolean isMemoryUsedUp() {
        return memoryUsedUp || (current != null && current.thrown() instanceof OutOfMemoryError);
    }

    boolean isStopRequested() {
        return stopRequested;
    }

    /** The newest call, or null if nothing ran since {@link #forgetCall}. */
    Call lastCall() {
        return current;
    }

    /** Lets go of the newest call and its value. */
    void forgetCall() {
        current = null;
    }

    Linker linker() {
        return linker;
    }

    Variables variables() {
        return variables;
    }

    /** Names of those variables whose values still use what was replaced. */
    Set<String> takeStale(List<String> names) {
        return Stale.among(names, variables, linker);
    }

    private Class<?> find(String name) {
        try {
            return findClass(name.replace('/', '.'));
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("the class " + name + " was loaded but cannot be found", e);
        }
    }

    private static Method runMethod() {
        try {
            Method run = Call.class.getMethod("run");
            run.setAccessible(true); // called from the compiler's module, which cannot see this package
            return run;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }
}
