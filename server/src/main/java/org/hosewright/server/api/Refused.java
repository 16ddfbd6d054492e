package org.hosewright.server.api;

import org.hosewright.server.guard.Refusal;

/** The refusals that more than one route makes. */
final class Refused {
    private Refused() {}

    static Refusal unknown(String what) {
        return new Refusal(404, "No such " + what, "There is no such " + what + "; look at the list again.");
    }

    static Refusal withoutAccounts() {
        return new Refusal(
                409, "Nobody has an account", "Nobody has an account yet; make the first one on the page people.");
    }

    static Refusal ownPassword() {
        return new Refusal(
                409, "Your own password", "Choose your own password under your name; it is asked for there.");
    }
}
