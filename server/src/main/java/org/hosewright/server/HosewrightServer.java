package org.hosewright.server;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import java.net.URI;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.server.api.Api;
import org.hosewright.server.api.Failures;
import org.hosewright.server.guard.Caller;
import org.hosewright.server.guard.OwnHost;
import org.hosewright.server.guard.SafeHeaders;
import org.hosewright.server.guard.SameOrigin;
import org.hosewright.server.page.PageRoutes;
import org.hosewright.server.setup.Listening;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.web.PageFiles;
import org.hosewright.web.Shell;

/** The web application. Without accounts it listens on the loopback address only. */
public final class HosewrightServer implements AutoCloseable {
    private final Javalin javalin;
    private final Listening listening;

    private HosewrightServer(Javalin javalin, Listening listening) {
        this.javalin = javalin;
        this.listening = listening;
    }

    /** Starts to listen.
     *
     * @param ports the company's record; it stays the caller's to close
     * @throws InvalidInput other machines shall reach it, and nobody has an account
     */
    public static HosewrightServer start(ServerConfig config, Ports ports) {
        requireAccounts(config.listening(), ports);
        var files = PageFiles.load();
        var shell = new Shell(files);
        var javalin = Javalin.create(server -> {
            plain(server);
            Connector.addTo(server, config);
            new PageRoutes(files, shell).addTo(server);
            new Api(config, ports).addTo(server);
        });
        guard(javalin, config.listening(), shell);
        Failures.addTo(javalin);
        return new HosewrightServer(javalin.start(), config.listening());
    }

    private static void requireAccounts(Listening listening, Ports ports) {
        if (!(listening instanceof Listening.ThisMachine) && !ports.people().isAnyone()) {
            throw new InvalidInput(
                    "--lan",
                    "no accounts",
                    "accounts first: ./hosewright people add, or the page people on this machine",
                    "");
        }
    }

    private static void guard(Javalin javalin, Listening listening, Shell shell) {
        var headers = new SafeHeaders(shell.importMapSource(), listening.isSecure());
        var caller = new Caller(listening);
        var ownHost = new OwnHost(caller);
        var sameOrigin = new SameOrigin(caller);
        javalin.before(request -> {
            headers.put(request);
            ownHost.check(request);
            sameOrigin.check(request);
        });
    }

    private static void plain(JavalinConfig server) {
        server.showJavalinBanner = false;
        server.startupWatcherEnabled = false;
        server.useVirtualThreads = false;
        server.http.disableCompression();
        server.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    }

    /** Where a browser on this machine finds it. */
    public URI address() {
        if (listening instanceof Listening.BehindProxy proxy) {
            return proxy.publicAddress();
        }
        String scheme = listening instanceof Listening.Lan ? "https" : "http";
        return URI.create(scheme + "://127.0.0.1:" + javalin.port() + "/");
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
