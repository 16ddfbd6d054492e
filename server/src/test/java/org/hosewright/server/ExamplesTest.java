package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples' nights as the drill page is given them. */
final class ExamplesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");

    /** The examples' band for 8.2 psi per 100 ft at 100 gpm, taken to 161 gpm. */
    private static final double AT_161 = 1.61 * 1.61;

    @TempDir
    private Path folder;

    @Test
    void sideTapChangesTheNightHolds() throws IOException {
        JsonNode shown = shown(Files.readString(EXAMPLES.resolve("drill-night.side-tap.kit.yaml")));
        assertThat(leading(headline(shown, "hose loss of attack-175"))).isBetween(7.7 * AT_161, 8.7 * AT_161);
        assertThat(leading(headline(shown, "meter-1 reads"))).isBetween(-3.0, 1.5);
        assertThat(shown.path("workings").toString()).contains("57 psi at the tip");
        JsonNode needed = shown.path("needed").get(2);
        assertThat(needed.path("length").asText()).isEqualTo("550 ft");
        assertThat(leading(needed.path("pump").asText())).isBetween(161.0, 171.0);
    }

    @Test
    void unknownInsideDiameterWithheldHolds() throws IOException {
        String kit = Files.readString(EXAMPLES.resolve("drill-night.side-tap.kit.yaml"));
        JsonNode shown = shown(kit.replace("tap: side 1.5 in", "tap: side"));
        assertThat(shown.path("headlines").findValuesAsText("what")).noneMatch(what -> what.startsWith("hose loss"));
        assertThat(shown.path("rule")).isEmpty();
        assertThat(shown.path("withheld").toString()).contains("side");
    }

    private JsonNode shown(String kit) throws IOException {
        try (var running = Running.empty(folder)) {
            running.post("/api/v1/kit", JSON.writeValueAsString(Map.of("who", "x", "basedOn", 0, "text", kit)));
            String csv = Files.readString(EXAMPLES.resolve("drill-night.readings.csv"));
            running.post(
                    "/api/v1/drills",
                    JSON.writeValueAsString(Map.of("who", "x", "name", "n", "date", "2026-05-12", "csv", csv)));
            String report =
                    running.get("/api/v1/drills/" + running.night() + "/report").body();
            return JSON.readTree(report).path("shown");
        }
    }

    private static String headline(JsonNode shown, String what) {
        for (JsonNode headline : shown.path("headlines")) {
            if (headline.path("what").asText().startsWith(what)) {
                return headline.path("text").asText();
            }
        }
        throw new AssertionError("There is no headline '" + what + "' in " + shown.path("headlines"));
    }

    private static double leading(String text) {
        return Double.parseDouble(text.split(" ", 2)[0].replace('\u2212', '-'));
    }
}
