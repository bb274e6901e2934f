package org.shotledger.study;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Writes the factor tables of a space so that a peer in another language can do the same arithmetic on the same combinations.
 * It stands in the study's package to see them. Layout: see {@code peer/sweep.py}, which reads it.
 */
public final class FactorDump {
    private static final int PIECES = 2;

    private FactorDump() {}

    /**
     * Writes one file, big-endian doubles.
     *
     * @param space a space of one engine side whose fuel settings all stand in one row
     * @param to the file
     */
    public static void write(Space space, Path to) {
        Factors factors = new Factors(space, new Courses(space));
        EngineSide side = factors.engine(0);
        if (factors.engines() != 1 || side.fuel.size() != 1) {
            throw new StudyException("The peer reads one engine side with one fuel row; the space has "
                    + factors.engines() + " and " + side.fuel.size() + ".");
        }
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(to)))) {
            head(side, out);
            for (KitTable.Nitrous nitrous : side.nitrous) {
                out.writeDouble(nitrous.margin());
                branches(side, nitrous, out);
                rows(side, nitrous, out);
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("The tables cannot be written to " + to + ".", e);
        }
    }

    private static void head(EngineSide side, DataOutputStream out) throws IOException {
        FuelRow fuel = side.fuel.get(0);
        var limits = side.table.course.evaluator().build().limits();
        SpeedTable first = side.table.speeds[0];
        for (double number : new double[] {
            side.nitrous.size(),
            side.boostOffsets.length,
            side.table.speeds.length,
            first.outputs,
            first.basis.richness + 1,
            TaperBranch.NODES,
            PIECES,
            KitMargins.NODES,
            fuel.length(),
            side.table.torque,
            side.table.peak,
            limits.lambdaHigh(),
            limits.lambdaLow(),
            side.table.speedMargin,
            Figures.FUEL_LOST,
            org.shotledger.budget.Course.RESERVE,
            side.kits.get(0).pressure(0),
            side.kits.get(0).pressure(KitMargins.NODES - 1)
        }) {
            out.writeDouble(number);
        }
        for (double flow : fuel.flow) {
            out.writeDouble(flow);
        }
        for (int node = 0; node < KitMargins.NODES; node++) {
            for (int i = 0; i < fuel.length(); i++) {
                out.writeDouble(side.kits.get(0).at(i, side.kits.get(0).pressure(node)));
            }
        }
    }

    /** Each speed, torque then peak, so many pieces: the range of fuel of each, above its own end where there is none; its powers. */
    private static void branches(EngineSide side, KitTable.Nitrous nitrous, DataOutputStream out) throws IOException {
        FuelRow fuel = side.fuel.get(0);
        int outputs = side.table.speeds[0].outputs;
        for (SpeedTable speed : side.table.speeds) {
            for (int load : new int[] {side.table.torque, side.table.peak}) {
                List<TaperBranch> pieces =
                        new TaperSearch(speed, load, nitrous, fuel.shares()).between(fuel.lowest, fuel.highest);
                if (pieces.size() > PIECES) {
                    throw new StudyException("The peer reads " + PIECES + " pieces, there are " + pieces.size() + ".");
                }
                for (int i = 0; i < PIECES; i++) {
                    boolean there = i < pieces.size();
                    out.writeDouble(there ? pieces.get(i).fuel.low() : 1);
                    out.writeDouble(there ? pieces.get(i).fuel.high() : 0);
                    for (int k = 0; k < outputs + 2; k++) {
                        for (int l = 0; l < TaperBranch.NODES; l++) {
                            out.writeDouble(there ? pieces.get(i).powers(k)[l] : 0);
                        }
                    }
                }
            }
        }
    }

    /** Each boost: whether the row has figures, then each speed: plenum pressure, offset and slope of the richness, powers. */
    private static void rows(EngineSide side, KitTable.Nitrous nitrous, DataOutputStream out) throws IOException {
        FuelRow fuel = side.fuel.get(0);
        for (int b = 0; b < side.boostOffsets.length; b++) {
            boolean figures = side.onMap[b];
            for (int r = 0; r < side.table.speeds.length; r++) {
                figures &= nitrous.flow() / side.plenum[b][r] <= side.table.speeds[r].nitrous.high() * (1 + 1e-9);
            }
            out.writeDouble(figures ? 1 : 0);
            for (int r = 0; r < side.table.speeds.length; r++) {
                SpeedRow row = new SpeedRow(side.table.speeds[r]);
                row.set(side.atPressure[b][r], side.plenum[b][r], nitrous, fuel);
                out.writeDouble(row.plenum);
                out.writeDouble(row.offset);
                out.writeDouble(row.slope);
                for (int k = 0; k < side.table.speeds[r].outputs; k++) {
                    for (double power : row.powers(k)) {
                        out.writeDouble(power);
                    }
                }
            }
        }
    }
}
