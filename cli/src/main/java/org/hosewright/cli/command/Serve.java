package org.hosewright.cli.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.server.Demo;
import org.hosewright.server.HosewrightServer;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the web application until it is stopped. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "The web application, for a browser on this machine; with --lan for the station's network.")
public final class Serve implements Callable<Integer> {
    @Mixin
    private RecordPlace place;

    @Option(names = "--demo", description = "Fill an empty record with the invented company.")
    private boolean demo;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "${env:HOSEWRIGHT_PORT:-8175}",
            description = "Port to listen on; 0 takes a free one. Else HOSEWRIGHT_PORT, else 8175.")
    private int port;

    @Option(
            names = "--terrain",
            paramLabel = "DIR",
            description = "Folder with terrain files (N44W073.hgt, may be zipped): walks without a barometer take their"
                    + " rise from them. Else the folder terrain beside the record.")
    private @Nullable Path terrain;

    @Mixin
    private LanOptions lan;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        var stop = new Stop();
        Clock clock = Clock.systemUTC();
        try (var store = place.open(demo, clock)) {
            var ports = RecordPlace.ports(store, place.folder(demo));
            if (demo) {
                Demo.fill(ports, store.where());
            }
            boolean invented = Demo.isIn(ports);
            try (var server = HosewrightServer.start(config(clock, invented), ports)) {
                tell(server, ports, store.where(), invented);
                stop.await();
            }
        } finally {
            stop.done();
        }
        return Exit.DONE.status();
    }

    private ServerConfig config(Clock clock, boolean invented) {
        Path folder = place.folder(demo);
        return new ServerConfig(
                port, clock, invented, Optional.of(heights(folder)), lan.listening(folder, clock.instant()));
    }

    private Path heights(Path folder) {
        if (terrain != null && !Files.isDirectory(terrain)) {
            throw new InvalidInput("--terrain", terrain.toString(), "a folder that is there", "");
        }
        return terrain == null ? folder.resolve("terrain") : terrain;
    }

    private void tell(HosewrightServer server, Ports ports, String where, boolean invented) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("Open " + server.address() + " in a browser on this machine.");
        lan.tell(out, server.port());
        if (!ports.people().isAnyone() && !invented) {
            out.println("Nobody has an account yet: whoever sits here makes the first one, on the page people.");
        }
        out.println("The record is kept in " + where + ".");
        if (invented) {
            out.println("It is an invented company's, for showing; every sheet says DEMO.");
        }
        out.println("Control-C stops; nothing is lost.");
        out.flush();
    }
}
