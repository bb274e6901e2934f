package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SignatureTest {

    @Test
    void signaturesAreRead() {
        assertEquals(
                new Signature("Budget", "plan", List.of("Build", "Wish")),
                Signature.of("Budget Budget.plan(Build build, Wish wish) throws WishException")
                        .orElseThrow());
        assertEquals(
                new Signature("Ledger.Entry", "inputs", List.of("List", "double[]")),
                Signature.of("Map<String,List<Double>> Ledger.Entry.<T>inputs(List<Map<String,T>> a, double... b)")
                        .orElseThrow());
        assertEquals(
                new Signature("Wish", "<init>", List.of("double")),
                Signature.of("Wish(double target)").orElseThrow());
        assertEquals(
                new Signature("org.x.Budget", "", null),
                Signature.of("org.x.Budget(Build build, double y)").orElseThrow());
        assertEquals(
                new Signature("org.x.Budget", "", null),
                Signature.of("budget:org.x.Budget").orElseThrow());
        assertEquals(
                new Signature("Limits", "TIGHT", null),
                Signature.of("Limits.TIGHT:double").orElseThrow());
    }
}
