/**
 * Flow of nitrous oxide (and of plain liquids and gases) through holes, lines and whole feed paths.
 *
 * <p>One job: given a stagnation state upstream and a pressure downstream, say how much flows, where it chokes and in what
 * state it leaves. Each hole model is one class behind {@link org.shotledger.flow.OrificeFlow}; each part of a feed path is
 * one record behind {@code FeedElement}. SI doubles and absolute pressure throughout.
 *
 * <p>Allowed imports: the JDK, {@code fluid}, {@code curve}, {@code org.hipparchus}.
 */
package org.shotledger.flow;
