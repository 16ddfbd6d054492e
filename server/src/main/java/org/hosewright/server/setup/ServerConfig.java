package org.hosewright.server.setup;

import java.time.Clock;

/** What a server is started with.
 *
 * @param port where it listens on the loopback address; 0 takes a free one
 * @param clock tells the time of entries
 * @param demo true where the company is the invented one, so that sheets say DEMO
 */
public record ServerConfig(int port, Clock clock, boolean demo) {}
