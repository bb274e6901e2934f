/**
 * One job: bring a library and what it needs onto this machine, by its Maven coordinates, as the user's own Maven would.
 *
 * <p>Nothing here is loaded before somebody asks for a library.
 *
 * <p>Allowed imports: the JDK, {@code org.apache.maven}, {@code org.eclipse.aether}, {@code org.sonatype}.
 */
package org.shotledger.fetch;
