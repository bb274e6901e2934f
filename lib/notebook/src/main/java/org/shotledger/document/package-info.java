/**
 * The customer document: one page of HTML that needs neither network nor script, and a PDF of the same.
 *
 * <p>A {@link org.shotledger.document.DocumentContent} holds what is said, in the order of {@link
 * org.shotledger.document.Section}; a {@link org.shotledger.document.CustomerDocument} sets it through one template. Text
 * that comes from the user is escaped by the template engine.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code limits}, {@code display}, {@code table}, {@code chart},
 * {@code com.openhtmltopdf}, {@code freemarker}, {@code org.apache.batik}, {@code org.apache.fontbox}, {@code org.apache.pdfbox}.
 */
package org.shotledger.document;
