package org.hosewright.server.guard;

import io.javalin.http.Context;

/** Refuses requests that name another host: a web site whose name was bent to this machine's own address. */
public final class OwnHost {
    private static final int MISDIRECTED = 421;

    private final Caller caller;

    public OwnHost(Caller caller) {
        this.caller = caller;
    }

    public void check(Context request) {
        if (!caller.asksThisHost(request)) {
            throw new Refusal(
                    MISDIRECTED,
                    "Another host was asked for",
                    "This program answers only at its own address, as it was said when it started (on the machine"
                            + " itself at 127.0.0.1, port "
                            + request.req().getLocalPort() + ").");
        }
    }
}
