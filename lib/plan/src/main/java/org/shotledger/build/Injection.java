package org.shotledger.build;

import org.shotledger.supply.Injector;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/**
 * Main fuel supply.
 *
 * @param injector one injector
 * @param count number of injectors
 * @param pumps the pumps that feed the rail
 * @param regulator the rail's regulator
 * @param voltage supply voltage with the engine running, V
 */
public record Injection(Injector injector, int count, PumpGroup pumps, Regulator regulator, double voltage) {}
