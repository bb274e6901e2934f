/** The setup for a target, what it does in every case, and what else was weighed. */
package org.shotledger.plan;
