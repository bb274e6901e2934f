/**
 * Tables: rows of words and quantities, shown as HTML in a page, as aligned text in a terminal, and handed out as a
 * tablesaw table to go on with.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code limits}, {@code display}, {@code tech.tablesaw}.
 */
package org.shotledger.table;
