package org.hosewright.server.setup;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** What a server is started with.
 *
 * @param port where it listens; 0 takes a free one
 * @param clock tells the time of entries
 * @param demo true where the company is the invented one, so that sheets say DEMO
 * @param terrain folder with terrain files, from which walks take their rise, where there is one
 * @param listening from where it is reached
 */
public record ServerConfig(int port, Clock clock, boolean demo, Optional<Path> terrain, Listening listening) {
    /** A server for this machine alone. */
    public ServerConfig(int port, Clock clock, boolean demo, Optional<Path> terrain) {
        this(port, clock, demo, terrain, new Listening.ThisMachine());
    }

    /** A server for this machine alone, without terrain files. */
    public ServerConfig(int port, Clock clock, boolean demo) {
        this(port, clock, demo, Optional.empty());
    }
}
