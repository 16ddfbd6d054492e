package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The papers about the ground: one page each, however long the way is. */
final class GroundPapersTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    @Test
    void reachSheetIsOnePageHolds() throws Exception {
        String demo = first("walks");
        try (PDDocument sheet = paper("/api/v1/walks/" + demo + "/reach.pdf")) {
            assertThat(sheet.getNumberOfPages()).isEqualTo(1);
            assertThat(text(sheet)).doesNotContain("is printed").contains("9 450 ft");
        }
        String asked = JSON.createObjectNode()
                .put("track", longWay())
                .put("package", "crosslay-1-200")
                .put("who", "A. Fenn")
                .toString();
        HttpResponse<String> kept = running.post("/api/v1/walks", asked);
        String walk = JSON.readTree(kept.body()).path("id").asText();
        try (PDDocument sheet = paper("/api/v1/walks/" + walk + "/reach.pdf")) {
            assertThat(sheet.getNumberOfPages()).isEqualTo(1);
            assertThat(text(sheet))
                    .contains(
                            "only the end of the way is printed", "NOT SAFE", "no verified water supply", "Map data:");
        }
    }

    @Test
    void stretchSheetIsOnePageHolds() throws Exception {
        try (PDDocument sheet = paper("/api/v1/stretches/" + first("stretches") + "/sheet.pdf?private=yes")) {
            assertThat(sheet.getNumberOfPages()).isEqualTo(1);
            assertThat(text(sheet)).contains("First limit:", "Private", "Map data:", "stands: on Mill Lane");
        }
    }

    /** A way drawn on the map that is longer than what is planned to the door: one of them is wrong, and it is said. */
    @Test
    void drawnWayLongerThanPlannedIsSaidHolds() throws Exception {
        String planned = Files.readString(Path.of("..", "examples", "garden-court.stretch.json"));
        assertThat(cautions(planned)).doesNotContain("drawn on the map");
        assertThat(cautions(planned.replace("180 \u00b1 3 ft", "120 ft")))
                .contains("drawn on the map is", "120 ft are planned to the door");
    }

    private String cautions(String stretch) throws IOException {
        return JSON.readTree(running.post("/api/v1/stretches/estimate", "{\"stretch\": " + stretch + "}")
                        .body())
                .path("cautions")
                .toString();
    }

    private String first(String kind) throws IOException {
        return JSON.readTree(running.get("/api/v1/" + kind).body())
                .path(kind)
                .path(0)
                .path("id")
                .asText();
    }

    /** Some 2,400 ft, to and fro. */
    private static String longWay() {
        StringBuilder places = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            places.append(i == 0 ? "" : ", ")
                    .append(String.format(Locale.ROOT, "[%.6f, %.6f]", -68.5 + 1e-4 * (i % 4), 42.5 + 6e-5 * i));
        }
        return "{\"type\": \"LineString\", \"coordinates\": [" + places + "]}";
    }

    private static String text(PDDocument sheet) throws IOException {
        return new PDFTextStripper().getText(sheet).replaceAll("[\\s\\u00a0\\u202f]+", " ");
    }

    private PDDocument paper(String path) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(running.address().resolve(path)).build();
        HttpResponse<InputStream> answer = HttpClient.newHttpClient().send(request, BodyHandlers.ofInputStream());
        assertThat(answer.statusCode()).isEqualTo(200);
        return Loader.loadPDF(answer.body().readAllBytes());
    }
}
