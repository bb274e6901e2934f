/**
 * What happens when a setup is run on a car in a case: operating points over engine speed, the seconds of a pass, every limit. The
 * limits are listed in the classes named Rules and nowhere else.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code limits}, {@code org.hipparchus}.
 */
package org.shotledger.evaluate;
