package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyStore;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.person.PersonDraft;
import org.hosewright.server.password.Passwords;
import org.hosewright.server.setup.Certificate;
import org.hosewright.server.setup.Listening;
import org.hosewright.server.setup.OwnCertificate;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server on a station's network: TLS by its own certificate, and behind a proxy. */
final class LanTest {
    private static final String PASSWORD = "quiet lantern brindle ford";
    private static final Set<String> NAMES = Set.of("localhost", "127.0.0.1");

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder, Running.CLOCK);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void withoutAccountsRefused() {
        assertThatThrownBy(() -> start(lan())).isInstanceOf(InvalidInput.class).hasMessageContaining("accounts first");
    }

    @Test
    void sessionCookieGoesByTlsAloneHolds() throws Exception {
        owner();
        try (HosewrightServer server = start(lan())) {
            String answer = ask(
                    secure(server, "TLSv1.3"), "127.0.0.1:" + server.address().getPort(), "");
            assertThat(answer)
                    .contains("200 OK")
                    .contains("Set-Cookie: __Host-hosewright=")
                    .contains("Secure")
                    .contains("HttpOnly")
                    .contains("SameSite=Strict")
                    .contains("Max-Age=43200")
                    .contains("Cache-Control: no-store")
                    .contains("Strict-Transport-Security: max-age=31536000");
        }
    }

    @Test
    void anotherHostRefused() throws Exception {
        owner();
        try (HosewrightServer server = start(lan())) {
            int port = server.address().getPort();
            assertThat(ask(secure(server, "TLSv1.3"), "evil.example:" + port, ""))
                    .contains(" 421 ");
            assertThat(ask(secure(server, "TLSv1.3"), "station-7.example:" + port, ""))
                    .contains("200 OK");
        }
    }

    @Test
    void oldProtocolRefused() throws Exception {
        owner();
        try (HosewrightServer server = start(lan())) {
            assertThatThrownBy(() -> secure(server, "TLSv1.1").startHandshake())
                    .isInstanceOf(SSLHandshakeException.class);
            assertThat(ask(
                            secure(server, "TLSv1.2"),
                            "127.0.0.1:" + server.address().getPort(),
                            ""))
                    .contains("200 OK");
        }
    }

    @Test
    void proxysAddressAndOriginHold() throws Exception {
        owner();
        try (HosewrightServer server = start(new Listening.BehindProxy(URI.create("https://hosewright.example")))) {
            String near = ask(plain(server), "127.0.0.1:" + port(server), "");
            assertThat(near).as("past the proxy").contains(" 421 ");
            String from = "Origin: https://hosewright.example\r\nX-Forwarded-For: 192.0.2.7\r\n";
            assertThat(ask(plain(server), "hosewright.example", from))
                    .contains("200 OK")
                    .contains("__Host-hosewright=");
            String foreign = "Origin: http://hosewright.example\r\n";
            assertThat(ask(plain(server), "hosewright.example", foreign)).contains(" 403 ");
        }
    }

    @Test
    void certificateStaysUntilANameIsMissingHolds() throws Exception {
        var own = new OwnCertificate(folder);
        own.forNames(NAMES, Running.CLOCK.instant());
        String first = own.fingerprint();
        own.forNames(NAMES, Running.CLOCK.instant().plus(Duration.ofDays(300)));
        assertThat(own.fingerprint()).isEqualTo(first).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
        own.forNames(Set.of("station-7.example"), Running.CLOCK.instant());
        assertThat(own.fingerprint()).isNotEqualTo(first);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("tls.p12"))))
                .isEqualTo("rw-------");
    }

    private void owner() {
        store.people()
                .add(
                        PersonDraft.of("A. Fenn", EnumSet.allOf(Hat.class)),
                        new Passwords().secret(PASSWORD, "A. Fenn", false),
                        new Act("A. Fenn", ""));
    }

    private Listening lan() {
        Certificate certificate = new OwnCertificate(folder).forNames(NAMES, Running.CLOCK.instant());
        return new Listening.Lan(certificate, Set.of("station-7.example"));
    }

    private HosewrightServer start(Listening listening) {
        var ports = Running.ports(store, folder);
        return HosewrightServer.start(new ServerConfig(0, Running.CLOCK, true, Optional.empty(), listening), ports);
    }

    /** Signs in over a socket; the JDK's client would not send another host. */
    private static String ask(Socket socket, String host, String headers) throws IOException {
        try (socket) {
            String body = "{\"name\":\"A. Fenn\",\"password\":\"" + PASSWORD + "\"}";
            String request = "POST /api/v1/session HTTP/1.1\r\nHost: " + host
                    + "\r\nContent-Type: application/json\r\nConnection: close\r\n" + headers + "Content-Length: "
                    + body.length() + "\r\n\r\n" + body;
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private SSLSocket secure(HosewrightServer server, String protocol) throws Exception {
        KeyStore trusted = KeyStore.getInstance(folder.resolve("tls.p12").toFile(), "hosewright".toCharArray());
        KeyStore known = KeyStore.getInstance("PKCS12");
        known.load(null, null);
        known.setCertificateEntry("station", trusted.getCertificate("hosewright"));
        var trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(known);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        var socket = (SSLSocket) context.getSocketFactory()
                .createSocket(InetAddress.getLoopbackAddress(), server.address().getPort());
        socket.setEnabledProtocols(new String[] {protocol});
        return socket;
    }

    private static Socket plain(HosewrightServer server) throws IOException {
        return new Socket(InetAddress.getLoopbackAddress(), port(server));
    }

    private static int port(HosewrightServer server) {
        return server.port();
    }
}
