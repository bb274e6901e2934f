package org.shotledger.car;

import org.shotledger.supply.Injector;
import org.shotledger.supply.PumpGroup;

/**
 * Main fuel supply without its fuel pressure, which is set.
 *
 * @param injector one injector
 * @param count number of injectors
 * @param pumps the pumps that feed the rail
 * @param voltage supply voltage with the engine running, V
 */
public record Injection(Injector injector, int count, PumpGroup pumps, double voltage) {}
