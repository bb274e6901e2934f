/**
 * The names a notebook starts with: help, the choice of units, the data folder, documents. It loads nothing heavy until a
 * name is used, because a kernel imports it at start.
 *
 * <p>Allowed imports: the JDK, {@code lib/plan}, {@code explore}, {@code display}, {@code document}, {@code table}, {@code view}.
 */
package org.shotledger.session;
