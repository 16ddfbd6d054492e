package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.HandlerType;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.person.PersonDraft;
import org.hosewright.server.api.Api;
import org.hosewright.server.api.Route;
import org.hosewright.server.door.Admission;
import org.hosewright.server.password.Passwords;
import org.hosewright.server.setup.ServerConfig;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every door of the API, tried by nobody, by a person of each hat, and by one who has yet to choose a password. */
final class AdmissionTest {
    private static final String PASSWORD = "quiet lantern brindle ford";
    private static final int UNAUTHORIZED = 401;
    private static final int FORBIDDEN = 403;

    @TempDir
    private static Path folder;

    private static Running running;
    private static List<Route> routes;
    private static final Map<Hat, String> COOKIES = new EnumMap<>(Hat.class);
    private static String arriving;

    @BeforeAll
    static void start() throws Exception {
        running = Running.demo(folder);
        // Signing out has a test of its own: it would end the sessions that the doors are tried with.
        routes = new Api(new ServerConfig(0, Running.CLOCK, true), running.ports())
                .listRoutes().stream()
                        .filter(route -> !route.path().equals("/session/end"))
                        .toList();
        var passwords = new Passwords();
        var own = passwords.secret(PASSWORD, "nobody", false);
        var given = passwords.secret(PASSWORD, "nobody", true);
        var people = running.ports().people();
        people.add(PersonDraft.of("The owner", EnumSet.of(Hat.OWNER)), own, new Act("The owner", ""));
        for (Hat hat : EnumSet.complementOf(EnumSet.of(Hat.OWNER))) {
            people.add(PersonDraft.of("The " + hat.word(), EnumSet.of(hat)), own, new Act("The owner", ""));
        }
        people.add(PersonDraft.of("The newcomer", EnumSet.allOf(Hat.class)), given, new Act("The owner", ""));
        for (Hat hat : Hat.values()) {
            COOKIES.put(hat, signIn("The " + hat.word()));
        }
        arriving = signIn("The newcomer");
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    private static String signIn(String name) throws Exception {
        HttpResponse<String> answer = running.post(
                "/api/v1/session", new ObjectMapper().writeValueAsString(Map.of("name", name, "password", PASSWORD)));
        assertThat(answer.statusCode()).isEqualTo(200);
        String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("HttpOnly").contains("SameSite=Strict").contains("Path=/");
        return cookie.split(";", 2)[0];
    }

    /** Those who are turned away, and one who is let in, at every door. */
    @Test
    void everyDoorAsksForItsHatHolds() {
        for (Route route : routes) {
            tryWithout(route);
            Set<Hat> tried = EnumSet.noneOf(Hat.class);
            if (route.admission().kind() == Admission.Kind.HAT) {
                tried.addAll(
                        EnumSet.complementOf(EnumSet.copyOf(route.admission().hats())));
                tried.add(route.admission().hats().iterator().next());
            } else {
                tried.add(Hat.OPERATOR);
            }
            tried.forEach(hat -> tryWith(route, hat));
        }
    }

    @Test
    @Tag("long")
    void everyDoorWithEveryHatHolds() {
        for (Route route : routes) {
            for (Hat hat : Hat.values()) {
                tryWith(route, hat);
            }
        }
    }

    private static void tryWithout(Route route) {
        boolean open = route.admission().kind() == Admission.Kind.ANYBODY;
        assertThat(status(route, "") == UNAUTHORIZED)
                .as("nobody at " + route.path())
                .isEqualTo(!open && !isWrongPassword(route));
    }

    private static void tryWith(Route route, Hat hat) {
        Admission admission = route.admission();
        boolean turnedAway =
                admission.kind() == Admission.Kind.HAT && !admission.hats().contains(hat);
        assertThat(status(route, COOKIES.get(hat)) == FORBIDDEN)
                .as(hat.word() + " at " + route.method() + " " + route.path())
                .isEqualTo(turnedAway);
    }

    /** True for signing in, which without a name is refused as such, not for want of a session. */
    private static boolean isWrongPassword(Route route) {
        return route.path().equals("/session");
    }

    @Test
    void newcomerChoosesPasswordFirstHolds() {
        for (Route route : routes) {
            Set<Admission.Kind> before = EnumSet.of(Admission.Kind.ANYBODY, Admission.Kind.ARRIVING);
            assertThat(status(route, arriving) == FORBIDDEN)
                    .as(route.path())
                    .isEqualTo(!before.contains(route.admission().kind()));
        }
    }

    @Test
    void everyChangeAsksForAHatHolds() {
        Set<String> questions = Set.of("/session", "/session/password", "/lays/read", "/lays/solve");
        for (Route route : routes) {
            if (route.method() == HandlerType.POST && route.admission().kind() != Admission.Kind.HAT) {
                long before = entries();
                int status = status(route, COOKIES.get(Hat.OPERATOR));
                assertThat(entries()).as(route.path() + " answered " + status).isEqualTo(before);
                assertThat(questions.contains(route.path())
                                || route.path().endsWith("/sheet-codes")
                                || route.path().endsWith("-check")
                                || route.path().endsWith("/size")
                                || route.path().endsWith("/look")
                                || route.path().endsWith("/size")
                                || route.path().endsWith("/estimate"))
                        .as(route.path() + " is known to change nothing")
                        .isTrue();
            }
        }
    }

    private static long entries() {
        return running.ports().history().audit().entries();
    }

    @Test
    void recordBearsTheNameOfTheAccountHolds() throws Exception {
        String body = "{\"who\":\"somebody else\",\"name\":\"n\",\"date\":\"2026-05-01\",\"columns\":[\"pump [psi]\"]}";
        HttpResponse<String> answer = send("POST", "/drills", body, COOKIES.get(Hat.RECORDER));
        assertThat(answer.statusCode()).isEqualTo(201);
        JsonNode entries = new ObjectMapper()
                .readTree(send("GET", "/history", "", COOKIES.get(Hat.OPERATOR)).body())
                .path("entries");
        assertThat(entries.findValuesAsText("who")).contains("The recorder").doesNotContain("somebody else");
    }

    @Test
    void stepsOfAnOrderAskForTheirOwnHatRefused() {
        send("POST", "/orders", "{\"why\":\"spring\"}", COOKIES.get(Hat.ANALYST));
        for (String kind : List.of("signed", "fitted", "acknowledged")) {
            String body = "{\"kind\":\"" + kind + "\",\"engine\":\"engine-41\"}";
            assertThat(send("POST", "/orders/1/steps", body, COOKIES.get(Hat.ANALYST))
                            .statusCode())
                    .isEqualTo(FORBIDDEN);
            Hat wrong = kind.equals("signed") ? Hat.OPERATOR : Hat.APPROVER;
            HttpResponse<String> refused = send("POST", "/orders/1/steps", body, COOKIES.get(wrong));
            assertThat(refused.statusCode()).isEqualTo(FORBIDDEN);
            assertThat(refused.body()).contains("takes the hat of");
        }
    }

    private static int status(Route route, String cookie) {
        String path = route.path().replaceAll("\\{[a-z]+}", "none");
        return send(route.method().name(), path, "{}", cookie).statusCode();
    }

    private static HttpResponse<String> send(String method, String path, String body, String cookie) {
        HttpRequest.Builder request = HttpRequest.newBuilder(running.address().resolve(Route.ROOT + path))
                .header("Content-Type", "application/json");
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        return running.send(method.equals("GET") ? request.GET() : request.POST(BodyPublishers.ofString(body)));
    }
}
