package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Stretches, layers and pictures through the API. */
final class StretchRoutesTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    @Test
    void keptStretchComesBackUnchanged() throws Exception {
        JsonNode kept =
                json(running.post("/api/v1/stretches", "{\"who\": \"A. Fenn\", \"stretch\": " + example() + "}"));
        JsonNode shown = json(running.get("/api/v1/stretches/" + kept.path("id").asText()));
        JsonNode stretch = shown.path("stretch");
        JsonNode given = JSON.readTree(example());
        for (String key :
                new String[] {"address", "stands", "packages", "second", "stairs", "corners", "laid", "private"}) {
            assertThat(stretch.path(key)).as(key).isEqualTo(given.path(key));
        }
        assertThat(shown.path("sections").asInt()).isEqualTo(6);
        assertThat(json(running.get("/api/v1/stretches")).path("stretches")).hasSize(2);
    }

    @Test
    void hoseUsedTeachesTheFactorHolds() throws Exception {
        String id = json(running.get("/api/v1/stretches"))
                .path("stretches")
                .path(0)
                .path("id")
                .asText();
        JsonNode before = json(running.get("/api/v1/stretches/factor"));
        for (int version = 1; version <= 4; version++) {
            String laid = "{\"who\": \"A. Fenn\", \"basedOn\": " + version + ", \"on\": \"2026-05-2" + version
                    + "\", \"used\": \"375 ft\"}";
            json(running.post("/api/v1/stretches/" + id + "/laid", laid));
        }
        JsonNode after = json(running.get("/api/v1/stretches/factor"));
        assertThat(after.path("stretches").asInt())
                .isEqualTo(before.path("stretches").asInt() + 4);
        assertThat(after.path("factor").asDouble())
                .isGreaterThan(before.path("factor").asDouble() + 0.1);
        double width = after.path("high").asDouble() / after.path("low").asDouble();
        assertThat(width)
                .isLessThan(before.path("high").asDouble() / before.path("low").asDouble());
    }

    @Test
    void privateNotesArePrintedOnlyWhenAskedHolds() throws Exception {
        String id = json(running.get("/api/v1/stretches"))
                .path("stretches")
                .path(0)
                .path("id")
                .asText();
        String plain = text("/api/v1/stretches/" + id + "/sheet.pdf");
        String open = text("/api/v1/stretches/" + id + "/sheet.pdf?private=yes");
        assertThat(plain)
                .doesNotContain("Door code")
                .contains("6 sections, 300 ft", "5 Garden Court", "gate crosslay 2 down");
        assertThat(plain)
                .contains("not a verified water supply", "neighbours", "traffic", "drawn by hand for Brindle Falls");
        assertThat(open).contains("Door code");
    }

    @Test
    void walkIsPrintedWithItsLimitsHolds() throws Exception {
        String id = json(running.get("/api/v1/walks"))
                .path("walks")
                .path(0)
                .path("id")
                .asText();
        String page = text("/api/v1/walks/" + id + "/reach.pdf");
        assertThat(page).contains("the ceiling for the pump, 95 %", "Summed from position to position", "barometer");
    }

    @Test
    void orderInForceStandsOnWalkAndSheetHolds() throws Exception {
        String walk = "/api/v1/walks/"
                + json(running.get("/api/v1/walks"))
                        .path("walks")
                        .path(0)
                        .path("id")
                        .asText();
        String stretch = json(running.get("/api/v1/stretches"))
                .path("stretches")
                .path(0)
                .path("id")
                .asText();
        assertThat(json(running.get(walk)).path("marks").path(5).has("ordered")).isFalse();
        json(running.post("/api/v1/orders", "{\"who\": \"Chief\", \"why\": \"\"}"));
        json(running.post("/api/v1/orders/1/steps", "{\"who\": \"Chief\", \"why\": \"\", \"kind\": \"signed\"}"));
        JsonNode sixth = json(running.get(walk)).path("marks").path(5);
        JsonNode box = json(running.get("/api/v1/orders/1"))
                .path("engines")
                .path(0)
                .path("lines")
                .path(0)
                .path("boxes");
        assertThat(sixth.path("hose").asText()).isEqualTo("300 ft");
        String ordered = "";
        for (JsonNode one : box) {
            ordered = one.path("length").asText().equals("300 ft")
                    ? one.path("is").path("figure").asText()
                    : ordered;
        }
        assertThat(sixth.path("ordered").asText()).isNotEmpty().isEqualTo(ordered);
        assertThat(text("/api/v1/stretches/" + stretch + "/sheet.pdf"))
                .contains("Ordered: " + ordered + " on level ground, order 1");
    }

    @Test
    void strangePictureRefused() throws Exception {
        picture("{\"who\": \"A. Fenn\", \"name\": \"x\", \"photograph\": \"!\"}", 422);
        picture(asked("plain text".getBytes(java.nio.charset.StandardCharsets.UTF_8)), 422);
        picture(asked(new byte[2_000_001]), 422);
        var image = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(3000, 40, BufferedImage.TYPE_INT_ARGB), "png", image);
        String id = JSON.readTree(picture(asked(image.toByteArray()), 201))
                .path("id")
                .asText();
        BufferedImage kept = ImageIO.read(bytes("/api/v1/pictures/" + id));
        assertThat(kept.getWidth()).isEqualTo(1600);
        assertThat(running.get("/api/v1/pictures/none").statusCode()).isEqualTo(404);
    }

    @Test
    void layerWithSwappedPlacesRefused() throws Exception {
        String layer = "{\\\"type\\\": \\\"FeatureCollection\\\", \\\"features\\\": [{\\\"type\\\": \\\"Feature\\\","
                + " \\\"properties\\\": {}, \\\"geometry\\\": {\\\"type\\\": \\\"Point\\\", \\\"coordinates\\\": [%s]}}]}";
        String asked =
                "{\"who\": \"A. Fenn\", \"basedOn\": 0, \"title\": \"Trees\", \"attribution\": \"ourselves\", \"geojson\": \"%s\"}";
        HttpResponse<String> swapped =
                running.post("/api/v1/layers/trees", asked.formatted(layer.formatted("42.5, -168.5")));
        assertThat(swapped.statusCode()).isEqualTo(422);
        assertThat(swapped.body()).contains("look swapped", "feature 1");
        assertThat(running.post("/api/v1/layers/trees", asked.formatted(layer.formatted("-68.5, 42.5")))
                        .statusCode())
                .isEqualTo(200);
        assertThat(running.post(
                                "/api/v1/layers/trees",
                                asked.formatted(layer.formatted("-68.5, 42.5")).replace("ourselves", " "))
                        .body())
                .contains("attribution");
        assertThat(json(running.get("/api/v1/layers")).path("layers")).hasSize(4);
    }

    /** Safety 1: beside a higher line the gated one sees the whole pump pressure once its nozzle is shut. */
    @Test
    void safety01SecondLineIsHeldToThePumpForBothHolds() throws Exception {
        JsonNode near = second(example());
        assertThat(near.path("safe").asBoolean()).isTrue();
        assertThat(near.path("limit").asText()).isNotEmpty();
        JsonNode far = second(example().replace("180 \u00b1 3 ft", "700 ft"));
        assertThat(far.path("safe").asBoolean()).isFalse();
        assertThat(far.path("used").asInt()).isGreaterThan(100);
    }

    private JsonNode second(String stretch) throws Exception {
        return json(running.post("/api/v1/stretches/estimate", "{\"stretch\": " + stretch + "}"))
                .path("second");
    }

    @Test
    void ownLengthForStairsIsKeptUnchanged() throws Exception {
        String own =
                example().replace("\"rule\": \"section-a-flight\"", "\"rule\": \"own-length\", \"each\": \"30 ft\"");
        JsonNode kept = json(running.post("/api/v1/stretches", "{\"who\": \"A. Fenn\", \"stretch\": " + own + "}"));
        JsonNode shown = json(running.get("/api/v1/stretches/" + kept.path("id").asText()));
        assertThat(shown.path("stretch").path("stairs"))
                .isEqualTo(JSON.readTree(own).path("stairs"));
        assertThat(shown.path("parts").toString()).contains("30 ft");
        refused(example().replace("section-a-flight", ""), "choose your own");
        refused(example().replace("\"section-a-flight\"", "\"well-hole\", \"each\": \"30 ft\""), "own-length");
    }

    /** A line always connected, lengthened by a second one and by a third: all of its hose, the last one's nozzle. */
    @Test
    void chainOfThreePackagesIsOneLineHolds() throws Exception {
        String chain = example()
                .replace("[\"crosslay-1-200\"]", "[\"crosslay-1-200\", \"crosslay-2-200\", \"rear-250-300\"]")
                .replace("\"second\": \"crosslay-2-200\",", "")
                .replace("180 \u00b1 3 ft", "520 ft");
        JsonNode shown = json(running.post("/api/v1/stretches/estimate", "{\"stretch\": " + chain + "}"));
        assertThat(shown.path("package").asText()).isEqualTo("crosslay-1-200 + crosslay-2-200 + rear-250-300");
        assertThat(shown.path("lines").toString()).contains("pump");
    }

    @Test
    void stretchThatCannotBeRefused() throws Exception {
        String good = example();
        refused(good.replace("\"crosslay-1-200\"", "\"crosslay-9\""), "crosslay-9");
        refused(good.replace("180 \u00b1 3 ft", "180"), "ft, m");
        refused(good.replace("section-a-flight", "as taught"), "rule for stairs");
        refused(good.replace("\"reserve\"", "\"reserv\""), "reserv");
        refused(good.replace("to-door", "straight-line"), "to-door, inside, cover or working");
        refused(good.replace("\"format\": 1", "\"format\": 2"), "format");
    }

    private void refused(String stretch, String says) {
        HttpResponse<String> answer = running.post("/api/v1/stretches/estimate", "{\"stretch\": " + stretch + "}");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(answer.body()).contains(says);
    }

    private String picture(String asked, int status) {
        HttpResponse<String> answer = running.post("/api/v1/pictures", asked);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        return answer.body();
    }

    private static String asked(byte[] picture) {
        return "{\"who\": \"A. Fenn\", \"name\": \"x\", \"photograph\": \""
                + Base64.getEncoder().encodeToString(picture) + "\"}";
    }

    private String text(String path) throws IOException, InterruptedException {
        try (var document = Loader.loadPDF(bytes(path).readAllBytes())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0\\u202f]+", " ");
        }
    }

    private InputStream bytes(String path) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(running.address().resolve(path)).build();
        HttpResponse<InputStream> answer = HttpClient.newHttpClient().send(request, BodyHandlers.ofInputStream());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 299);
        return JSON.readTree(answer.body());
    }

    private static String example() throws IOException {
        return Files.readString(Path.of("..", "examples", "garden-court.stretch.json"));
    }
}
