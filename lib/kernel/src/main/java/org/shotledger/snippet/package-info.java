/**
 * One job: run Java snippets of one notebook session, keep their values, and say clearly what went wrong.
 *
 * <p>Knows nothing of notebook files or of any wire protocol. The compiler is {@code jdk.jshell}, run inside this process so
 * that values and errors stay real objects and a cell costs milliseconds.
 *
 * <p>Allowed imports: the JDK, {@code display}, {@code fetch}.
 */
package org.shotledger.snippet;
