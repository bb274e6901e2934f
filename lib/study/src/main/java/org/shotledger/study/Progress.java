package org.shotledger.study;

/** Is told how far a sweep has come. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress SILENT = (done, total) -> {};

    /**
     * A piece is done.
     *
     * @param done combinations evaluated so far
     * @param total combinations of the space
     */
    void at(long done, long total);
}
