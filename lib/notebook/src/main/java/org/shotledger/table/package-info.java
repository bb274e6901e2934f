/**
 * Tables: rows of words and quantities, shown as HTML in a page, as aligned text in a terminal, and handed out as a
 * tablesaw table to go on with.
 *
 * <p>Allowed imports: {@code units}, {@code limits} (its verdicts), {@code display}, tablesaw, the JDK.
 */
package org.shotledger.table;
