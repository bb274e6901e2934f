/**
 * One job: notebook files (nbformat 4.5) and the JSON of their outputs.
 *
 * <p>Allowed imports: the JDK, {@code display}, {@code files}, {@code com.google.gson}.
 */
package org.shotledger.ipynb;
