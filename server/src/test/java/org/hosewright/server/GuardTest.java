package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Other hosts, other sites and long bodies are kept out; the policy lets in our own files only. */
final class GuardTest {
    private static final int FILE_LIMIT_bytes = 50_000_000;

    @TempDir
    private static Path folder;

    private static Running running;

    @BeforeAll
    static void start() {
        running = Running.demo(folder);
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    @Test
    void anotherHostRefused() throws IOException {
        assertThat(statusFor("evil.example:" + running.address().getPort())).isEqualTo(421);
        assertThat(statusFor("127.0.0.1:" + (running.address().getPort() + 1))).isEqualTo(421);
        assertThat(statusFor("localhost:" + running.address().getPort())).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({
        "Sec-Fetch-Site, cross-site",
        "Sec-Fetch-Site, same-site",
        "Origin, http://evil.example",
        "Origin, null",
    })
    void anotherSiteRefused(String header, String value) {
        HttpResponse<String> answer =
                running.send(HttpRequest.newBuilder(running.address().resolve("/api/v1/drills"))
                        .header("Content-Type", "application/json")
                        .header(header, value)
                        .POST(BodyPublishers.ofString(
                                "{\"who\":\"x\",\"name\":\"n\",\"date\":\"2026-05-01\",\"columns\":[]}")));
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(running.ports().drills().listDrills()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"text/plain", "application/x-www-form-urlencoded", "multipart/form-data"})
    void formsOfOtherSitesRefused(String type) {
        HttpResponse<String> answer =
                running.send(HttpRequest.newBuilder(running.address().resolve("/api/v1/drills"))
                        .header("Content-Type", type)
                        .POST(BodyPublishers.ofString("{}")));
        assertThat(answer.statusCode()).isEqualTo(415);
    }

    @Test
    void longBodyRefused() {
        HttpResponse<String> declared = running.post("/api/v1/kit", "x".repeat(FILE_LIMIT_bytes));
        assertThat(declared.statusCode()).isEqualTo(413);
        byte[] chunk = "x".repeat(FILE_LIMIT_bytes / 8).getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> chunked =
                running.send(HttpRequest.newBuilder(running.address().resolve("/api/v1/kit"))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(chunk))));
        assertThat(chunked.statusCode()).isEqualTo(413);
        assertThat(chunked.body()).contains("longer than 3 MB");
    }

    @Test
    void policyAllowsExactlyTheImportMapHolds() throws Exception {
        HttpResponse<String> page = running.get("/drill");
        String policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
        Matcher map = Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL)
                .matcher(page.body());
        assertThat(map.find()).isTrue();
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(map.group(1).getBytes(StandardCharsets.UTF_8));
        assertThat(policy)
                .contains("script-src 'self' 'sha256-" + Base64.getEncoder().encodeToString(digest) + "'")
                .contains("default-src 'none'")
                .doesNotContain("unsafe");
        assertThat(page.body()).doesNotContain(" style=").doesNotContain(" onclick=");
    }

    @Test
    void filesOutsideThePagesRefused() {
        for (String path :
                new String[] {"../Page.class", "libraries.properties", "%2e%2e/Page.class", "shared/none.js"}) {
            String edition = running.get("/").body().replaceAll("(?s).*?/files/([0-9a-f]+)/.*", "$1");
            assertThat(running.get("/files/" + edition + "/" + path).statusCode())
                    .as(path)
                    .isIn(400, 404);
        }
    }

    /** The status that a raw request with a host header gets; the JDK's client would set its own. */
    private int statusFor(String host) throws IOException {
        try (var socket =
                new Socket(InetAddress.getLoopbackAddress(), running.address().getPort())) {
            String request = "GET /api/v1/company HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            InputStream in = socket.getInputStream();
            String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Integer.parseInt(answer.split(" ", 3)[1]);
        }
    }
}
