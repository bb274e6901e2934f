package org.shotledger.pass;

import java.util.List;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * Level straight line and its air.
 *
 * @param airDensity kg/m3, 0 to 1.6
 * @param headWind m/s, against the car positive, -20 to 20
 * @param rollOut distance that the car moves before the clock starts, m, 0 to 2
 * @param marks distances from the clock's start at which time and speed are wanted, m, rising; the last is the finish
 */
public record Strip(double airDensity, double headWind, double rollOut, List<Double> marks) {

    public Strip {
        marks = List.copyOf(marks);
        Require.within("density of the air", airDensity, 0, 1.6, "kg/m3");
        Require.within("head wind", headWind, -20, 20, "m/s");
        Require.within("distance before the clock starts", rollOut, 0, 2, "m");
        if (marks.isEmpty()) {
            throw new IllegalArgumentException("The strip has no mark; give at least the finish.");
        }
        double before = 0;
        for (double mark : marks) {
            Require.within("mark of the strip", mark, Math.nextUp(before), 20_000, "m");
            before = mark;
        }
    }

    /**
     * A quarter of a mile with the usual marks: 60, 330, 660, 1000, 1254 and 1320 ft (common practice; the last two bound the distance
     * over which the finishing speed is taken). The clock starts after one foot, as a wheel leaves the beam: common practice, no
     * source; 0.2 to 0.4 m by how the car was staged.
     *
     * @param airDensity kg/m3
     * @return the strip
     */
    public static Strip quarterMile(double airDensity) {
        return new Strip(
                airDensity,
                0,
                UnitFactors.FOOT,
                List.of(
                        60 * UnitFactors.FOOT,
                        330 * UnitFactors.FOOT,
                        660 * UnitFactors.FOOT,
                        1000 * UnitFactors.FOOT,
                        1254 * UnitFactors.FOOT,
                        1320 * UnitFactors.FOOT));
    }

    /**
     * Where the finish lies.
     *
     * @return distance from the clock's start, m
     */
    public double finishMark() {
        return marks.get(marks.size() - 1);
    }

    double finish() {
        return rollOut + marks.get(marks.size() - 1);
    }
}
