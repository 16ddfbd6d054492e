package org.hosewright.server;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.hosewright.files.exchange.KeyFile;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.store.Store;

/** A server on a store of its own, and a client that speaks to it as a program on this machine would. */
final class Running implements AutoCloseable {
    /** The summer after the invented company's night: its hose tests are in date. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);

    private final Path folder;
    private final Store store;
    private final HosewrightServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    private Running(Path folder, Store store, HosewrightServer server) {
        this.folder = folder;
        this.store = store;
        this.server = server;
    }

    static Running empty(Path folder) {
        Store store = Store.open(folder, CLOCK);
        Optional<Path> terrain = Optional.of(folder.resolve("terrain"));
        return new Running(
                folder, store, HosewrightServer.start(new ServerConfig(0, CLOCK, true, terrain), ports(store, folder)));
    }

    static Running demo(Path folder) {
        Running running = empty(folder);
        Demo.fill(running.ports(), running.store.where());
        return running;
    }

    /** The record of a store, with the key that lies in a folder. */
    static Ports ports(Store store, Path folder) {
        return new Ports(
                store.kits(),
                store.drills(),
                store.orders(),
                store.leaves(),
                store.people(),
                store.history(),
                new KeyFile(folder));
    }

    URI address() {
        return server.address();
    }

    Ports ports() {
        return ports(store, folder);
    }

    /** What is answered at a whole address. */
    static HttpResponse<String> get(URI address) {
        try {
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(address().resolve(path)).GET());
    }

    HttpResponse<String> post(String path, String json) {
        return send(HttpRequest.newBuilder(address().resolve(path))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(json)));
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** The id of the only night. */
    String night() {
        return ports().drills().listDrills().get(0).id();
    }

    @Override
    public void close() {
        server.close();
        store.close();
    }
}
