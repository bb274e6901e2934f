/**
 * Properties of nitrous oxide as a real fluid: the equation of state, its saturation curve, the flashes.
 *
 * <p>SI doubles and absolute pressure throughout. Start at {@link org.shotledger.fluid.NitrousOxide}; inner loops that
 * must not allocate use the classes behind it.
 *
 * <p>Allowed imports: the JDK, {@code org.hipparchus}.
 */
package org.shotledger.fluid;
