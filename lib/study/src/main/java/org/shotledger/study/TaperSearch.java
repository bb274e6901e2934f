package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.budget.Course;

/**
 * Finds along the fuel flow where one load asks for boost to be taken back, at one speed under one nitrous setting, and how far. The
 * pressure is the root of the table's own margin, bracketed and found by the Illinois method (Dowell and Jarratt, BIT 11 (1971) 168).
 */
final class TaperSearch {
    private static final int SCAN = 9;
    private static final int HALVINGS = 7;
    private static final int MOST_STEPS = 40;
    private static final double CLOSE_ENOUGH = 1e-7;
    private static final double BEYOND = 1.1;

    /** Whether boost is not taken back, taken back until the load keeps its reserve, or all of it and the reserve still not kept. */
    private enum Kind {
        NONE,
        PARTLY,
        ALL
    }

    private final SpeedTable table;
    private final LoadMargin load;
    private final KitTable.Nitrous nitrous;
    private final DoubleUnaryOperator share;

    /**
     * Prepares the search.
     *
     * @param table the speed
     * @param load the output whose margin is held at the reserve
     * @param nitrous the nitrous setting
     * @param share fuel flow at a plenum pressure over that at the reference pressure
     */
    TaperSearch(SpeedTable table, int load, KitTable.Nitrous nitrous, DoubleUnaryOperator share) {
        this.table = table;
        this.load = new LoadMargin(table, load, nitrous.enthalpy(), nitrous.flow());
        this.nitrous = nitrous;
        this.share = share;
    }

    /** The pieces between two fuel flows at the reference pressure, ascending; none where the load never comes into play. */
    List<TaperBranch> between(double low, double high) {
        List<TaperBranch> pieces = new ArrayList<>();
        Kind here = kind(low);
        if (high == low) {
            return here == Kind.NONE ? pieces : List.of(piece(new Scale(low, high), here));
        }
        double from = low;
        double last = low;
        for (int i = 1; i < SCAN; i++) {
            double at = low + (high - low) * i / (SCAN - 1);
            Kind next = kind(at);
            if (next != here) {
                double edge = edge(last, at, here);
                add(pieces, from, edge, here);
                from = here == Kind.NONE ? edge(at, edge, next) : edge;
                here = next;
            }
            last = at;
        }
        add(pieces, from, high, here);
        return pieces;
    }

    private void add(List<TaperBranch> pieces, double from, double to, Kind kind) {
        if (kind != Kind.NONE && to > from) {
            pieces.add(piece(new Scale(from, to), kind));
        }
    }

    /** How boost is taken back with a fuel flow. */
    private Kind kind(double fuel) {
        double low = table.pressure.low();
        if (margin(table.pressure.high(), fuel) >= 0) {
            return Kind.NONE;
        }
        if (margin(low, fuel) < 0) {
            return beyond(low, fuel) ? Kind.NONE : Kind.ALL;
        }
        return beyond(pressure(fuel), fuel) ? Kind.NONE : Kind.PARTLY;
    }

    private boolean beyond(double plenum, double fuel) {
        return Math.abs(rich(plenum, fuel * share.applyAsDouble(plenum))) > BEYOND;
    }

    /** The last fuel flow of a kind on the way from one with it to one without. */
    private double edge(double with, double without, Kind kind) {
        double inside = with;
        double outside = without;
        for (int i = 0; i < HALVINGS && outside != inside; i++) {
            double middle = 0.5 * (inside + outside);
            if (kind(middle) == kind) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    private double margin(double plenum, double fuel) {
        double x = rich(plenum, fuel * share.applyAsDouble(plenum));
        return load.at(plenum, Math.max(-BEYOND, Math.min(BEYOND, x))) - Course.RESERVE;
    }

    private double rich(double plenum, double flow) {
        return table.richOffset(plenum, nitrous.flow()) + table.richSlope(plenum, nitrous.flow()) * flow;
    }

    /** The pressure that keeps the reserve, or the end of the table where none within does. */
    private double pressure(double fuel) {
        double high = table.pressure.high();
        double low = table.pressure.low();
        double atHigh = margin(high, fuel);
        double atLow = margin(low, fuel);
        if (atHigh >= 0 || atLow < 0) {
            return atHigh >= 0 ? high : low;
        }
        double at = low;
        for (int i = 0; i < MOST_STEPS; i++) {
            at = (low * atHigh - high * atLow) / (atHigh - atLow);
            double f = margin(at, fuel);
            if (Math.abs(f) < CLOSE_ENOUGH) {
                break;
            }
            if (f < 0) {
                high = at;
                atHigh = f;
                atLow *= 0.5;
            } else {
                low = at;
                atLow = f;
                atHigh *= 0.5;
            }
        }
        return at;
    }

    private TaperBranch piece(Scale along, Kind kind) {
        double[] plenum = new double[TaperBranch.NODES];
        double[] rich = new double[TaperBranch.NODES];
        double[] less = new double[TaperBranch.NODES];
        for (int i = 0; i < TaperBranch.NODES; i++) {
            double fuel = TaperBranch.flow(along, i);
            double p = kind == Kind.ALL ? table.pressure.low() : pressure(fuel);
            double flow = fuel * share.applyAsDouble(p);
            plenum[i] = p;
            rich[i] = rich(p, flow);
            less[i] = Math.max(-1, rich(p, (1 - Figures.FUEL_LOST) * flow));
        }
        return new TaperBranch(along, table, plenum, rich, less, nitrous);
    }
}
