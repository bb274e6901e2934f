/**
 * One job as its sheet describes it: reading, checking, changing, comparing and writing it.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code files}, {@code sheet}, {@code limits}, {@code car}, {@code setup},
 * {@code evaluate}, {@code workshop}.
 */
package org.shotledger.job;
