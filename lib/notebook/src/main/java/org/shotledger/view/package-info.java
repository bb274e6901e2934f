/**
 * What each result of the core looks like: its tables, its charts, its document, and how a notebook shows it.
 *
 * <p>Allowed imports: the library; {@code display}, {@code table}, {@code chart}, {@code document}.
 */
package org.shotledger.view;
