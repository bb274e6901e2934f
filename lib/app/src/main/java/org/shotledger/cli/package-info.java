/**
 * One job: the command line. Each command is one class that calls another package and turns failures into sentences and exit
 * codes: 0 done, 1 the notebook or check failed, 2 the command was wrong.
 *
 * <p>Allowed imports: the JDK, picocli, all other packages of the project.
 */
package org.shotledger.cli;
