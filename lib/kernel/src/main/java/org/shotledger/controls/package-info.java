/**
 * One job: sliders, menus, boxes and buttons on a notebook's page that call a function of the user's while they are moved.
 *
 * <p>Spoken is the open message protocol of Jupyter's widgets, version 2, over comms. Where nothing on the page speaks it, and in a run
 * without a page, the start values stand in its place. What the function gives back is an ordinary output, so a saved notebook keeps
 * the last one.
 *
 * <p>Allowed imports: the JDK, {@code display}, {@code comm}.
 */
package org.shotledger.controls;
