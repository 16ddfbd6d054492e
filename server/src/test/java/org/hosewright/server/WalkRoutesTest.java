package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Random;
import org.hosewright.files.track.TrackFile;
import org.junit.jupiter.api.Test;

/** Walks through the API: looked at, kept as recorded, corrected, written out again. */
final class WalkRoutesTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    @Test
    void walkIsKeptAsRecordedUnchanged() throws Exception {
        String track = example();
        HttpResponse<String> kept = running.post(
                "/api/v1/walks",
                asked(track).put("who", "A. Fenn").put("why", "drill").toString());
        assertThat(kept.statusCode()).as(kept.body()).isEqualTo(201);
        String id = JSON.readTree(kept.body()).path("id").asText();
        JsonNode looked = json(running.post("/api/v1/walks/look", asked(track).toString()));
        JsonNode shown = json(running.get("/api/v1/walks/" + id));
        assertThat(shown.path("distance")).isEqualTo(looked.path("distance"));
        assertThat(shown.path("marks")).isEqualTo(looked.path("marks"));
        assertThat(shown.path("kept").path("who").asText()).isEqualTo("A. Fenn");
        String text = running.ports()
                .leaves()
                .find(org.hosewright.ledger.leaf.LeafKind.WALK, id)
                .orElseThrow()
                .text();
        assertThat(JSON.readTree(text).path("track").asText()).isEqualTo(track);
        assertThat(json(running.get("/api/v1/walks")).path("walks")).hasSize(2);
    }

    @Test
    void writtenWalkReadsBackAsTheSameWayHolds() throws Exception {
        JsonNode kept = json(running.post(
                "/api/v1/walks", asked(example()).put("who", "A. Fenn").toString()));
        String id = kept.path("id").asText();
        for (String ending : new String[] {"gpx", "geojson"}) {
            HttpResponse<String> file = running.get("/api/v1/walks/" + id + "/way." + ending);
            assertThat(file.statusCode()).isEqualTo(200);
            assertThat(TrackFile.read(file.body().getBytes(StandardCharsets.UTF_8), ending)
                            .fixes())
                    .hasSameSizeAs(TrackFile.read(example().getBytes(StandardCharsets.UTF_8), "example")
                            .fixes());
            assertThat(file.body()).contains("section 1");
        }
    }

    @Test
    void measuredLengthCorrectsTheWayHolds() throws Exception {
        JsonNode kept = json(running.post(
                "/api/v1/walks", asked(example()).put("who", "A. Fenn").toString()));
        String path = "/api/v1/walks/" + kept.path("id").asText();
        JsonNode before = json(running.get(path));
        String measured = "{\"who\": \"A. Fenn\", \"basedOn\": 1, \"length\": \"300 \u00b1 1 ft\", \"with\": \"tape\"}";
        assertThat(running.post(path + "/measured", measured).statusCode()).isEqualTo(200);
        JsonNode after = json(running.get(path));
        assertThat(after.path("distance").asText())
                .matches("30[01] ft \u00b1 [1-3]")
                .isNotEqualTo(before.path("distance").asText());
        assertThat(after.path("raw")).isEqualTo(before.path("raw"));
        assertThat(running.post(path + "/measured", measured).statusCode())
                .as("a second correction of the first version")
                .isEqualTo(409);
    }

    /** A tile that climbs one metre a second of arc to the north: ten seconds of arc are ten metres up. */
    @Test
    void terrainFileGivesTheRiseHolds() throws Exception {
        int side = 1201;
        ByteBuffer heights = ByteBuffer.allocate(2 * side * side);
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                heights.putShort((short) (3 * (side - 1 - row)));
            }
        }
        Files.createDirectories(folder.resolve("terrain"));
        Files.write(folder.resolve("terrain").resolve("N42W069.hgt"), heights.array());
        String track =
                "{\"type\": \"Feature\", \"properties\": {\"name\": \"north\"}, \"geometry\": {\"type\": \"LineString\","
                        + " \"coordinates\": [[-68.5, 42.5], [-68.5, 42.5027777777]]}}";
        JsonNode shown = json(running.post("/api/v1/walks/look", asked(track).toString()));
        assertThat(shown.path("riseSays").asText()).contains("N42W069");
        assertThat(shown.path("rise").asText()).startsWith("33 ft up");
    }

    @Test
    void brokenTrackRefused() {
        String swapped = "{\"type\": \"Feature\", \"properties\": {}, \"geometry\": {\"type\": \"LineString\","
                + " \"coordinates\": [[44.1, -172.9], [44.2, -172.9]]}}";
        assertRefused(swapped, "longitude from -180 to 180, then latitude");
        assertRefused("<gpx><trk>", "track");
        assertRefused("<!DOCTYPE gpx [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><gpx>&x;</gpx>", "track");
        assertRefused("nothing", "GPX 1.1 or GeoJSON");
    }

    @Test
    void longWalkIsTakenWholeHolds() throws Exception {
        JsonNode shown =
                json(running.post("/api/v1/walks/look", asked(recorded(10_000)).toString()));
        assertThat(shown.path("rawWay")).hasSize(10_000);
        assertThat(shown.path("marks").size()).isGreaterThan(200);
    }

    /** Hose laid along a walk teaches the company's factor; the same length by tape does not. */
    @Test
    void hoseLaidAlongAWalkTeachesTheFactorHolds() throws Exception {
        JsonNode before = json(running.get("/api/v1/stretches/factor"));
        json(running.post(
                "/api/v1/walks",
                asked(example())
                        .put("who", "A. Fenn")
                        .put("measured", "500 ft")
                        .put("measuredWith", "tape")
                        .toString()));
        assertThat(json(running.get("/api/v1/stretches/factor"))).isEqualTo(before);
        json(running.post(
                "/api/v1/walks",
                asked(example())
                        .put("who", "A. Fenn")
                        .put("measured", "500 ft")
                        .put("measuredWith", "hose laid")
                        .toString()));
        JsonNode after = json(running.get("/api/v1/stretches/factor"));
        assertThat(before.path("walks").asInt()).isEqualTo(0);
        assertThat(after.path("walks").asInt()).isEqualTo(1);
        assertThat(after.path("factor").asDouble())
                .isGreaterThan(before.path("factor").asDouble());
    }

    /** Couplings of hose laid are lengths of the way: its distance agrees with them, and is better known. */
    @Test
    void couplingsOfHoseLaidCorrectTheWayHolds() throws Exception {
        String track = example().replace("<type>corner</type>", "<type>coupling</type>");
        JsonNode bare = json(running.post("/api/v1/walks/look", asked(track).toString()));
        JsonNode laid = json(running.post(
                "/api/v1/walks/look", asked(track).put("couplings", "hose laid").toString()));
        double before_ft = feet(bare.path("tapped").path(0).path("along"));
        double after_ft = feet(laid.path("tapped").path(0).path("along"));
        assertThat(bare.path("tapped").path(0).path("mark").asText()).isEqualTo("coupling");
        assertThat(Math.abs(after_ft - 50)).isLessThan(Math.abs(before_ft - 50) / 2);
        assertThat(running.post(
                                "/api/v1/walks/look",
                                asked(track).put("couplings", "tape").toString())
                        .statusCode())
                .isEqualTo(422);
    }

    private static double feet(JsonNode length) {
        String text = length.asText();
        return Double.parseDouble(text.substring(0, text.indexOf(' ')));
    }

    /** Where both orders are places on the earth, the company's own map tells which of them is meant. */
    @Test
    void trackSwappedAgainstTheOwnMapRefused() throws Exception {
        String line = "{\"type\": \"LineString\", \"coordinates\": [[%s], [%s], [%s]]}";
        String right = line.formatted("11.571, 49.945", "11.572, 49.945", "11.572, 49.946");
        String turned = line.formatted("49.945, 11.571", "49.945, 11.572", "49.946, 11.572");
        json(running.post("/api/v1/walks/look", asked(turned).toString()));
        String layer = "{\"type\": \"FeatureCollection\", \"features\": [{\"type\": \"Feature\", \"properties\": {},"
                + " \"geometry\": " + right + "}]}";
        json(running.post(
                "/api/v1/layers/streets",
                JSON.createObjectNode()
                        .put("who", "A. Fenn")
                        .put("basedOn", 0)
                        .put("title", "Streets")
                        .put("attribution", "ourselves")
                        .put("geojson", layer)
                        .toString()));
        json(running.post("/api/v1/walks/look", asked(right).toString()));
        assertRefused(turned, "look swapped");
    }

    private void assertRefused(String track, String says) {
        HttpResponse<String> answer =
                running.post("/api/v1/walks/look", asked(track).toString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(answer.body()).contains(says);
    }

    private static ObjectNode asked(String track) {
        return JSON.createObjectNode().put("track", track).put("package", "crosslay-1-200");
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 299);
        return JSON.readTree(answer.body());
    }

    private static String example() throws IOException {
        return Files.readString(Path.of("..", "examples", "garden-court.walk.gpx"));
    }

    /** A walk of a fix a second at walking pace, as a page records it. */
    private static String recorded(int fixes) {
        var random = new Random(7);
        var coordinates = new StringBuilder();
        var times = new StringBuilder();
        var accuracies = new StringBuilder();
        for (int i = 0; i < fixes; i++) {
            String comma = i == 0 ? "" : ",";
            double latitude = 44.1 + 1e-5 * i + 2e-5 * random.nextGaussian();
            coordinates.append(
                    String.format(Locale.ROOT, "%s[%.7f,%.7f]", comma, -72.9 + 2e-5 * random.nextGaussian(), latitude));
            times.append(comma)
                    .append('"')
                    .append(Instant.parse("2026-05-12T18:00:00Z").plusSeconds(i))
                    .append('"');
            accuracies.append(comma).append(5);
        }
        return "{\"type\": \"Feature\", \"properties\": {\"name\": \"long\", \"times\": [" + times
                + "], \"accuracies\": [" + accuracies
                + "]}, \"geometry\": {\"type\": \"LineString\", \"coordinates\": [" + coordinates + "]}}";
    }
}
