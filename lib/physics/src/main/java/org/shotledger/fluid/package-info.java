/**
 * Properties of nitrous oxide as a real fluid: the equation of state, its saturation curve, the flashes, transport.
 *
 * <p>SI doubles and absolute pressure throughout. Start at {@link org.shotledger.fluid.NitrousOxide}; inner loops that
 * must not allocate use the classes behind it. Allowed imports: the JDK, Hipparchus, {@code org.shotledger.units},
 * {@code org.shotledger.curve}.
 */
package org.shotledger.fluid;
