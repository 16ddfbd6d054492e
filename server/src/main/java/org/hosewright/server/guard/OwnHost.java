package org.hosewright.server.guard;

import io.javalin.http.Context;
import java.util.Set;

/** Refuses requests that name another host: a web site whose name was bent to this machine's own address. */
public final class OwnHost {
    private static final Set<String> NAMES = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final int MISDIRECTED = 421;

    private OwnHost() {}

    public static void check(Context request) {
        String host = request.header("Host");
        String named = host == null ? "" : host;
        String expectedPort = ":" + request.req().getLocalPort();
        String name = named.endsWith(expectedPort) ? named.substring(0, named.length() - expectedPort.length()) : named;
        if (!NAMES.contains(name)) {
            throw new Refusal(
                    MISDIRECTED,
                    "Another host was asked for",
                    "This program answers only at its own address; open http://127.0.0.1" + expectedPort + "/.");
        }
    }
}
