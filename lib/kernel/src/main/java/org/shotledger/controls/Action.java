package org.shotledger.controls;

/** What a button of a panel does. */
@FunctionalInterface
public interface Action {

    /**
     * Does it; the result is worked out again afterwards.
     *
     * @param values what the controls say
     * @throws Exception whatever goes wrong; it is shown in place of the result
     */
    void run(Values values) throws Exception;
}
