package org.hosewright.acceptance.browser;

import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.hosewright.files.exchange.KeyFile;
import org.hosewright.server.Demo;
import org.hosewright.server.HosewrightServer;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.store.Store;

/** The program as it runs on a station's machine, on a folder of its own; it can be stopped and started again. */
final class Station implements AutoCloseable {
    /** The summer after the invented company's night: its hose tests are in date. */
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);

    private final Path folder;
    private final boolean demo;
    private Store store;
    private HosewrightServer server;
    private URI address;

    private Station(Path folder, boolean demo) {
        this.folder = folder;
        this.demo = demo;
        start(0);
    }

    static Station empty(Path folder) {
        return new Station(folder, true);
    }

    /** Empty, and a company's own: its sheets are for use. */
    static Station company(Path folder) {
        return new Station(folder, false);
    }

    /** With the invented company in it. */
    static Station demo(Path folder) {
        Station station = new Station(folder, true);
        Demo.fill(station.ports(), "the test's folder");
        return station;
    }

    private void start(int port) {
        store = Store.open(folder, CLOCK);
        server = HosewrightServer.start(new ServerConfig(port, CLOCK, demo), ports());
        address = server.address();
    }

    Ports ports() {
        return new Ports(
                store.kits(),
                store.drills(),
                store.orders(),
                store.leaves(),
                store.people(),
                store.history(),
                new KeyFile(folder));
    }

    /** The id of the first night. */
    String night() {
        return ports().drills().listDrills().get(0).id();
    }

    /** Where a page is. */
    String at(String path) {
        return address.resolve(path).toString();
    }

    void stop() {
        server.close();
        store.close();
    }

    /** Starts again at the same address. */
    void startAgain() {
        start(address.getPort());
    }

    @Override
    public void close() {
        stop();
    }
}
