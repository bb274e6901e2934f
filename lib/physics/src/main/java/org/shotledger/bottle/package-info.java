/**
 * The nitrous bottle: its charge, its pressure, and how both change while it empties, rests and is heated.
 *
 * <p>One job: thermodynamics of a closed vessel with liquid and vapour in time. SI doubles and absolute pressure.
 *
 * <p>Allowed imports: {@code org.shotledger.fluid}, {@code org.shotledger.flow}, {@code java.*}, Hipparchus.
 */
package org.shotledger.bottle;
