package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import org.hosewright.hydraulics.error.InvalidInput;

/** An error as it is sent: a problem document (RFC 9457) whose detail is the sentence that a person reads. */
final class Problem {
    private Problem() {}

    static void send(Context answer, int status, String title, String detail) {
        send(answer, status, document(status, title, detail));
    }

    static void send(Context answer, int status, String title, InvalidInput error) {
        ObjectNode problem = document(status, title, String.valueOf(error.getMessage()));
        problem.put("what", error.what());
        problem.put("value", error.value());
        problem.put("allowed", error.allowed());
        problem.put("where", error.where());
        send(answer, status, problem);
    }

    /** Somebody was faster: says so, with what stands now. */
    static void conflict(Context answer, String detail, ObjectNode stored) {
        ObjectNode problem = document(409, "Changed in between", detail);
        problem.set("stored", stored);
        send(answer, 409, problem);
    }

    private static ObjectNode document(int status, String title, String detail) {
        ObjectNode problem = JsonNodeFactory.instance.objectNode();
        problem.put("type", "about:blank");
        problem.put("title", title);
        problem.put("status", status);
        problem.put("detail", detail);
        return problem;
    }

    private static void send(Context answer, int status, ObjectNode problem) {
        answer.status(status).contentType("application/problem+json").result(problem.toString());
    }
}
