package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

class DownstreamPressureTest {
    private static final FluidState LIQUID = NitrousOxide.saturatedLiquid(293);

    private static final List<DoubleUnaryOperator> MODELS = List.of(
            p -> HomogeneousEquilibrium.massFlux(LIQUID, p),
            p -> Omega.massFlux(LIQUID, p),
            p -> Incompressible.massFlux(LIQUID.density(), LIQUID.pressure(), p),
            p -> IsentropicGas.massFlux(5e5, 9, 1.3, p));

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void isRefusedByEveryModelWhereItMeansNothing(double pressure) {
        for (DoubleUnaryOperator model : MODELS) {
            String message = assertThrows(IllegalArgumentException.class, () -> model.applyAsDouble(pressure))
                    .getMessage();
            assertEquals(
                    "downstream pressure is " + pressure + " Pa; it must be a finite number, zero or above.",
                    message.substring(message.indexOf(": ") + 2));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {6e6, 4e7})
    void givesNoFlowAboveThePressureUpstream(double pressure) {
        for (DoubleUnaryOperator model : MODELS) {
            assertEquals(0, model.applyAsDouble(pressure));
        }
    }
}
