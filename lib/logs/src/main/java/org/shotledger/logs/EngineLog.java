package org.shotledger.logs;

import java.io.Reader;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shotledger.sheet.SheetException;

/**
 * A log as it was read: every row, every value in SI, nothing repaired. What is wrong with it is told by {@link #findings()}.
 */
public final class EngineLog {
    /** The channels from which power can be had. */
    static final Set<LogChannel> POWERS =
            Set.of(LogChannel.WHEEL_POWER, LogChannel.WHEEL_TORQUE, LogChannel.CRANK_POWER, LogChannel.CRANK_TORQUE);

    private final String file;
    private final String layout;
    private final List<String> comments;
    private final RowTimes times;
    private final Map<LogChannel, double[]> values;
    private final double[] lines;
    private final LogMapping mapping;
    private final List<Finding> reading;

    EngineLog(
            String file,
            String layout,
            List<String> comments,
            Map<LogChannel, double[]> values,
            double[] lines,
            LogMapping mapping,
            List<Finding> reading) {
        this.file = file;
        this.layout = layout;
        this.comments = List.copyOf(comments);
        this.values = new EnumMap<>(values);
        this.times = new RowTimes(this.values);
        this.lines = lines;
        this.mapping = mapping;
        this.reading = List.copyOf(reading);
    }

    /**
     * Reads a log with the mapping that lies beside it, if there is one.
     *
     * @param file the CSV file
     * @return the log
     * @throws SheetException with every problem found; findings are no problems
     */
    public static EngineLog read(Path file) {
        return read(file, LogMapping.beside(file));
    }

    /**
     * Reads a log.
     *
     * @param file the CSV file
     * @param mapping how its columns are read
     * @return the log
     * @throws SheetException with every problem found
     */
    public static EngineLog read(Path file, LogMapping mapping) {
        return LogReading.read(file, String.valueOf(file.getFileName()), mapping);
    }

    /**
     * Reads a log from text.
     *
     * @param text the text; it is closed
     * @param name the file as the user named it
     * @param mapping how its columns are read
     * @return the log
     * @throws SheetException with every problem found
     */
    public static EngineLog read(Reader text, String name, LogMapping mapping) {
        return LogReading.read(text, name, mapping);
    }

    /**
     * The file as the user named it.
     *
     * @return its name
     */
    public String file() {
        return file;
    }

    /**
     * The comment lines above the heading, which say where the log comes from.
     *
     * @return the lines without their marks
     */
    public List<String> comments() {
        return comments;
    }

    /**
     * How the text was read, for a reader to check.
     *
     * @return for example {@code "cells parted by semicolons, decimal commas, headings on line 3"}
     */
    public String layout() {
        return layout;
    }

    /**
     * When each row was written, for pictures beside series: what its clock says, later stretches of a clock that began anew moved
     * behind the earlier ones.
     *
     * @return s, never falling; NaN for rows that cannot be placed; a copy
     */
    public double[] time() {
        return times.placed().clone();
    }

    RowTimes times() {
        return times;
    }

    /**
     * The number of rows.
     *
     * @return the count
     */
    public int rows() {
        return lines.length;
    }

    /**
     * The line of a row in the file.
     *
     * @param row the row from 0
     * @return the line from 1
     */
    public int line(int row) {
        return (int) lines[row];
    }

    /**
     * Pressure around the gauges.
     *
     * @return Pa absolute; NaN when nothing named it
     */
    public double ambient() {
        return mapping.ambient();
    }

    /**
     * The setup that was run, as the mapping names it.
     *
     * @return for example {@code "step 1"}; empty where nothing names it
     */
    public String setup() {
        return mapping.setup();
    }

    /**
     * The air it was run in.
     *
     * @return its name in the job sheet; empty for that of the target
     */
    public String conditions() {
        return mapping.conditions();
    }

    /**
     * How a channel's column was read, with what its sensor is already known to read of the truth.
     *
     * @param channel the channel
     * @return what the mapping says of it; empty where that says nothing, so that the sensor was taken to read true
     */
    public Optional<LogColumn> column(LogChannel channel) {
        return mapping.columns().stream().filter(c -> c.channel() == channel).findFirst();
    }

    /**
     * The channels there are.
     *
     * @return the channels in their usual order
     */
    public Set<LogChannel> channels() {
        return java.util.Collections.unmodifiableSet(values.keySet());
    }

    /**
     * Tells whether a channel is there.
     *
     * @param channel the channel
     * @return true when it is
     */
    public boolean has(LogChannel channel) {
        return values.containsKey(channel);
    }

    /**
     * The values of a channel, row by row.
     *
     * @param channel the channel
     * @return a copy, SI; NaN for an empty cell
     * @throws IllegalArgumentException when the log has no such channel
     */
    public double[] values(LogChannel channel) {
        return raw(channel).clone();
    }

    /** The values themselves, not to be changed. */
    double[] raw(LogChannel channel) {
        double[] found = values.get(channel);
        if (found == null) {
            throw new IllegalArgumentException("The log " + file + " has no " + channel.words() + "; it has "
                    + String.join(
                            ", ",
                            values.keySet().stream().map(LogChannel::words).toList()) + ".");
        }
        return found;
    }

    /**
     * Everything that is wrong with the log under the usual settings.
     *
     * @return the findings; each call looks anew
     */
    public LogFindings findings() {
        return LogFindings.of(this, LogFindings.USUAL_GAP);
    }

    List<Finding> reading() {
        return reading;
    }

    @Override
    public String toString() {
        return file + ": " + rows() + " rows of "
                + String.join(
                        ", ", values.keySet().stream().map(LogChannel::words).toList());
    }
}
