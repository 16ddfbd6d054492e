package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Practice for drivers from the signed numbers, and exactly the problems that a change makes stale. */
final class PracticeRoutesTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Pattern ANSWER =
            Pattern.compile("(\\d+) (\\d+) psi ordered (\\d+) psi(?: and (\\d) × 5 psi)? a gauge");

    @BeforeEach
    void alterKit() {
        kit("crosslay-2: { size: 2 in }", "crosslay-2: { size: 2 in, loss: 2.06 psi @ 100 gpm }");
        kit(
                "crosslay-2-200: { engine: engine-41, discharge: crosslay-2, hose: 4 x attack-175",
                "crosslay-2-200: { engine: engine-41, discharge: crosslay-2, hose: 4 x attack-250");
    }

    @Test
    void answersAreTheOrdersFiguresWithTheirFloorsHold() throws IOException {
        order(1);
        make(12);
        String paper = paper();
        assertThat(paper).contains("Engine 41: what must the gauge show?", "level with the pump", "2 floors up");
        assertThat(paper.substring(0, paper.indexOf("Answers, for who asks"))).doesNotContain(" and 2 × ");
        List<MatchResult> answers = ANSWER.matcher(paper).results().toList();
        assertThat(answers).hasSize(12);
        JsonNode lines = json("/orders/1").path("engines").path(0).path("lines");
        List<String> ordered = new ArrayList<>();
        lines.forEach(line -> line.path("boxes")
                .forEach(box -> ordered.add(box.path("is").path("figure").asText())));
        for (MatchResult answer : answers) {
            int floors = answer.group(4) == null ? 0 : Integer.parseInt(answer.group(4));
            int level_psi = Integer.parseInt(answer.group(3));
            assertThat(ordered).contains(level_psi + " psi");
            assertThat(Integer.parseInt(answer.group(2))).isEqualTo(level_psi + 5 * floors);
        }
    }

    @Test
    void safety17OnlyTheProblemsThatDependOnItAreStaleHold() throws IOException {
        order(1);
        make(12);
        assertThat(stale()).isEmpty();
        kit("loss: 15.5 psi / 100 ft @ 100 gpm", "loss: 14.1 psi / 100 ft @ 100 gpm");
        List<String> stale = stale();
        assertThat(stale).isNotEmpty().hasSizeLessThan(12).containsOnly("crosslay-1-200");
        assertThat(json("/practice").toString()).contains("The hose attack-175 changed.");
        assertThat(json("/station").path("practice")).isEqualTo(json("/practice"));
        String paper = paper();
        assertThat(paper).contains("DEMO, STALE - NOT FOR USE", "are stale. The hose attack-175 changed.");
        assertThat(ANSWER.matcher(paper).results().count()).isEqualTo(12 - stale.size());

        order(2);
        assertThat(stale()).containsOnly("crosslay-1-200");
        assertThat(json("/practice").toString()).contains("Order 2 answers otherwise than order 1 did.");
        assertThat(post("/orders/2/steps", "{\"who\": \"Chief\", \"kind\": \"withdrawn\"}"))
                .isEqualTo(200);
        assertThat(stale()).hasSize(12);
    }

    @Test
    void practiceWithoutAnOrderOrOfNoSizeRefused() throws IOException {
        assertThat(post("/practice", "{\"who\": \"T. Officer\", \"engine\": \"engine-41\", \"problems\": 12}"))
                .isEqualTo(422);
        order(1);
        for (String problems : List.of("0", "41", "-1")) {
            assertThat(post(
                            "/practice",
                            "{\"who\": \"T. Officer\", \"engine\": \"engine-41\", \"problems\": " + problems + "}"))
                    .isEqualTo(422);
        }
        assertThat(post("/practice", "{\"who\": \"T. Officer\", \"engine\": \"engine-9\", \"problems\": 12}"))
                .isEqualTo(422);
        make(3);
        String sheet = json("/practice").path("sheets").path(0).path("id").asText();
        assertThat(post("/practice/" + sheet + "/taken-out", "{\"who\": \"T. Officer\", \"basedOn\": 1}"))
                .isEqualTo(200);
        assertThat(json("/practice").path("sheets")).isEmpty();
    }

    private void order(int number) {
        assertThat(post("/orders", "{\"who\": \"T. Officer\"}")).isEqualTo(200);
        assertThat(post("/orders/" + number + "/steps", "{\"who\": \"Chief\", \"kind\": \"signed\"}"))
                .isEqualTo(200);
    }

    private void make(int problems) {
        assertThat(post(
                        "/practice",
                        "{\"who\": \"T. Officer\", \"engine\": \"engine-41\", \"problems\": " + problems + "}"))
                .isEqualTo(201);
    }

    private void kit(String from, String to) {
        var kits = running.ports().kits();
        var kit = kits.findLatest().orElseThrow();
        assertThat(kit.text()).contains(from);
        kits.save(kit.text().replace(from, to), kit.version(), new Act("Quartermaster", "a change"));
    }

    /** Packages of the problems that are stale, each as often as it is asked. */
    private List<String> stale() throws IOException {
        List<String> stale = new ArrayList<>();
        json("/practice")
                .path("sheets")
                .path(0)
                .path("stale")
                .forEach(one -> stale.add(one.path("package").asText()));
        return stale;
    }

    private String paper() throws IOException {
        String sheet = json("/practice").path("sheets").path(0).path("id").asText();
        var request = HttpRequest.newBuilder(running.address().resolve("/api/v1/practice/" + sheet + "/sheet.pdf"))
                .build();
        try (InputStream in = HttpClient.newHttpClient()
                        .send(request, BodyHandlers.ofInputStream())
                        .body();
                var pdf = Loader.loadPDF(in.readAllBytes())) {
            return new PDFTextStripper().getText(pdf).replaceAll("[\\s\\u00a0\\u202f]+", " ");
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private JsonNode json(String path) throws IOException {
        return JSON.readTree(running.get("/api/v1" + path).body());
    }

    private int post(String path, String json) {
        return running.post("/api/v1" + path, json).statusCode();
    }
}
