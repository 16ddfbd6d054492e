package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nights with too little in them, or with what cannot be, as the drill page gets them: a sentence says what is missing or wrong. */
final class ThinNightTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String HEAD =
            "reading,discharge,hose,length [ft],nozzle,pump [psi],tip [psi],flow [gpm],pump gauge,tip gauge,meter\n";
    private static final String WITH = ",gauge-a,gauge-b,meter-1\n";

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

    private static String row(int reading, int length_ft, double pump_psi, double tip_psi, double flow_gpm) {
        return reading + ",crosslay-1,attack-175," + length_ft + ",seven-eighths," + pump_psi + "," + tip_psi + ","
                + flow_gpm + WITH;
    }

    private static HttpResponse<String> importing(String csv) throws Exception {
        return running.post(
                "/api/v1/drills",
                JSON.writeValueAsString(
                        Map.of("who", "x", "name", "thin", "date", "2026-05-12", "csv", csv, "source", "thin.csv")));
    }

    private static JsonNode shown(String csv) throws Exception {
        HttpResponse<String> made = importing(csv);
        assertThat(made.statusCode()).as(made.body()).isBetween(200, 201);
        String id = JSON.readTree(made.body()).path("id").asText();
        HttpResponse<String> report = running.get("/api/v1/drills/" + id + "/report");
        assertThat(report.statusCode()).as(report.body()).isEqualTo(200);
        return JSON.readTree(report.body()).path("shown");
    }

    private static String withheld(JsonNode shown) {
        List<String> said = new ArrayList<>();
        shown.path("withheld")
                .forEach(one -> said.add(one.path("what").asText() + ": "
                        + one.path("why").asText() + "; " + one.path("needs").asText()));
        return String.join(" | ", said);
    }

    @Test
    void oneReadingSaysWhichOneMoreIsNeededHolds() throws Exception {
        JsonNode shown = shown(HEAD + row(1, 350, 138, 50, 171));
        assertThat(withheld(shown))
                .contains(
                        "loss of attack-175: the lengths flown are too alike",
                        "at least twice as long, or half as long");
        assertThat(shown.path("headlines").toString()).doesNotContain("hose loss", "piping");
    }

    @Test
    void threeReadingsAtOnePointTellNoMoreHold() throws Exception {
        JsonNode shown =
                shown(HEAD + row(1, 350, 138, 50, 171) + row(2, 350, 138, 50, 170) + row(3, 350, 139, 50, 171));
        assertThat(withheld(shown)).contains("the lengths flown are too alike");
        assertThat(shown.path("needed").size()).isEqualTo(1);
        assertThat(shown.path("next").asText()).contains("lay ");
    }

    @Test
    void pressuresInAnotherUnitThanTheHeadSaysRefused() throws Exception {
        HttpResponse<String> answer = importing(HEAD + row(1, 350, 951, 345, 171));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(JSON.readTree(answer.body()).path("detail").asText())
                .contains("reading 1, pump [psi]", "gauge-a cannot be '951.0'", "at most its full scale, 400 psi");
    }

    @Test
    void neitherTipNorFlowRefused() throws Exception {
        HttpResponse<String> answer = importing("""
                reading,discharge,hose,length [ft],nozzle,pump [psi],tip [psi]
                1,crosslay-1,attack-175,350,seven-eighths,138,
                """);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(answer.body()).contains("at least one of the two");
    }

    @Test
    void instrumentsThatNobodyNamedAreSaidHold() throws Exception {
        JsonNode shown = shown("""
                reading,discharge,hose,length [ft],nozzle,pump [psi],tip [psi],flow [gpm]
                1,crosslay-1,attack-175,150,seven-eighths,72,40,152
                2,crosslay-1,attack-175,550,seven-eighths,150,40,151
                """);
        assertThat(shown.path("assumed").toString())
                .contains("pump gauge: not named", "tip gauge: not named", "flow meter: not named");
    }

    @Test
    void aNightThatNoHoseCouldGiveHasNoNumbersHolds() throws Exception {
        StringBuilder rows = new StringBuilder(HEAD);
        int reading = 0;
        for (int length_ft : new int[] {150, 350, 550, 750}) {
            for (int tip_psi : new int[] {40, 50}) {
                rows.append(row(++reading, length_ft, tip_psi, tip_psi, tip_psi == 40 ? 152 : 170));
            }
        }
        JsonNode shown = shown(rows.toString());
        assertThat(withheld(shown)).startsWith("every number of this night: ").contains("scatter more than six times");
        assertThat(shown.path("withheld").size()).isEqualTo(1);
        for (String numbers : List.of("headlines", "needed", "rule", "book", "swings", "workings", "verdict")) {
            assertThat(shown.path(numbers).isEmpty()).as(numbers).isTrue();
        }
        assertThat(shown.path("used").asInt()).isZero();
    }
}
