package org.shotledger.evaluate;

import java.util.function.ToDoubleBiFunction;
import org.shotledger.car.Car;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;

/** A limit that an operating point can break: what is read from the point, and what the car allows there. */
record PointRule(
        String key,
        String name,
        QuantityKind kind,
        Side side,
        String path,
        String consequence,
        boolean onlyWithNitrous,
        ToDoubleBiFunction<Car, OperatingPoint> value,
        ToDoubleBiFunction<Car, OperatingPoint> bound) {

    static PointRule atMost(String key, String name, QuantityKind kind, String path, String consequence) {
        return new PointRule(key, name, kind, Side.AT_MOST, path, consequence, false, null, null);
    }

    static PointRule atLeast(String key, String name, QuantityKind kind, String path, String consequence) {
        return new PointRule(key, name, kind, Side.AT_LEAST, path, consequence, false, null, null);
    }

    PointRule value(ToDoubleBiFunction<Car, OperatingPoint> read) {
        return new PointRule(key, name, kind, side, path, consequence, onlyWithNitrous, read, bound);
    }

    PointRule bound(ToDoubleBiFunction<Car, OperatingPoint> allowed) {
        return new PointRule(key, name, kind, side, path, consequence, onlyWithNitrous, value, allowed);
    }

    PointRule withNitrousOnly() {
        return new PointRule(key, name, kind, side, path, consequence, true, value, bound);
    }

    /** A limit that the builder does not set has no bound and concerns nothing. */
    boolean concerns(Car car, OperatingPoint point) {
        return (!onlyWithNitrous || point.mode().nitrousFlows()) && !Double.isInfinite(bound.applyAsDouble(car, point));
    }

    /** Relative margin at a point; the plain arithmetic of {@link Limit#relativeMargin}. */
    double margin(Car car, OperatingPoint point) {
        double v = value.applyAsDouble(car, point);
        double b = bound.applyAsDouble(car, point);
        double margin = side == Side.AT_MOST ? b - v : v - b;
        return Double.isNaN(margin) ? Double.NEGATIVE_INFINITY : margin / Math.abs(b);
    }

    Limit at(Car car, OperatingPoint point, String caseName) {
        return new Limit(
                key,
                name,
                kind,
                value.applyAsDouble(car, point),
                bound.applyAsDouble(car, point),
                side,
                false,
                consequence,
                car.provenance(path),
                car.reason(path),
                String.format(
                        java.util.Locale.ROOT,
                        "%,.0f rpm, %s",
                        point.rpm(),
                        point.mode().words()),
                caseName,
                Math.abs(bound.applyAsDouble(car, point)));
    }
}
