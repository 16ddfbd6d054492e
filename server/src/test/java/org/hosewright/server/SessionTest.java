package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hosewright.ledger.person.Person;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Accounts and sessions, from the first account on. */
final class SessionTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String OWNERS = "quiet lantern brindle ford";
    private static final String GIVEN = "seven copper kettles north";
    private static final List<String> ALL =
            List.of("recorder", "analyst", "approver", "apparatus officer", "operator", "owner");

    @TempDir
    private Path folder;

    private Running running;
    private String cookie = "";

    @BeforeEach
    void start() {
        running = Running.empty(folder);
    }

    @AfterEach
    void stop() {
        running.close();
    }

    @Test
    void firstAccountOwnsTheRecordAndShutsTheDoorsHolds() {
        assertThat(post("/people", person("A. Fenn", List.of("recorder"), OWNERS))
                        .statusCode())
                .isEqualTo(422);
        assertThat(get("/history").statusCode()).isEqualTo(200);
        assertThat(post("/people", person("A. Fenn", ALL, OWNERS)).statusCode()).isEqualTo(201);
        assertThat(get("/history").statusCode()).isEqualTo(200);
        cookie = "";
        assertThat(get("/history").statusCode()).isEqualTo(401);
        assertThat(get("/session").body()).isEqualTo("{\"accounts\":true}");
        assertThat(running.get("/").statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"short", "passwordpassword", "hosewright hosewright", "A. Fenn A. Fenn"})
    void weakPasswordRefused(String password) {
        HttpResponse<String> answer = post("/people", person("A. Fenn", ALL, password));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("what would do").doesNotContain(password);
        assertThat(running.ports().people().isAnyone()).isFalse();
    }

    @Test
    void signingOutEndsTheSessionHolds() {
        owner();
        String stolen = cookie;
        assertThat(post("/session/end", Map.of()).statusCode()).isEqualTo(200);
        cookie = stolen;
        assertThat(get("/history").statusCode()).isEqualTo(401);
    }

    @Test
    void givenPasswordIsChangedFirstHolds() {
        owner();
        post("/people", person("B. Orr", List.of("operator"), GIVEN));
        signIn("b. orr", GIVEN);
        assertThat(get("/history").statusCode()).isEqualTo(403);
        String before = cookie;
        assertThat(post("/session/password", Map.of("password", GIVEN, "wanted", "green ladder under snow"))
                        .statusCode())
                .isEqualTo(200);
        assertThat(get("/history").statusCode()).isEqualTo(200);
        cookie = before;
        assertThat(get("/history").statusCode()).as("the session before").isEqualTo(401);
    }

    @Test
    void takenHatAndEndedAccountHoldAtOnceHold() {
        Demo.fill(running.ports(), "the test");
        owner();
        String owners = cookie;
        post("/people", person("B. Orr", List.of("analyst"), GIVEN));
        signIn("B. Orr", GIVEN);
        post("/session/password", Map.of("password", GIVEN, "wanted", "green ladder under snow"));
        String orrs = cookie;
        assertThat(post("/orders", Map.of("why", "spring")).statusCode()).isEqualTo(200);
        change(owners, "B. Orr", List.of("operator"), true);
        cookie = orrs;
        assertThat(post("/orders", Map.of("why", "again")).statusCode()).isEqualTo(403);
        change(owners, "B. Orr", List.of("operator"), false);
        cookie = orrs;
        assertThat(get("/history").statusCode()).isEqualTo(401);
        cookie = "";
        assertThat(signIn("B. Orr", "green ladder under snow").statusCode()).isEqualTo(401);
    }

    @Test
    void sessionCookieEndsAfterTwelveHoursHolds() {
        HttpResponse<String> answer = post("/people", person("A. Fenn", ALL, OWNERS));
        assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow()).contains("Max-Age=43200");
    }

    /** All that the program writes while it starts, refuses and fails is what it wrote to its two ends. */
    @Test
    void secretsStayOutOfTheLogHolds() {
        var written = new ByteArrayOutputStream();
        PrintStream out = System.out;
        PrintStream err = System.err;
        try (var both = new PrintStream(written, true, StandardCharsets.UTF_8)) {
            System.setOut(both);
            System.setErr(both);
            owner();
            signIn("A. Fenn", GIVEN);
            post("/people", Map.of("name", "B. Orr", "password", GIVEN, "hats", "none"));
            signIn("A. Fenn", OWNERS);
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        String secret = running.ports()
                .people()
                .findKnown("A. Fenn")
                .orElseThrow()
                .secret()
                .hash();
        assertThat(written.toString(StandardCharsets.UTF_8))
                .doesNotContain(OWNERS)
                .doesNotContain(GIVEN)
                .doesNotContain(secret)
                .doesNotContain(cookie.substring(cookie.indexOf('=') + 1));
        assertThat(running.ports().history().audit().holds()).isTrue();
    }

    @Test
    void lastOwnerStaysRefused() {
        owner();
        HttpResponse<String> answer = change(cookie, "A. Fenn", List.of("operator"), true);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("owner");
    }

    @Test
    void guessingRefused() {
        owner();
        cookie = "";
        List<Integer> statuses = IntStream.range(0, 7)
                .mapToObj(attempt -> signIn("A. Fenn", "guess number " + attempt + " of many"))
                .map(HttpResponse::statusCode)
                .collect(Collectors.toList());
        assertThat(statuses).containsExactly(401, 401, 401, 401, 401, 429, 429);
        assertThat(signIn("A. Fenn", OWNERS).statusCode())
                .as("the right one, too late")
                .isEqualTo(429);
        assertThat(signIn("B. Orr", "whatever else it is").statusCode())
                .as("another name")
                .isEqualTo(401);
    }

    @Test
    void unknownNameAndWrongPasswordAgree() {
        owner();
        cookie = "";
        String unknown = signIn("Nobody", OWNERS).body();
        String wrong = signIn("A. Fenn", GIVEN).body();
        assertThat(unknown).isEqualTo(wrong);
    }

    @Test
    void twoPeopleSignAnOrderWhereTheRuleSaysSoRefused() throws Exception {
        Demo.fill(running.ports(), "the test");
        owner();
        assertThat(post("/signing", Map.of("signers", 2, "basedOn", 0)).statusCode())
                .isEqualTo(200);
        post("/orders", Map.of("why", "spring"));
        HttpResponse<String> own = post("/orders/1/steps", Map.of("kind", "signed"));
        assertThat(own.statusCode()).isEqualTo(422);
        assertThat(own.body()).contains("another person than the one who proposed it");
        post("/people", person("B. Orr", List.of("approver"), GIVEN));
        signIn("B. Orr", GIVEN);
        post("/session/password", Map.of("password", GIVEN, "wanted", "green ladder under snow"));
        HttpResponse<String> others = post("/orders/1/steps", Map.of("kind", "signed", "who", "A. Fenn"));
        assertThat(others.statusCode()).isEqualTo(200);
        assertThat(JSON.readTree(others.body()).at("/signed/who").textValue()).isEqualTo("B. Orr");
    }

    @Test
    void twoPeopleWithoutAccountsRefused() {
        HttpResponse<String> answer = post("/signing", Map.of("who", "x", "signers", 2, "basedOn", 0));
        assertThat(answer.statusCode()).isEqualTo(409);
    }

    private void owner() {
        assertThat(post("/people", person("A. Fenn", ALL, OWNERS)).statusCode()).isEqualTo(201);
    }

    private HttpResponse<String> change(String owners, String name, List<String> hats, boolean active) {
        cookie = owners;
        Person person = running.ports().people().findKnown(name).orElseThrow().person();
        return post("/people/" + person.id(), Map.of("hats", hats, "active", active, "basedOn", person.version()));
    }

    /** Signs in with another browser. */
    private HttpResponse<String> signIn(String name, String password) {
        cookie = "";
        return post("/session", Map.of("name", name, "password", password));
    }

    private static Map<String, Object> person(String name, List<String> hats, String password) {
        return Map.of("name", name, "hats", hats, "password", password);
    }

    private HttpResponse<String> get(String path) {
        return send(request(path).GET());
    }

    private HttpResponse<String> post(String path, Map<String, ?> body) {
        String json = JSON.valueToTree(body).toString();
        return send(request(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(json)));
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(running.address().resolve("/api/v1" + path));
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        HttpResponse<String> answer = running.send(request);
        answer.headers().allValues("Set-Cookie").stream()
                .map(set -> set.split(";", 2)[0])
                .forEach(set -> cookie = set.endsWith("=") ? "" : set);
        return answer;
    }
}
