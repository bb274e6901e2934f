package org.shotledger.snippet;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.List;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl;

/** Runs compiled snippets in this process and keeps the raw value, the real throwable and the values of re-created variables. */
final class CellControl extends LocalExecutionControl {

    private static final Method RUN = runMethod();

    private final ValueCarrier carrier = new ValueCarrier();
    private volatile Call current;
    private volatile boolean stopRequested;

    @Override
    public void load(ExecutionControl.ClassBytecodes[] classes)
            throws ExecutionControl.ClassInstallException, ExecutionControl.NotImplementedException,
                    ExecutionControl.EngineTerminationException {
        super.load(classes);
        for (ExecutionControl.ClassBytecodes loaded : classes) {
            if (ValueCarrier.isHolder(loaded.name())) {
                carrier.loaded(loaded.name(), find(loaded.name()));
            }
        }
    }

    @Override
    public String invoke(String className, String methodName)
            throws ExecutionControl.RunException, ExecutionControl.InternalException,
                    ExecutionControl.EngineTerminationException {
        carrier.carryOver(className);
        return super.invoke(className, methodName);
    }

    @Override
    protected String invoke(Method method) throws Exception {
        Call call = new Call(method);
        current = call;
        if (stopRequested) {
            call.refuse(); // asked to stop while the cell was still being compiled
            return "";
        }
        call.offer();
        try {
            super.invoke(RUN);
        } catch (ExecutionControl.StoppedException e) {
            call.markStopped();
        } finally {
            Call.withdraw();
        }
        if (call.thrown() != null) {
            throw new InvocationTargetException(call.thrown());
        }
        // the value itself is asked for with lastCall(): its text is made later, guarded, and only if it is shown
        return "";
    }

    /** From now on, until the next call of {@link #allow}, nothing is started. */
    void requestStop() {
        stopRequested = true;
    }

    void allow() {
        stopRequested = false;
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

    /** Restores what is left to restore after an evaluation, and tells which variables could not keep their value. */
    List<String> finishCarrying(String exceptClass) {
        carrier.carryOver(exceptClass);
        return carrier.takeLosses();
    }

    /** Sets a variable's field to its default, so that what it referred to can be collected. */
    void clearVariable(String className, String name) {
        carrier.clear(className, name);
    }

    private Class<?> find(String name) {
        try {
            return findClass(name);
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
