/**
 * The nitrous bottle: its charge, its pressure, and how both change while it empties, rests and is heated.
 *
 * <p>One job: thermodynamics of a closed vessel with liquid and vapour in time. SI doubles and absolute pressure.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code fluid}, {@code flow}, {@code curve}, {@code org.hipparchus}.
 */
package org.shotledger.bottle;
