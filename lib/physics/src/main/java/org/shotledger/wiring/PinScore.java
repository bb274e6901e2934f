package org.shotledger.wiring;

/** How plans are compared: entry by entry, less is better. */
final class PinScore {
    /** Unplaced signals of three importances, price, shared pins. */
    static final int ENTRIES = Importance.values().length + 2;

    private static final int SHARED = ENTRIES - 1;

    final Importance paidFor;

    PinScore(Importance paidFor) {
        this.paidFor = paidFor;
    }

    /** The price stands after the last importance that is paid for. */
    int price() {
        return paidFor.rank() + 1;
    }

    int unplaced(Importance importance) {
        return importance.compareTo(paidFor) <= 0 ? importance.rank() : importance.rank() + 1;
    }

    double[] after(double[] cost, PinSignal signal, PinMove move) {
        double[] next = cost.clone();
        if (!move.placed()) {
            next[unplaced(signal.importance())]++;
        }
        next[price()] += move.price();
        next[SHARED] += move.shared() ? 1 : 0;
        return next;
    }

    double[] plus(double[] cost, double[] rest) {
        double[] sum = cost.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += rest[i];
        }
        return sum;
    }
}
