/**
 * One job: notebook files (nbformat 4.5) and the JSON of their outputs.
 *
 * <p>Allowed imports: the JDK, Gson, {@code org.shotledger.display}.
 */
package org.shotledger.ipynb;
