/**
 * What each result of the core looks like: its tables, its charts, its document, and how a notebook shows it.
 *
 * <p>Allowed imports: the core's {@code units}, {@code build}, {@code budget}, {@code boost}, {@code flow}, {@code wetkit},
 * {@code delivery}, {@code spread}, {@code relief}, {@code stepup} and
 * {@code risk}; {@code display}, {@code table}, {@code chart}, {@code document}.
 */
package org.shotledger.view;
