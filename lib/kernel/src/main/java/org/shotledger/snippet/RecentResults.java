package org.shotledger.snippet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.VarSnippet;

/** Keeps the newest unnamed results ({@code $3}) and lets go of older ones, which would pile up unseen. */
final class RecentResults {

    /** How many unnamed results stay usable. */
    static final int KEPT = 3;

    private final Deque<VarSnippet> results = new ArrayDeque<>();
    private final JShell shell;
    private final CellControl control;

    RecentResults(JShell shell, CellControl control) {
        this.shell = shell;
        this.control = control;
    }

    void add(Snippet snippet) {
        if (snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
            results.addLast((VarSnippet) snippet);
            dropOld();
        }
    }

    private void dropOld() {
        int surplus = results.size() - KEPT;
        Iterator<VarSnippet> oldest = results.iterator();
        while (surplus-- > 0 && oldest.hasNext()) {
            VarSnippet result = oldest.next();
            if (shell.sourceCodeAnalysis().dependents(result).isEmpty()) {
                oldest.remove();
                control.variables().reset(result.name());
                shell.drop(result);
            }
        }
    }
}
