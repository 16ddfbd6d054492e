package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Stretch sheets that rest on what is no longer so: those, no others, and until somebody looks at them anew. */
final class StretchStaleTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    private String onCrosslay;
    private String onRear;

    @BeforeEach
    void keepTwo() throws IOException {
        onCrosslay = json(running.get("/api/v1/stretches"))
                .path("stretches")
                .path(0)
                .path("id")
                .asText();
        onRear = keep(example()
                .replace("crosslay-1-200", "rear-250-300")
                .replaceAll("\"second\": \"[^\"]*\",", "")
                .replaceAll("\"address\": \"[^\"]*\"", "\"address\": \"Old Mill\""));
    }

    @Test
    void safety17OnlyTheSheetWhoseHoseChangedIsStaleUntilKeptAnewHolds() throws Exception {
        assertThat(stale()).isEmpty();
        replaceHose();
        assertThat(stale()).containsExactly(onCrosslay);
        assertThat(why(onCrosslay)).contains("The hose attack-175 changed.");
        assertThat(why(onRear)).isEmpty();
        assertThat(sheet(onCrosslay))
                .contains("DEMO, STALE - NOT FOR USE", "The hose attack-175 changed.", "keep it anew");
        assertThat(sheet(onRear)).contains("DEMO - NOT FOR USE").doesNotContain("STALE");

        laid(onCrosslay);
        assertThat(stale()).containsExactly(onCrosslay);
        again(onCrosslay);
        assertThat(stale()).isEmpty();
        assertThat(sheet(onCrosslay)).doesNotContain("STALE");
    }

    @Test
    void sheetIsStaleWhereAnotherPressureOrNoneIsOrderedHolds() throws Exception {
        order(1);
        assertThat(stale()).isEmpty();
        again(onCrosslay);
        again(onRear);
        replaceHose();
        again(onCrosslay);
        assertThat(stale()).isEmpty();
        order(2);
        assertThat(why(onCrosslay)).singleElement().asString().startsWith("Ordered for it was ");
        assertThat(why(onCrosslay).get(0)).matches("Ordered for it was \\d+ psi by order 1; now it is .*");
        assertThat(why(onRear)).isEmpty();
        again(onCrosslay);
        assertThat(stale()).isEmpty();
        json(running.post("/api/v1/orders/2/steps", "{\"who\": \"Chief\", \"kind\": \"withdrawn\"}"));
        assertThat(why(onCrosslay)).singleElement().asString().endsWith("by order 2; now it is nothing.");
    }

    private void replaceHose() {
        var kits = running.ports().kits();
        var kit = kits.findLatest().orElseThrow();
        String text = kit.text().replaceFirst("(attack-175:[^\n]*loss: )[0-9.]+", "$112.5");
        assertThat(text).isNotEqualTo(kit.text());
        kits.save(text, kit.version(), new Act("Quartermaster", "new batch"));
    }

    private void order(int number) throws IOException {
        json(running.post("/api/v1/orders", "{\"who\": \"T. Officer\"}"));
        json(running.post("/api/v1/orders/" + number + "/steps", "{\"who\": \"Chief\", \"kind\": \"signed\"}"));
    }

    private String keep(String stretch) throws IOException {
        String body = "{\"who\": \"A. Fenn\", \"stretch\": " + stretch + "}";
        return json(running.post("/api/v1/stretches", body)).path("id").asText();
    }

    /** Looks at a stretch again and keeps it as it is. */
    private void again(String id) throws IOException {
        JsonNode shown = json(running.get("/api/v1/stretches/" + id));
        ObjectNode asked = JSON.createObjectNode().put("who", "A. Fenn");
        asked.put("basedOn", shown.path("kept").path("version").asLong());
        asked.set("stretch", shown.path("stretch"));
        json(running.post("/api/v1/stretches/" + id, asked.toString()));
    }

    private void laid(String id) throws IOException {
        String version = json(running.get("/api/v1/stretches/" + id))
                .path("kept")
                .path("version")
                .asText();
        json(running.post(
                "/api/v1/stretches/" + id + "/laid",
                "{\"who\": \"A. Fenn\", \"basedOn\": " + version + ", \"on\": \"2026-05-30\", \"used\": \"300 ft\"}"));
    }

    /** Ids of the stale ones; the station counts and names the same ones. */
    private List<String> stale() throws IOException {
        List<String> stale = new ArrayList<>();
        JsonNode all = json(running.get("/api/v1/stretches")).path("stretches");
        all.forEach(one -> {
            if (!one.path("stale").isEmpty()) {
                stale.add(one.path("id").asText());
            }
        });
        JsonNode station = json(running.get("/api/v1/station")).path("stretches");
        assertThat(station.path("kept").asInt()).isEqualTo(all.size());
        assertThat(station.path("stale").findValuesAsText("id")).isEqualTo(stale);
        return stale;
    }

    private List<String> why(String id) throws IOException {
        List<String> why = new ArrayList<>();
        json(running.get("/api/v1/stretches/" + id)).path("stale").forEach(one -> why.add(one.asText()));
        return why;
    }

    private String sheet(String id) throws Exception {
        var request = HttpRequest.newBuilder(running.address().resolve("/api/v1/stretches/" + id + "/sheet.pdf"))
                .build();
        HttpResponse<InputStream> answer = HttpClient.newHttpClient().send(request, BodyHandlers.ofInputStream());
        try (var document = Loader.loadPDF(answer.body().readAllBytes())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0\\u202f]+", " ");
        }
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 299);
        return JSON.readTree(answer.body());
    }

    private static String example() throws IOException {
        return Files.readString(Path.of("..", "examples", "garden-court.stretch.json"));
    }
}
