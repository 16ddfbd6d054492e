package org.hosewright.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.hosewright.server.Demo;
import org.hosewright.server.HosewrightServer;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the web application until it is stopped. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "The web application, for a browser on this machine.")
public final class Serve implements Callable<Integer> {
    @Mixin
    private RecordPlace place;

    @Option(names = "--demo", description = "Fill an empty record with the invented company.")
    private boolean demo;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "${env:HOSEWRIGHT_PORT:-8175}",
            description = "Port on the loopback address; 0 takes a free one. Else HOSEWRIGHT_PORT, else 8175.")
    private int port;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        var stop = new Stop();
        Clock clock = Clock.systemUTC();
        Path folder = place.folder(demo);
        try (var store = Store.open(folder, clock)) {
            var ports = new Ports(store.kits(), store.drills(), store.orders(), store.leaves(), store.history());
            if (demo) {
                Demo.fill(ports, store.where());
            }
            boolean invented = Demo.isIn(ports);
            try (var server = HosewrightServer.start(new ServerConfig(port, clock, invented), ports)) {
                tell(server, store.where(), invented);
                stop.await();
            }
        } finally {
            stop.done();
        }
        return Exit.DONE.status();
    }

    private void tell(HosewrightServer server, String where, boolean invented) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("Open " + server.address() + " in a browser on this machine.");
        out.println("The record is kept in " + where + ".");
        if (invented) {
            out.println("It is an invented company's, for showing; every sheet says DEMO.");
        }
        out.println("Control-C stops; nothing is lost.");
        out.flush();
    }
}
