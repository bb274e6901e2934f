package org.shotledger.relief;

/**
 * One change, tried.
 *
 * @param change the change
 * @param before the value as the sheet states it
 * @param after the value tried
 * @param reached true when the target is then reached inside every limit
 * @param helps true when the change moves the first limit: a little more than the build reaches today then holds
 * @param leastMargin smallest relative margin of the best split at the target; NaN when no jets give that power or the change
 *     is refused
 * @param limit the limit that is then the first, in words, or why the change is refused
 */
public record Attempt(
        Change change, String before, String after, boolean reached, boolean helps, double leastMargin, String limit) {}
