package org.shotledger.controls;

/** What is worked out for the values of a panel. */
@FunctionalInterface
public interface Handler {

    /**
     * Works it out.
     *
     * @param values what the controls say
     * @return what is shown: anything a cell could give back; null shows nothing
     * @throws Exception whatever goes wrong; it is shown in place of the result
     */
    Object show(Values values) throws Exception;
}
