/**
 * What each result looks like: its tables, its charts, its document, and how a notebook shows it.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code lib/study}, {@code lib/logs}, {@code display},
 * {@code table}, {@code chart}, {@code document}.
 */
package org.shotledger.view;
