package org.hosewright.server.api;

import org.hosewright.server.guard.Refusal;

/** The refusals that more than one route makes. */
final class Refused {
    private Refused() {}

    static Refusal unknown(String what) {
        return new Refusal(404, "No such " + what, "There is no such " + what + "; look at the list again.");
    }
}
