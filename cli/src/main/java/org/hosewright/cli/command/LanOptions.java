package org.hosewright.cli.command;

import java.io.PrintWriter;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.server.setup.Certificate;
import org.hosewright.server.setup.Listening;
import org.hosewright.server.setup.OwnCertificate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whether other machines reach the server, and how what they say to it is kept from others' ears. */
final class LanOptions {
    private static final String PASSWORD = "HOSEWRIGHT_TLS_PASSWORD";

    @Option(
            names = "--lan",
            description = "Let other machines of the station's network in, by TLS. Refused until people have accounts.")
    private boolean lan;

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "With --lan: a name by which this machine is called there, besides its own. May be repeated.")
    private List<String> named = List.of();

    @Option(
            names = "--tls",
            paramLabel = "FILE",
            description = "With --lan: certificate and key (PKCS #12), its password in " + PASSWORD
                    + ". Else Hosewright makes its own.")
    private @Nullable Path file;

    @Option(
            names = "--proxy",
            paramLabel = "URL",
            description = "With --lan: states that a proxy, reached at this https address, does the TLS; between it and"
                    + " this program nothing is kept from others' ears.")
    private @Nullable URI proxy;

    private @Nullable String fingerprint;

    LanOptions() {}

    /** From where the server shall be reached.
     *
     * @param folder that keeps a certificate of Hosewright's own
     */
    Listening listening(Path folder, Instant now) {
        if (!lan) {
            if (!named.isEmpty() || file != null || proxy != null) {
                throw new InvalidInput("--name, --tls and --proxy", "without --lan", "together with --lan", "");
            }
            return new Listening.ThisMachine();
        }
        return proxy == null ? byTls(folder, now) : behind(proxy);
    }

    private static Listening behind(URI address) {
        if (!"https".equals(address.getScheme()) || address.getAuthority() == null) {
            throw new InvalidInput("--proxy", address.toString(), "an address such as https://hosewright.example", "");
        }
        return new Listening.BehindProxy(
                URI.create("https://" + address.getAuthority().toLowerCase(Locale.ROOT)));
    }

    private Listening byTls(Path folder, Instant now) {
        Set<String> names = names();
        if (file != null) {
            if (!Files.isReadable(file)) {
                throw new InvalidInput("--tls", file.toString(), "a PKCS #12 file that can be read", "");
            }
            String password = Optional.ofNullable(System.getenv(PASSWORD)).orElse("");
            return new Listening.Lan(new Certificate(file, password), names);
        }
        var own = new OwnCertificate(folder);
        var all = new LinkedHashSet<>(names);
        all.addAll(addresses());
        all.add("127.0.0.1");
        Certificate certificate = own.forNames(all, now);
        fingerprint = own.fingerprint();
        return new Listening.Lan(certificate, names);
    }

    /** Says where other machines find the server. */
    void tell(PrintWriter out, int port) {
        if (!lan || proxy != null) {
            return;
        }
        for (String address : addresses()) {
            out.println("From another machine of this network: https://" + address + ":" + port + "/");
        }
        if (fingerprint != null) {
            out.println("A browser asks once about the certificate. Its SHA-256 fingerprint must be");
            out.println("  " + fingerprint);
        }
    }

    private Set<String> names() {
        var names = new LinkedHashSet<String>(List.of("localhost"));
        named.forEach(name -> names.add(name.strip().toLowerCase(Locale.ROOT)));
        try {
            String host = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            names.add(host);
            names.add(host + ".local");
        } catch (UnknownHostException e) {
            // A machine that does not know its own name is reached by its addresses.
            return names;
        }
        return names;
    }

    private static List<String> addresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                    .map(InetAddress::getHostAddress)
                    .sorted()
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }
}
