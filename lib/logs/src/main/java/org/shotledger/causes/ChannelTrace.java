package org.shotledger.causes;

import org.shotledger.logs.LogChannel;

/**
 * One channel at the settled pieces of the pulls, in order of time.
 *
 * @param channel the channel
 * @param time middle of each piece, s
 * @param rpm mean engine speed of each, rev/min
 * @param nitrous 1 where the nitrous was on, 0 where it was off
 * @param logged mean of the log, SI
 * @param planned what the setup that was run should read, SI
 * @param explained what it should read with the likeliest causes, SI
 * @param band standard uncertainty of the planned value by every stated band, SI
 * @param scatter standard uncertainty of the logged mean by scatter and wandering, SI
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record ChannelTrace(
        LogChannel channel,
        double[] time,
        double[] rpm,
        double[] nitrous,
        double[] logged,
        double[] planned,
        double[] explained,
        double[] band,
        double[] scatter) {

    /**
     * The number of pieces.
     *
     * @return the count
     */
    public int size() {
        return time.length;
    }

    /**
     * Whether a piece lies outside two standard uncertainties of band and scatter together.
     *
     * @param i the piece from 0
     * @return true when it does
     */
    public boolean off(int i) {
        return Math.abs(logged[i] - planned[i]) > 2 * Math.hypot(band[i], scatter[i]);
    }
}
