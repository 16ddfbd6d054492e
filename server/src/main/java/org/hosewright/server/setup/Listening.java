package org.hosewright.server.setup;

import java.net.URI;
import java.util.Set;

/** From where the server is reached. */
public sealed interface Listening {
    /** The address to listen on: every one of the machine's, where others shall reach it. */
    default String interfaceAddress() {
        return "0.0.0.0";
    }

    /** True where the browser reaches it by TLS, as every other machine does. */
    default boolean isSecure() {
        return true;
    }

    /** Reached from this machine alone. */
    record ThisMachine() implements Listening {
        @Override
        public String interfaceAddress() {
            return "127.0.0.1";
        }

        @Override
        public boolean isSecure() {
            return false;
        }
    }

    /** Reached over the station's network, by TLS.
     *
     * @param certificate with its private key
     * @param names by which the machine is called there, in small letters, besides its numeric addresses
     */
    record Lan(Certificate certificate, Set<String> names) implements Listening {
        public Lan {
            names = Set.copyOf(names);
        }
    }

    /** Behind a proxy that does the TLS, as whoever started the server states.
     *
     * @param publicAddress where browsers reach the proxy, as in "https://hosewright.example"
     */
    record BehindProxy(URI publicAddress) implements Listening {}
}
