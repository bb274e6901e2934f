/**
 * One job: notebook files (nbformat 4.5) and the JSON of their outputs.
 *
 * <p>Allowed imports: the JDK, Gson, {@code org.shotledger.display}, {@code org.shotledger.sheet} (files replaced whole).
 */
package org.shotledger.ipynb;
