package org.shotledger.kernel;

import com.google.gson.JsonObject;
import java.util.Map;
import java.util.Optional;
import org.shotledger.display.DisplaySink;
import org.shotledger.snippet.OutputRouter;

/** The person's side of the running cell: shows things there and asks questions. */
final class FrontEnd implements DisplaySink {

    private final IoPub iopub;
    private final Channel stdin;
    private final OutputRouter router;
    private volatile Message request;

    FrontEnd(IoPub iopub, Channel stdin, OutputRouter router) {
        this.iopub = iopub;
        this.stdin = stdin;
        this.router = router;
    }

    /** From now on things belong to this request's cell. */
    void serve(Message execute) {
        request = execute;
    }

    /** Things belong to this message while the task runs, and to the former one again afterwards. */
    void during(Message message, Runnable task) {
        Message former = request;
        request = message;
        try {
            task.run();
        } finally {
            request = former;
        }
    }

    /** The header of what is being answered. */
    JsonObject parent() {
        Message current = request;
        return current == null ? new JsonObject() : current.header();
    }

    @Override
    public void show(Map<String, Object> bundle, String id) {
        router.flush();
        iopub.display(bundle, id, false, parent());
    }

    @Override
    public void update(Map<String, Object> bundle, String id) {
        router.flush();
        iopub.display(bundle, id, true, parent());
    }

    @Override
    public void clear(boolean whenNextArrives) {
        router.flush();
        iopub.clear(whenNextArrives, parent());
    }

    @Override
    public String ask(String prompt, boolean hidden) {
        Message current = request;
        if (current == null || !current.flag("allow_stdin", false)) {
            throw new IllegalStateException("nobody can be asked \"" + prompt
                    + "\" here: this front end takes no input. Set the value in a cell instead.");
        }
        router.flush();
        dropStaleAnswers();
        JsonObject content = Json.one("prompt", prompt);
        content.addProperty("password", hidden);
        stdin.send(current.identities(), "input_request", current.header(), content);
        return answer();
    }

    /** Answers to questions that were given up. */
    private void dropStaleAnswers() {
        Optional<Message> stale = stdin.receive();
        while (stale.isPresent()) {
            stale = stdin.receive();
        }
    }

    private String answer() {
        while (!Thread.currentThread().isInterrupted()) {
            Optional<Message> reply = stdin.receive();
            if (reply.isPresent() && reply.get().type().equals("input_reply")) {
                return reply.get().text("value", "");
            }
        }
        throw new IllegalStateException("the question was given up");
    }
}
