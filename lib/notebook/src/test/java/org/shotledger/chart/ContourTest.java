package org.shotledger.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class ContourTest {

    @Test
    void aLineOfAPlaneRunsWhereThePlaneHasTheLevel() {
        double[] grid = Samples.steps(0, 1, 6);
        double[][] z = new double[6][6];
        for (int j = 0; j < 6; j++) {
            for (int i = 0; i < 6; i++) {
                z[j][i] = 2 * grid[i] + 3 * grid[j];
            }
        }
        var pieces = Contour.at(grid, grid, z, 1.7);
        assertFalse(pieces.isEmpty());
        for (Contour.Piece piece : pieces) {
            assertEquals(1.7, 2 * piece.x1() + 3 * piece.y1(), 1e-12);
            assertEquals(1.7, 2 * piece.x2() + 3 * piece.y2(), 1e-12);
        }
    }
}
