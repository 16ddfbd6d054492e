package org.hosewright.server.api;

import io.javalin.Javalin;
import io.javalin.http.HttpResponseException;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.server.guard.Refusal;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns every failure into a problem document. */
public final class Failures {
    private static final Logger LOG = LoggerFactory.getLogger(Failures.class);

    private Failures() {}

    public static void addTo(Javalin server) {
        server.exception(
                Refusal.class,
                (error, answer) ->
                        Problem.send(answer, error.status(), error.title(), String.valueOf(error.getMessage())));
        server.exception(InvalidInput.class, (error, answer) -> Problem.send(answer, 422, "Refused input", error));
        server.exception(
                NotConverged.class,
                (error, answer) -> Problem.send(answer, 409, "No answer", String.valueOf(error.getMessage())));
        server.exception(
                HttpResponseException.class,
                (error, answer) -> Problem.send(
                        answer, error.getStatus(), "Not served", "There is nothing at " + answer.path() + "."));
        server.exception(Exception.class, (error, answer) -> {
            LOG.error("A request failed: {} {}", answer.method(), answer.path(), error);
            Problem.send(
                    answer,
                    500,
                    "The program failed",
                    "Something went wrong inside the program; nothing was changed. The log says what.");
        });
    }
}
