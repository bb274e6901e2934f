package org.shotledger.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shotledger.units.Require;
import org.shotledger.wiring.InputStage;
import org.shotledger.wiring.Pin;
import org.shotledger.wiring.PinExpander;
import org.shotledger.wiring.PinKind;

/**
 * The engine controller: what of it is free, and how it reads sensors.
 *
 * @param inputs analogue and digital inputs, counted; used where no pins are described
 * @param inputsUsed of which are taken
 * @param outputs outputs, counted
 * @param outputsUsed of which are taken
 * @param pulsingOutputs outputs that can pulse
 * @param pulsingOutputsUsed of which are taken
 * @param pins its free pins one by one; empty where the sheet only counts
 * @param expanders what may be bought to have more of them
 * @param stage how it reads sensors
 */
public record Controller(
        int inputs,
        int inputsUsed,
        int outputs,
        int outputsUsed,
        int pulsingOutputs,
        int pulsingOutputsUsed,
        List<Pin> pins,
        List<PinExpander> expanders,
        InputStage stage) {
    /** Pulse rate, edge rate and frames a second of a pin of which only the number is known: our choice, enough for any signal. */
    private static final double ANY_RATE = 1_000;
    /** Middle of a usual digital input, V: common practice, no source. */
    private static final double THRESHOLD = 2.5;

    public Controller {
        pins = List.copyOf(pins);
        expanders = List.copyOf(expanders);
        Require.given("reading of the sensors", stage);
        if (inputsUsed > inputs || outputsUsed > outputs || pulsingOutputs > outputs) {
            throw new IllegalArgumentException("The controller has " + inputs + " inputs of which " + inputsUsed
                    + " are used, and " + outputs + " outputs of which " + outputsUsed + " are used and "
                    + pulsingOutputs + " can pulse; no part may exceed its whole.");
        }
        if (pulsingOutputsUsed > pulsingOutputs || pulsingOutputsUsed > outputsUsed) {
            throw new IllegalArgumentException("Of the controller's outputs " + pulsingOutputs + " can pulse, "
                    + outputsUsed + " are used and " + pulsingOutputsUsed
                    + " are said to be used of those that can pulse; no part may exceed its whole.");
        }
    }

    /**
     * Outputs that can pulse and are free.
     *
     * @return count
     */
    public int pulsingOutputsFree() {
        return Math.min(pulsingOutputs - pulsingOutputsUsed, outputs - outputsUsed);
    }

    /**
     * The free pins: those described, or, where the sheet only counts, as many inputs that read voltages and switches and as many
     * low-side outputs, and a data bus, which nearly every controller has.
     *
     * @param outputCurrent that one output can switch, A
     * @return the pins
     */
    public List<Pin> freePins(double outputCurrent) {
        if (!pins.isEmpty()) {
            return pins;
        }
        List<Pin> list = new ArrayList<>();
        for (int i = inputsUsed; i < inputs; i++) {
            list.add(new Pin("input " + (i + 1), Set.of(PinKind.ANALOGUE, PinKind.DIGITAL), 0, THRESHOLD, ANY_RATE, 0));
        }
        for (int i = outputsUsed; i < outputs; i++) {
            boolean pulses = i - outputsUsed < pulsingOutputsFree();
            list.add(Pin.output(
                    (pulses ? "pulsing output " : "output ") + (i + 1),
                    PinKind.LOW_SIDE,
                    outputCurrent,
                    pulses ? ANY_RATE : 0));
        }
        list.add(Pin.bus("data bus", ANY_RATE));
        return list;
    }
}
