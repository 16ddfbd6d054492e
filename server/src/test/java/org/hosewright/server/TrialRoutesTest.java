package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hosewright.ledger.leaf.LeafKind;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Blind trials through the API: kept, read, opened; the key stays with those who hold it. */
final class TrialRoutesTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String HOLDER = "R. Vane";
    private static final String READER = "J. Orle";

    /** Loss of each kind [psi], so that the labels are told apart by what they lose. */
    private static final Map<String, Integer> LOSS = Map.of("old jacket", 46, "new jacket", 40, "third jacket", 41);

    @TempDir
    static Path folder;

    private static Running running;

    private String id = "";
    private String code = "";
    private List<String> kinds = List.of();

    @BeforeAll
    static void start() {
        running = Running.empty(folder);
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    @BeforeEach
    void begin() throws IOException {
        HttpResponse<String> begun = post("", HOLDER, """
                "name": "Three jackets", "holders": ["R. Vane"], "task": {"measure": "loss", "held": "150 gpm",
                "over": "300 ft", "longest": "600 ft", "matters": "10 psi", "scatter": "2 psi", "step": "1 psi",
                "kinds": ["old jacket", "new jacket", "third jacket"], "relays": 3}""");
        assertThat(begun.statusCode()).as(begun.body()).isEqualTo(201);
        id = JSON.readTree(begun.body()).path("id").asText();
        code = JSON.readTree(begun.body()).path("code").asText();
        Map<String, String> key = keyAsStored();
        kinds = StreamSupport.stream(show().path("order").spliterator(), false)
                .map(lay -> key.getOrDefault(lay.path("label").asText(), ""))
                .toList();
    }

    /** Whatever a reader may ask before the trial is open, in text, in a file or in a refusal, no label stands beside its kind. */
    @Test
    void keyIsHeldBackHolds() throws Exception {
        Map<String, String> key = keyAsStored();
        String loosely = key.entrySet().stream()
                .map(one -> one.getKey() + "[^a-z]{1,14}" + one.getValue() + "|" + one.getValue()
                        + "[^a-z]{1,14}label[^a-z]{1,6}" + one.getKey())
                .collect(Collectors.joining("|"));
        String labelled = "(?s).*(\"kind\"|\"key\"|" + loosely + ").*";
        assertThat(post("/key", HOLDER, "\"code\": \"" + code + "\"").body()).matches(labelled);
        read(1, READER);
        List<String> answers = List.of(
                running.get("/api/v1/trials").body(),
                running.get("/api/v1/trials/" + id).body(),
                running.get("/api/v1/history").body(),
                new PDFTextStripper().getText(Loader.loadPDF(sheet())),
                post("/key", READER, "\"code\": \"" + code + "\"").body(),
                post("/key", HOLDER, "\"code\": \"AAAA-AAAA-AAAA\"").body(),
                post("/opened", READER, "\"why\": \"I want to know\"").body(),
                post("/aside", READER, "\"why\": \"kinked\", \"reading\": 1").body(),
                post("/more", READER, "\"relays\": 2").body());
        assertThat(answers).allSatisfy(answer -> assertThat(answer).doesNotMatch(labelled));
        assertThat(JSON.readTree(answers.get(1)).has("opened")).isFalse();
        for (LeafKind other : LeafKind.values()) {
            assertThat(running.get("/api/v1/" + other.word() + "s/" + id).body())
                    .doesNotMatch(labelled);
        }
    }

    @Test
    void holderSeesTheKeyAndIsWrittenDownHolds() throws Exception {
        JsonNode key =
                JSON.readTree(post("/key", "r. vane", "\"code\": \"" + code.toLowerCase(java.util.Locale.ROOT) + "\"")
                        .body());
        assertThat(key.path("order")).hasSize(9);
        assertThat(pairs(key.path("key"))).isEqualTo(keyAsStored());
        assertThat(show().path("shown").path(0).path("who").asText()).isEqualTo("r. vane");
    }

    @Test
    void verdictWaitsAndIsComputedFromTheReadingsHolds() throws Exception {
        read(8, READER);
        assertThat(show().path("answer").asText()).startsWith("8 of 9 re-lays are read.");
        assertThat(show().path("pairs")).isEmpty();
        readOne(9, READER, 1);
        JsonNode told = show();
        assertThat(told.path("complete").asBoolean()).isTrue();
        assertThat(told.path("pairs")).hasSize(3);
        assertThat(told.path("pairs").toString()).doesNotContain("jacket").contains("loses 6 psi less than");
        post("/opened", HOLDER, "\"why\": \"all are read\"");
        JsonNode opened = show();
        assertThat(opened.path("pairs").toString()).contains("new jacket loses 6 psi less than old jacket over 300 ft");
        assertThat(opened.path("order").path(0).path("kind").asText()).isNotEmpty();
    }

    @Test
    void openingCannotBeUndoneAndLateReadingsAreMarkedHolds() throws Exception {
        read(6, READER);
        assertThat(post("/opened", HOLDER, "\"why\": \"rain\"").statusCode()).isEqualTo(200);
        String before = show().path("pairs").toString();
        assertThat(post("/opened", HOLDER, "\"why\": \"again\"").statusCode()).isEqualTo(422);
        assertThat(post("/more", READER, "\"relays\": 2").statusCode()).isEqualTo(422);
        assertThat(post("/aside", READER, "\"why\": \"does not fit\", \"reading\": 1")
                        .statusCode())
                .isEqualTo(422);
        readOne(7, READER, 30);
        JsonNode after = show();
        assertThat(after.path("readings").path(6).path("late").asBoolean()).isTrue();
        assertThat(after.path("readings").path(5).path("late").asBoolean()).isFalse();
        assertThat(after.path("pairs").toString()).isEqualTo(before);
        assertThat(after.path("remarks").toString()).contains("1 reading was typed after the key was opened");
    }

    @Test
    void holderDoesNotTypeReadingsRefused() {
        HttpResponse<String> refused =
                post("/readings", HOLDER, "\"lay\": 1, \"pump\": \"120 psi\", \"tip\": \"75 psi\"");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("somebody who does not hold the key");
        assertThat(post("/readings", READER, "\"lay\": 10, \"pump\": \"120 psi\", \"tip\": \"75 psi\"")
                        .statusCode())
                .isEqualTo(422);
        assertThat(post("/readings", READER, "\"lay\": 1, \"flow\": \"150 gpm\"")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void furtherRelaysComeAfterAVerdictAndWidenItHolds() throws Exception {
        assertThat(post("/more", READER, "\"relays\": 2").statusCode()).isEqualTo(422);
        read(9, READER);
        assertThat(post("/more", READER, "\"relays\": 2").statusCode()).isEqualTo(200);
        JsonNode more = show();
        assertThat(more.path("order")).hasSize(15);
        assertThat(more.path("complete").asBoolean()).isFalse();
        assertThat(more.path("remarks").toString()).contains("Re-lays were added once");
    }

    private void read(int lays, String who) {
        for (int lay = 1; lay <= lays; lay++) {
            readOne(lay, who, lay > 6 ? 1 : 0);
        }
    }

    private void readOne(int lay, String who, int off) {
        int loss = LOSS.getOrDefault(kinds.get(lay - 1), 0) + off;
        HttpResponse<String> kept = post(
                "/readings", who, "\"lay\": " + lay + ", \"pump\": \"" + (75 + loss) + " psi\", \"tip\": \"75 psi\"");
        assertThat(kept.statusCode()).as(kept.body()).isEqualTo(200);
    }

    private Map<String, String> keyAsStored() throws IOException {
        String text = running.ports()
                .leaves()
                .find(LeafKind.TRIAL_KEY, id)
                .orElseThrow()
                .text();
        return pairs(JSON.readTree(text).path("key"));
    }

    private static Map<String, String> pairs(JsonNode key) {
        return StreamSupport.stream(key.spliterator(), false)
                .collect(Collectors.toMap(
                        one -> one.path("label").asText(),
                        one -> one.path("kind").asText()));
    }

    private JsonNode show() throws IOException {
        return JSON.readTree(running.get("/api/v1/trials/" + id).body());
    }

    private byte[] sheet() throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(running.address().resolve("/api/v1/trials/" + id + "/sheet.pdf"))
                                .build(),
                        BodyHandlers.ofByteArray())
                .body();
    }

    private HttpResponse<String> post(String path, String who, String more) {
        String below = id.isEmpty() ? path : "/" + id + path;
        return running.post("/api/v1/trials" + below, "{\"who\": \"" + who + "\", " + more + "}");
    }
}
