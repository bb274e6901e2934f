package org.shotledger.setup;

import java.util.Optional;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.supply.Regulator;
import org.shotledger.units.Amount;
import org.shotledger.units.GaugePressure;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * Everything a person sets before a pass. Nothing in it is calculated; what happens with it is an outcome.
 *
 * @param boost boost over engine speed
 * @param jets jets of every nozzle; empty when the nitrous is not used
 * @param mainRegulator fuel pressure of the engine's own rail
 * @param ownRegulator fuel pressure of the nitrous system's own supply; empty when it draws from the engine's own rail
 * @param mixture lambda the main fuel is metered for, on the air alone, 0.5 to 1.3
 * @param retard spark later than the builder's own timing while the nitrous flows, crank degrees, 0 to 30
 * @param arming engine speeds between which the nitrous may open
 * @param bottle charge and temperature of the bottle
 * @param passes what is run on one filling
 */
public record Setup(
        BoostTarget boost,
        Optional<JetPair> jets,
        Regulator mainRegulator,
        Optional<Regulator> ownRegulator,
        double mixture,
        double retard,
        ActivationWindow arming,
        BottleFill bottle,
        PassPlan passes) {

    public Setup {
        Require.given("regulator of the nitrous system's own supply", ownRegulator);
        Require.within("mixture of the main fuel", mixture, 0.5, 1.3, "");
        Require.within("spark retard with nitrous", retard, 0, 30, "deg");
    }

    /**
     * The regulator that stands before the nitrous system's fuel jets.
     *
     * @return its own, or that of the main rail where the fuel comes from there
     */
    public Regulator nitrousRegulator() {
        return ownRegulator.orElse(mainRegulator);
    }

    /**
     * The same with another boost.
     *
     * @param other boost over engine speed
     * @return the changed setup
     */
    public Setup withBoost(BoostTarget other) {
        return new Setup(other, jets, mainRegulator, ownRegulator, mixture, retard, arming, bottle, passes);
    }

    /**
     * The same with one boost at every engine speed, armed or not.
     *
     * @param gauge pressure above ambient
     * @return the changed setup
     */
    public Setup withBoost(GaugePressure gauge) {
        return withBoost(BoostTarget.constant(gauge.pascals()));
    }

    /**
     * The same with the boost it is run with scaled at every engine speed, so that the turbocharger is still asked for none where it can
     * give none: the table for the armed nitrous, or both tables where the nitrous is not used.
     *
     * @param highest pressure above ambient at the speed of most boost
     * @return the changed setup
     */
    public Setup withHighestBoost(GaugePressure highest) {
        double now = boost.armed().highest();
        if (!(now > 0)) {
            return withBoost(highest);
        }
        double factor = highest.pascals() / now;
        BoostTable armed = boost.armed().map(gauge -> gauge * factor);
        BoostTable off = jets.isPresent() ? boost.off() : boost.off().map(gauge -> gauge * factor);
        return withBoost(new BoostTarget(off, armed, boost.tolerance()));
    }

    /**
     * The same with other jets.
     *
     * @param pair the jets of every nozzle
     * @return the changed setup
     */
    public Setup withJets(JetPair pair) {
        return new Setup(
                boost, Optional.of(pair), mainRegulator, ownRegulator, mixture, retard, arming, bottle, passes);
    }

    /**
     * The same with other jets.
     *
     * @param nitrous hole of the nitrous jet of every nozzle, for example {@code thou(44)}
     * @param fuel hole of its fuel jet
     * @return the changed setup
     */
    public Setup withJets(Amount nitrous, Amount fuel) {
        return withJets(new JetPair(bore(nitrous), bore(fuel)));
    }

    private static double bore(Amount hole) {
        if (hole.kind() != QuantityKind.BORE && hole.kind() != QuantityKind.LENGTH) {
            throw new IllegalArgumentException(
                    "A jet is given as " + hole + "; give the diameter of its hole, such as 44 thou.");
        }
        return hole.value();
    }

    /**
     * The same with the nitrous not used.
     *
     * @return the changed setup
     */
    public Setup withoutJets() {
        return new Setup(boost, Optional.empty(), mainRegulator, ownRegulator, mixture, retard, arming, bottle, passes);
    }

    /**
     * The same with another fuel pressure in the engine's own rail, and with it at the nitrous system's jets where they draw from there.
     *
     * @param regulator its regulator
     * @return the changed setup
     */
    public Setup withMainRegulator(Regulator regulator) {
        return new Setup(boost, jets, regulator, ownRegulator, mixture, retard, arming, bottle, passes);
    }

    /**
     * The same with another fuel pressure of the nitrous system's own supply.
     *
     * @param regulator its regulator
     * @return the changed setup
     * @throws IllegalArgumentException when the nitrous system has no supply of its own
     */
    public Setup withNitrousRegulator(Regulator regulator) {
        if (ownRegulator.isEmpty()) {
            throw new IllegalArgumentException("The nitrous fuel comes from the main rail and has its pressure;"
                    + " change that one, with withMainRegulator.");
        }
        return new Setup(boost, jets, mainRegulator, Optional.of(regulator), mixture, retard, arming, bottle, passes);
    }

    /**
     * The same with another fuel pressure before the nitrous system's fuel jets; where they draw from the main rail, it is the pressure of
     * that.
     *
     * @param base with the engine off, above ambient
     * @return the changed setup
     */
    public Setup withNitrousFuelPressure(GaugePressure base) {
        Regulator now = nitrousRegulator();
        Regulator other = new Regulator(now.name(), base.pascals(), now.boostReference());
        return ownRegulator.isPresent() ? withNitrousRegulator(other) : withMainRegulator(other);
    }

    /**
     * The same with another mixture of the main fuel.
     *
     * @param lambda on the air alone, 0.5 to 1.3
     * @return the changed setup
     */
    public Setup withMixture(double lambda) {
        return new Setup(boost, jets, mainRegulator, ownRegulator, lambda, retard, arming, bottle, passes);
    }

    /**
     * The same with another spark.
     *
     * @param degrees later than the builder's own timing while the nitrous flows, crank degrees, 0 to 30
     * @return the changed setup
     */
    public Setup withRetard(double degrees) {
        return new Setup(boost, jets, mainRegulator, ownRegulator, mixture, degrees, arming, bottle, passes);
    }

    /**
     * The same with other speeds at which the nitrous may open.
     *
     * @param window the speeds
     * @return the changed setup
     */
    public Setup withArming(ActivationWindow window) {
        return new Setup(boost, jets, mainRegulator, ownRegulator, mixture, retard, window, bottle, passes);
    }

    /**
     * The same with another filling of the bottle.
     *
     * @param fill charge and temperature
     * @return the changed setup
     */
    public Setup withBottle(BottleFill fill) {
        return new Setup(boost, jets, mainRegulator, ownRegulator, mixture, retard, arming, fill, passes);
    }

    /**
     * The same with a bottle of another warmth.
     *
     * @param start temperature at the start of a pass, for example {@code degF(86)}
     * @return the changed setup
     */
    public Setup withBottleTemperature(Amount start) {
        return withBottle(new BottleFill(bottle.charge(), start.value()));
    }

    /**
     * The same with other passes.
     *
     * @param other what is run on one filling
     * @return the changed setup
     */
    public Setup withPasses(PassPlan other) {
        return new Setup(boost, jets, mainRegulator, ownRegulator, mixture, retard, arming, bottle, other);
    }
}
