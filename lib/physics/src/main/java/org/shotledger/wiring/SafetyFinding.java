package org.shotledger.wiring;

/**
 * A rule of the safety chain, held against it.
 *
 * @param rule what must hold
 * @param holds whether it does
 * @param because what was found, with the parts by name
 */
public record SafetyFinding(String rule, boolean holds, String because) {}
