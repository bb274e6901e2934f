package org.shotledger.snippet;

/**
 * Thrown where a cell calls {@link System#exit}: it ends the cell and not the session. Calls of a cell's code are led here; public
 * because that code is outside this package.
 */
public final class ExitRequest extends Error {

    private static final long serialVersionUID = 1;

    private ExitRequest(int status) {
        super("System.exit(" + status + ") ended this cell; the session and what it holds are still there.");
    }

    /**
     * Takes the place of {@link System#exit}.
     *
     * @param status the exit status asked for, named in the message
     * @throws ExitRequest always
     */
    @SuppressWarnings("DoNotCallSuggester") // cells do call it, in place of what they name
    public static void exit(int status) {
        throw new ExitRequest(status);
    }
}
