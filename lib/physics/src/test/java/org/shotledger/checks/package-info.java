/** Runs the table of published engine values, row by row, against the library. */
package org.shotledger.checks;
