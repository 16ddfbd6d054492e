package org.hosewright.server;

import io.javalin.config.JavalinConfig;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.hosewright.server.setup.Certificate;
import org.hosewright.server.setup.Listening;
import org.hosewright.server.setup.ServerConfig;

/** The socket that the server listens on: plain on this machine and behind a proxy, TLS on a network. */
final class Connector {
    private static final String[] PROTOCOLS = {"TLSv1.3", "TLSv1.2"};

    private Connector() {}

    static void addTo(JavalinConfig server, ServerConfig config) {
        server.jetty.addConnector((jetty, http) -> {
            ServerConnector connector = config.listening() instanceof Listening.Lan lan
                    ? secure(jetty, http, lan.certificate())
                    : new ServerConnector(jetty, new HttpConnectionFactory(http));
            connector.setHost(config.listening().interfaceAddress());
            connector.setPort(config.port());
            return connector;
        });
    }

    private static ServerConnector secure(Server jetty, HttpConfiguration plain, Certificate certificate) {
        var tls = new SslContextFactory.Server();
        tls.setKeyStorePath(certificate.file().toString());
        tls.setKeyStorePassword(certificate.password());
        tls.setIncludeProtocols(PROTOCOLS);
        tls.setRenegotiationAllowed(false);
        var http = new HttpConfiguration(plain);
        // The host that is asked for is checked with each request; a numeric address has no name to be checked here.
        http.addCustomizer(new SecureRequestCustomizer(false));
        ConnectionFactory inside = new HttpConnectionFactory(http);
        return new ServerConnector(jetty, new SslConnectionFactory(tls, "http/1.1"), inside);
    }
}
