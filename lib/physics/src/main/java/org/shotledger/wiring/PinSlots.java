package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.List;

/** Every pin a search may use, those of expanders included, with what is on it. */
final class PinSlots {
    /** Index of the controller among the owners. */
    static final int CONTROLLER = -1;

    final List<Pin> pins = new ArrayList<>();
    final List<Integer> owner = new ArrayList<>();
    final List<List<PinSignal>> on = new ArrayList<>();
    final int bus;
    double framesLeft;

    PinSlots(List<Pin> controller, List<PinExpander> expanders) {
        controller.forEach(pin -> add(pin, CONTROLLER));
        for (int e = 0; e < expanders.size(); e++) {
            for (Pin pin : expanders.get(e).pins()) {
                add(pin, e);
            }
        }
        bus = busAmong(controller);
        framesLeft = bus < 0 ? 0 : controller.get(bus).frequency();
    }

    private void add(Pin pin, int from) {
        pins.add(pin);
        owner.add(from);
        on.add(new ArrayList<>());
    }

    private static int busAmong(List<Pin> controller) {
        for (int i = 0; i < controller.size(); i++) {
            if (controller.get(i).kinds().contains(PinKind.BUS)) {
                return i;
            }
        }
        return -1;
    }

    boolean free(int slot) {
        return on.get(slot).isEmpty();
    }

    /** Whether an earlier free slot does exactly the same, so that trying this one too would be trying the same plan again. */
    boolean repeats(int slot) {
        for (int i = 0; i < slot; i++) {
            if (free(i) && owner.get(i).equals(owner.get(slot)) && pins.get(i).sameAs(pins.get(slot))) {
                return true;
            }
        }
        return false;
    }

    /** Whether the bus has room for so many frames more. */
    boolean busHas(double frames) {
        return bus >= 0 && framesLeft >= frames;
    }

    /** Whether a signal may join those on a slot. */
    boolean joins(PinSignal signal, int slot) {
        double current = signal.need().current();
        for (PinSignal other : on.get(slot)) {
            if (signal.sharingRefusal(other).isPresent()) {
                return false;
            }
            current += other.need().current();
        }
        return signal.need().withCurrent(current).refusal(pins.get(slot)).isEmpty();
    }
}
