package org.shotledger.confidence;

import java.util.Map;

/**
 * The chances of one plan under one set of bands.
 *
 * @param reach that the power at the wheels reaches the target in its own case
 * @param keep that every limit is kept in every case
 * @param both of both together
 * @param limits that each limit is kept in every case, by its key
 * @param cases that every limit is kept in a case, by its name
 * @param power wheel power of all draws in the case of the target, W
 * @param kept wheel power of the draws that keep every limit, W
 */
public record Chances(
        Chance reach,
        Chance keep,
        Chance both,
        Map<String, Chance> limits,
        Map<String, Chance> cases,
        Propagation power,
        Propagation kept) {}
