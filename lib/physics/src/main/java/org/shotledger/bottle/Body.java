package org.shotledger.bottle;

import org.shotledger.fluid.FluidState;

/** Rates of change and figures of the contents under one set of assumptions. */
abstract class Body {
    /** Floor of the contents' heat capacity, J/(kg K): thin vapour at constant volume. It only bounds exchange rates. */
    static final double THIN_GAS_CAPACITY = 700;

    final Emptying task;
    final Bottle bottle;
    final Exchange exchange;

    Body(Emptying task, Exchange exchange) {
        this.task = task;
        this.exchange = exchange;
        bottle = task.charge().bottle();
    }

    abstract double[] rates(double time, double[] y);

    abstract double pressure(double[] y);

    abstract double temperature(double[] y);

    abstract double liquidMass(double[] y);

    abstract FluidState outlet(double[] y);

    abstract double relativeTolerance();

    abstract double[] absoluteTolerance();

    final double flow(double time, FluidState outlet) {
        return Math.min(task.outflow().massFlow(time, outlet), Outflow.LARGEST_FLOW);
    }

    final Sample sample(double time, double[] y) {
        double liquid = Math.min(liquidMass(y), y[Layout.MASS]);
        double temperature = temperature(y);
        return new Sample(
                time,
                temperature,
                pressure(y),
                liquid,
                y[Layout.MASS] - liquid,
                flow(time, outlet(y)),
                exchange.shellTemperature(y, temperature));
    }

    /** Fills in what both sets of equations share. */
    final double[] rates(double flow, double enthalpy, double toContents, double outside) {
        double[] rates = new double[Layout.SIZE];
        rates[Layout.MASS] = -flow;
        rates[Layout.ENERGY] = toContents - flow * enthalpy;
        rates[Layout.SHELL] = exchange.shellCapacity > 0 ? outside - toContents : 0;
        rates[Layout.OUT] = flow;
        rates[Layout.OUT_ENTHALPY] = flow * enthalpy;
        rates[Layout.HEAT] = exchange.open() ? outside : 0;
        return rates;
    }
}
