/**
 * The names a notebook starts with: help, the choice of units, the data folder, documents. It loads nothing heavy until a
 * name is used, because a kernel imports it at start.
 *
 * <p>Allowed imports: everything below it; no class that draws is touched before its first use.
 */
package org.shotledger.session;
