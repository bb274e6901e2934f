/**
 * One job: messages between a notebook's Java and the page that shows it, as the open Jupyter protocol's comms carry them.
 *
 * <p>A kernel gives the way ({@code CommWay}); without one, as in a headless run, there are no comms. Live
 * controls are built on this; nothing here knows what a message means.
 *
 * <p>Allowed imports: the JDK.
 */
package org.shotledger.comm;
