package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A day of editing, many times over: cells declare, declare again, change types, capture, import, break and mend in random order, and
 * after each of them every name must be what a model of the notebook says, or have been named in a note.
 *
 * <p>{@code -Dshotledger.edits=2000} runs as many sequences; the usual build runs a few.
 */
class EditSequencesTest {

    private static final int SEQUENCES = Integer.getInteger("shotledger.edits", 25);
    private static final int CELLS = 10;
    private static final long SEED = Long.getLong("shotledger.seed", 20_260_101L);

    @Test
    void everyNameIsWhatTheCellsSay() {
        int cells = 0;
        SessionOptions options = SessionOptions.of(List.of("import java.util.*;"));
        for (int sequence = 0; sequence < SEQUENCES; sequence++) {
            Random random = new Random(SEED + sequence);
            try (JavaSession session = new JavaSession(options)) {
                EditModel model = new EditModel(session, random, "sequence " + sequence);
                for (int cell = 0; cell < CELLS; cell++) {
                    model.step();
                }
                cells += model.cellsRun();
            }
        }
        assertEquals(SEQUENCES * CELLS, cells);
    }
}
