/**
 * Flow of nitrous oxide (and of plain liquids and gases) through holes, lines and whole feed paths.
 *
 * <p>One job: given a stagnation state upstream and a pressure downstream, say how much flows, within which band, where it
 * chokes and in what state it leaves. Each law for a hole is one class behind {@link org.shotledger.flow.OrificeLaw}; each part
 * of a feed path is one record behind {@code FeedElement}; a flow test replaces a law's band by the hole's own
 * ({@link org.shotledger.flow.FlowTest}). SI doubles and absolute pressure throughout.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code fluid}, {@code curve}, {@code org.hipparchus}.
 */
package org.shotledger.flow;
