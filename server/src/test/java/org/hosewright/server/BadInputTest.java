package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Input that cannot be used: one clear sentence with place, value and what would do, and nothing stored. */
final class BadInputTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String HEAD = "reading,discharge,hose,length [ft],nozzle,pump [psi],tip [psi]\n";
    private static final String ROW = "1,crosslay-1,attack-175,150,seven-eighths,72,40\n";

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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "diameter: 1 3/4 in  | diameter: 1 3/4   | diameter",
                "rated: 1500 gpm     | rated: 1500 gal   | rated",
                "rated: 1500 gpm     | rated: 1,500 gpm  | comma",
                "ceiling: 250 psi    | ceiling: -250 psi | ceiling",
                "ceiling: 250 psi    | ceilign: 250 psi  | ceiling",
                "hose: 4 x attack-175| hose: 4 x attack  | attack",
            })
    void badKitRefused(String good, String bad, String names) throws Exception {
        String text = running.ports().kits().findLatest().orElseThrow().text();
        assertThat(text).contains(good.strip());
        JsonNode problem = refused(running.post(
                "/api/v1/kit",
                JSON.writeValueAsString(Map.of(
                        "who",
                        "x",
                        "basedOn",
                        1,
                        "source",
                        "kit.yaml",
                        "text",
                        text.replace(good.strip(), bad.strip())))));
        assertThat(problem.path("detail").textValue())
                .startsWith("kit.yaml, line ")
                .contains("what would do")
                .contains(names.strip());
        assertThat(running.ports().kits().findLatest().orElseThrow().version()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "length [ft]      | length           | length",
                "pump [psi],      | pumped [psi],    | pump",
                "pump [psi]       | pump [gpm]       | pump",
                "pump [psi],tip   | pump [psi];tip   | cells",
            })
    void badReadingsFileRefused(String good, String bad, String names) throws Exception {
        assertThat(HEAD).contains(good.strip());
        JsonNode problem = refused(importing(HEAD.replace(good.strip(), bad.strip()) + ROW));
        assertThat(problem.path("detail").textValue()).contains("night.csv").contains(names.strip());
        assertThat(running.ports().drills().listDrills()).hasSize(1);
    }

    @Test
    void duplicateReadingRefused() throws Exception {
        JsonNode problem = refused(importing(HEAD + ROW + ROW));
        assertThat(problem.path("detail").textValue()).contains("reading").contains("1");
        assertThat(running.ports().drills().listDrills()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hose        | attack-999 | hose",
                "pump [psi]  | seventy    | pump [psi]",
                "tip [psi]   | 140        | tip",
                "flow [gpm]  | 0          | flow",
                "length [ft] | -150       | length [ft]",
            })
    void badRowSaysWhereAndWhyHolds(String column, String value, String names) throws Exception {
        var cells = new LinkedHashMap<String, Object>(running.ports()
                .drills()
                .findDrill(running.night())
                .orElseThrow()
                .rows()
                .get(0)
                .cells());
        cells.put(column.strip(), value.strip());
        cells.put("reading", "99");
        HttpResponse<String> answer = running.post(
                "/api/v1/drills/" + running.night() + "/row-check", JSON.writeValueAsString(Map.of("cells", cells)));
        assertThat(answer.statusCode()).isEqualTo(200);
        JsonNode told = JSON.readTree(answer.body());
        assertThat(told.path("trouble").asText()).contains(names.strip()).contains("what would do");
        assertThat(told.path("column").asText()).isEqualTo(column.strip());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"who\":\"x\",\"changes\":[],\"colour\":1}            | 422 | colour",
                "{\"who\":\"\",\"changes\":[]}                          | 422 | name",
                "{\"who\":\"x\",\"changes\":[{\"do\":\"delete\"}]}      | 422 | delete",
                "{\"who\":\"x\",                                        | 400 | JSON",
                "[]                                                     | 422 | request",
            })
    void badRequestRefused(String body, int status, String names) throws Exception {
        HttpResponse<String> answer = running.post("/api/v1/drills/" + running.night() + "/changes", body);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).contains("application/problem+json");
        assertThat(answer.body()).contains(names.strip());
        assertThat(running.ports().drills().listDrills().get(0).version()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"72,40, 40,72, tip", "72,40, 72,, tip"})
    void impossibleReadingRefused(String pump, String tip, String badPump, String badTip, String names)
            throws Exception {
        String row = ROW.replace(pump + "," + tip, badPump + "," + (badTip == null ? "" : badTip));
        JsonNode problem = refused(importing(HEAD + row));
        assertThat(problem.path("detail").textValue()).startsWith("night.csv").contains(names);
        assertThat(running.ports().drills().listDrills()).hasSize(1);
    }

    @Test
    void unknownPlaceRefused() {
        assertThat(running.get("/api/v1/drills/none").statusCode()).isEqualTo(404);
        assertThat(running.get("/api/v1/nothing").statusCode()).isEqualTo(404);
        assertThat(running.get("/api/v1/reach?rise=20").statusCode()).isEqualTo(422);
        assertThat(running.get("/api/v1/papers?round=down").statusCode()).isEqualTo(422);
    }

    private static HttpResponse<String> importing(String csv) throws JsonProcessingException {
        return running.post(
                "/api/v1/drills",
                JSON.writeValueAsString(
                        Map.of("who", "x", "name", "n", "date", "2026-05-12", "csv", csv, "source", "night.csv")));
    }

    private static JsonNode refused(HttpResponse<String> answer) throws JsonProcessingException {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        return JSON.readTree(answer.body());
    }
}
