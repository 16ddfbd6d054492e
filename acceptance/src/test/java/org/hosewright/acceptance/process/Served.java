package org.hosewright.acceptance.process;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Pattern;

/** The shipped jar serving a data folder, until it is closed or killed. */
final class Served implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final HttpClient client = HttpClient.newHttpClient();
    private final Process process;
    private final URI address;

    private Served(Process process, URI address) {
        this.process = process;
        this.address = address;
    }

    static Served demo(Path folder) throws IOException, InterruptedException {
        var out = Files.createTempFile(folder, "serve", ".txt");
        var err = Files.createTempFile(folder, "serve", ".err");
        var process = Hosewright.start(folder, out, err, "serve", "--demo", "--data", "data", "--port", "0");
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < end && process.isAlive()) {
            var found = ADDRESS.matcher(Files.readString(out));
            if (found.find()) {
                return new Served(process, URI.create(found.group()));
            }
            Thread.sleep(50);
        }
        process.destroyForcibly();
        throw new IOException("did not start: " + Files.readString(out) + Files.readString(err));
    }

    int port() {
        return address.getPort();
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(address.resolve(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    void kill() {
        process.destroyForcibly().onExit().join();
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
