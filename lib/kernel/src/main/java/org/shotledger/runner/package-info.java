/**
 * One job: execute a notebook file without a front end and write what came of it, as notebook, HTML page and PDF.
 *
 * <p>Allowed imports: the JDK, {@code display}, {@code snippet}, {@code ipynb}, {@code files}, {@code com.google.gson},
 * {@code com.openhtmltopdf}, {@code org.commonmark}, {@code org.jsoup}.
 */
package org.shotledger.runner;
