package org.shotledger.view;

import org.shotledger.confidence.FlowTestAdvice;
import org.shotledger.nitrous.FlowTested;

/** How a notebook shows flow tests; the nested classes are what the service loader finds. */
public final class FlowRenderer {
    private FlowRenderer() {}

    /** Shows which flow test to make first: the cautions, the advice in words, the table. */
    public static final class OfAdvice extends ResultRenderer<FlowTestAdvice> {
        /** Made by the service loader. */
        public OfAdvice() {
            super(
                    FlowTestAdvice.class,
                    (advice, shown) -> View.of(
                            FlowTables.safety(),
                            new Sentence(FlowTables.said(advice)),
                            FlowTables.of(advice).in(shown)));
        }
    }

    /** Shows a flow test that was made. */
    public static final class OfTested extends ResultRenderer<FlowTested> {
        /** Made by the service loader. */
        public OfTested() {
            super(
                    FlowTested.class,
                    (test, shown) ->
                            View.of(FlowTables.tests(java.util.List.of(test)).in(shown), FlowTables.safety()));
        }
    }
}
