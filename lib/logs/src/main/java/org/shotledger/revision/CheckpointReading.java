package org.shotledger.revision;

import org.shotledger.stepup.Checkpoint;

/**
 * A checkpoint with what the log reads for it.
 *
 * @param checkpoint the checkpoint
 * @param read what the log reads, SI; NaN when it does not
 * @param uncertainty standard uncertainty of that by the log's scatter, SI; NaN likewise
 * @param call what to do
 * @param reason why, with the figures that decide left to the table
 */
public record CheckpointReading(Checkpoint checkpoint, double read, double uncertainty, Call call, String reason) {}
