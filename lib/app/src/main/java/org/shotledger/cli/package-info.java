/**
 * One job: the command line. Each command is one class that calls another package and turns failures into sentences and exit
 * codes: 0 done, 1 the notebook or check failed, 2 the command was wrong.
 *
 * <p>Allowed imports: the JDK, {@code display}, {@code snippet}, {@code ipynb}, {@code kernel}, {@code runner},
 * {@code files}, {@code job}, {@code plan}, {@code logs}, {@code sheet}, {@code units}, {@code document}, {@code view},
 * {@code session}, {@code com.google.gson}, {@code picocli}.
 */
package org.shotledger.cli;
