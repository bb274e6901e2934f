/**
 * The budget: evaluates one operating point, splits a power target between boost and nitrous oxide, holds every part
 * against its limit, and keeps a ledger in which each figure carries its reasoning.
 *
 * <p>It may import every package of the core except {@code study}, and nothing that reads files or draws.
 */
package org.shotledger.budget;
