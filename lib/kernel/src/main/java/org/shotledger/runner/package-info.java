/**
 * One job: execute a notebook file without a front end and write what came of it, as notebook, HTML page and PDF.
 *
 * <p>Allowed imports: the JDK, commonmark, jsoup, openhtmltopdf, Gson, {@code org.shotledger.display}, {@code snippet},
 * {@code ipynb}, {@code sheet} (files replaced whole).
 */
package org.shotledger.runner;
