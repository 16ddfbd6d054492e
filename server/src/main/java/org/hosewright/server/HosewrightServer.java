package org.hosewright.server;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import java.net.URI;
import org.hosewright.server.api.Api;
import org.hosewright.server.api.Failures;
import org.hosewright.server.guard.OwnHost;
import org.hosewright.server.guard.SafeHeaders;
import org.hosewright.server.guard.SameOrigin;
import org.hosewright.server.page.PageRoutes;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.web.PageFiles;
import org.hosewright.web.Shell;

/** The web application, listening on the loopback address only. */
public final class HosewrightServer implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";

    private final Javalin javalin;

    private HosewrightServer(Javalin javalin) {
        this.javalin = javalin;
    }

    /** Starts to listen.
     *
     * @param ports the company's record; it stays the caller's to close
     */
    public static HosewrightServer start(ServerConfig config, Ports ports) {
        var files = PageFiles.load();
        var shell = new Shell(files);
        var headers = new SafeHeaders(shell.importMapSource());
        var javalin = Javalin.create(server -> {
            plain(server);
            new PageRoutes(files, shell).addTo(server);
            new Api(config, ports).addTo(server);
        });
        javalin.before(request -> {
            headers.put(request);
            OwnHost.check(request);
            SameOrigin.check(request);
        });
        Failures.addTo(javalin);
        return new HosewrightServer(javalin.start(LOOPBACK, config.port()));
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
        return URI.create("http://" + LOOPBACK + ":" + javalin.port() + "/");
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
