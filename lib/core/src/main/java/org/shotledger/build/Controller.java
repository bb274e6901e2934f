package org.shotledger.build;

/**
 * Channels of the engine controller.
 *
 * @param inputs analogue and digital inputs
 * @param inputsUsed of which are taken
 * @param outputs outputs
 * @param outputsUsed of which are taken
 * @param pulsingOutputs outputs that can pulse
 */
public record Controller(int inputs, int inputsUsed, int outputs, int outputsUsed, int pulsingOutputs) {

    /** Checks the counts against each other. */
    public Controller {
        if (inputsUsed > inputs || outputsUsed > outputs || pulsingOutputs > outputs) {
            throw new IllegalArgumentException("The controller has " + inputs + " inputs of which " + inputsUsed
                    + " are used, and " + outputs + " outputs of which " + outputsUsed + " are used and "
                    + pulsingOutputs + " can pulse; no part may exceed its whole.");
        }
    }
}
