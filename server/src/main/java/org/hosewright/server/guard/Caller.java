package org.hosewright.server.guard;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hosewright.server.setup.Listening;

/** What a request says about how it came here: by which name, from which address, from which page. */
public final class Caller {
    /** Names by which every machine calls itself. */
    private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "[::1]");

    private final Listening listening;

    public Caller(Listening listening) {
        this.listening = listening;
    }

    /** The address of the one who asks. Behind a proxy it is the last one that the proxy added: what stands before it,
     * anybody may have made up.
     */
    public String address(Context request) {
        String near = request.req().getRemoteAddr();
        if (!(listening instanceof Listening.BehindProxy)) {
            return near;
        }
        String said = header(request, "X-Forwarded-For");
        String last = said.substring(said.lastIndexOf(',') + 1).strip();
        return last.isEmpty() ? near : last;
    }

    /** True where the request names this server as the one it asks. */
    boolean asksThisHost(Context request) {
        String host = header(request, "Host").toLowerCase(Locale.ROOT);
        if (listening instanceof Listening.BehindProxy proxy) {
            return proxy.publicAddress().getAuthority().equals(host);
        }
        String port = ":" + request.req().getLocalPort();
        String name = host.endsWith(port) ? host.substring(0, host.length() - port.length()) : host;
        boolean known = listening instanceof Listening.Lan lan
                && (lan.names().contains(name) || name.equals(request.req().getLocalAddr()));
        return known || LOOPBACK.contains(name);
    }

    /** The origin of this server's own pages, as a browser reports it. */
    String origin(Context request) {
        return (listening.isSecure() ? "https://" : "http://") + header(request, "Host");
    }

    /** Name of the cookie that bears a session; a browser takes the first only by TLS, for this host alone. */
    public String cookie() {
        return listening.isSecure() ? "__Host-hosewright" : "hosewright";
    }

    public boolean isSecure() {
        return listening.isSecure();
    }

    private static String header(Context request, String name) {
        return Optional.ofNullable(request.header(name)).orElse("");
    }
}
