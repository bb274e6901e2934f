/** Limits and verdicts as data. May use units. */
package org.shotledger.limits;
