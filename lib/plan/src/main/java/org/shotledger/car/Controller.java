package org.shotledger.car;

/**
 * Channels of the engine controller.
 *
 * @param inputs analogue and digital inputs
 * @param inputsUsed of which are taken
 * @param outputs outputs
 * @param outputsUsed of which are taken
 * @param pulsingOutputs outputs that can pulse
 * @param pulsingOutputsUsed of which are taken
 */
public record Controller(
        int inputs, int inputsUsed, int outputs, int outputsUsed, int pulsingOutputs, int pulsingOutputsUsed) {

    /** Checks the counts against each other. */
    public Controller {
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
}
