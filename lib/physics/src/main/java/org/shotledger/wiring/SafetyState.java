package org.shotledger.wiring;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What holds in a state of the car, and one fault in it.
 *
 * @param holders what keeps its contacts closed, the controller's outputs left out
 * @param outputs pins that are on
 * @param stuckClosed contact that cannot open
 * @param stuckOpen contact that cannot close
 * @param stuckValve circuit whose valve stays open without current
 */
record SafetyState(
        Set<SafetyContact.Holder> holders,
        Set<String> outputs,
        Optional<String> stuckClosed,
        Optional<String> stuckOpen,
        Optional<String> stuckValve) {

    static SafetyState of(Set<SafetyContact.Holder> holders, Set<String> outputs) {
        return new SafetyState(holders, outputs, Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Set<SafetyContact.Holder> all() {
        return EnumSet.complementOf(EnumSet.of(SafetyContact.Holder.OUTPUT));
    }

    static Set<SafetyContact.Holder> without(SafetyContact.Holder... gone) {
        Set<SafetyContact.Holder> left = all();
        for (SafetyContact.Holder one : gone) {
            left.remove(one);
        }
        return left;
    }

    SafetyState withStuckClosed(String contact) {
        return new SafetyState(holders, outputs, Optional.of(contact), stuckOpen, stuckValve);
    }

    SafetyState withStuckOpen(String contact) {
        return new SafetyState(holders, outputs, stuckClosed, Optional.of(contact), stuckValve);
    }

    SafetyState withStuckValve(String circuit) {
        return new SafetyState(holders, outputs, stuckClosed, stuckOpen, Optional.of(circuit));
    }
}
