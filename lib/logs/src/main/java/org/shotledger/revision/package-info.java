/**
 * What follows from a log: whether to go on to the next step, to hold or to stop, and the revision of the sheet.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code logs}, {@code causes}.
 */
package org.shotledger.revision;
