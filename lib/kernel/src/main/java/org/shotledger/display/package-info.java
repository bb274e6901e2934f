/**
 * One job: turn a value into the forms a notebook can show, without knowing which notebook shows it.
 *
 * <p>A type either implements {@link org.shotledger.display.Displayable}, or a {@link org.shotledger.display.DisplayRenderer}
 * for it is found by {@link java.util.ServiceLoader}. A kernel calls {@link org.shotledger.display.Display#bundle} for each
 * result and installs a {@link org.shotledger.display.DisplaySink} for what a cell shows on its own.
 *
 * <p>Allowed imports: the JDK.
 */
package org.shotledger.display;
