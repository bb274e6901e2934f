package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A question is answered once; questions that differ in kind or figure have answers of their own. */
class KnownTest {
    private record Square(double of) {}

    private record Cube(double of) {}

    private final Known known = new Known();
    private final List<Record> worked = new ArrayList<>();

    private double square(double x) {
        Square question = new Square(x);
        return known.of(question, () -> {
            worked.add(question);
            return x * x;
        });
    }

    @Test
    void equalQuestionsAreWorkedOutOnce() {
        assertEquals(9, square(3));
        assertEquals(9, square(3));
        assertEquals(16, square(4));
        assertEquals(27.0, known.of(new Cube(3), () -> 27.0));
        assertEquals(9, square(3));
        assertEquals(List.of(new Square(3), new Square(4)), worked);
    }

    @Test
    void theAnswerIsTheVeryObject() {
        List<Double> answer = List.of(1.0);
        assertSame(answer, known.of(new Square(1), () -> answer));
        assertSame(answer, known.of(new Square(1), () -> List.of(2.0)));
    }

    @Test
    void ofManyAnswersThoseNotAskedForLongestAreGivenUp() {
        square(-1);
        square(-2);
        for (int i = 0; i < 2047; i++) {
            square(i);
            square(-2);
        }
        worked.clear();
        square(-2);
        assertEquals(List.of(), worked);
        square(-1);
        assertEquals(List.of(new Square(-1)), worked);
    }

    @Test
    void whatWasAskedDoesNotMakeAPlanAnother() {
        square(3);
        assertEquals(new Known(), known);
        assertEquals(new Known().hashCode(), known.hashCode());
    }
}
