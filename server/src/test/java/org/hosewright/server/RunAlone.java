package org.hosewright.server;

import java.nio.file.Path;
import java.time.Clock;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.store.Store;

/** Runs the server by itself, to work on the pages: a folder for the store, a port. */
public final class RunAlone {
    private RunAlone() {}

    public static void main(String[] arguments) {
        Path folder = Path.of(arguments[0]);
        var store = Store.open(folder);
        var ports = Running.ports(store, folder);
        var config = new ServerConfig(Integer.parseInt(arguments[1]), Clock.systemUTC(), true);
        Demo.fill(ports, store.where());
        System.out.println(HosewrightServer.start(config, ports).address());
    }
}
