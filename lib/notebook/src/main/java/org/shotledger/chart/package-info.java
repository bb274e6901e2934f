/**
 * Charts: draws plain numbers as XChart pictures that stay crisp on screen and on grey paper.
 *
 * <p>Each chart takes a small record of SI arrays, so that it knows nothing of where they come from. A {@link
 * org.shotledger.chart.ChartPicture} gives SVG with real letters, PNG, an alternative text, and a fresh XChart object to
 * go on with.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code limits}, {@code display}, {@code org.apache.batik},
 * {@code org.knowm.xchart}.
 */
package org.shotledger.chart;
