package org.hosewright.acceptance.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hosewright.acceptance.process.Hosewright.example;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example night, whose readings were made from a known truth plus noise; the bands are what an honest method gives. */
final class DrillProcessTest {
    @TempDir
    private static Path folder;

    private static JsonNode night;

    @BeforeAll
    static void analyse() throws Exception {
        var ran = Hosewright.run(
                folder,
                "drill",
                example("drill-night.readings.csv"),
                "--kit",
                example("drill-night.kit.yaml"),
                "--accept",
                "new.yaml",
                "--report",
                "night.pdf",
                "--json");
        assertThat(ran.status()).as(ran.err()).isZero();
        night = ran.json();
    }

    @ParameterizedTest
    @CsvSource({
        "/hoses/attack-175/loss, 8.8, 9.7, psi/100ft@100gpm, 0.09, 0.40",
        "/discharges/crosslay-1/loss, 0.3, 3.2, psi@100gpm, 0.4, 1.4",
        "/meters/meter-1/factor, 1.035, 1.075, 1, 0, 0.03",
        "/readings/6/predictedPump, 186.5, 192.5, psi, 0, 5",
    })
    void nightTermsHold(String place, double least, double most, String unit, double leastError, double mostError) {
        var term = night.at(place);
        assertThat(term.path("value").asDouble()).isBetween(least, most);
        assertThat(term.path("unit").asText()).isEqualTo(unit);
        assertThat(term.path("standardError").asDouble()).isBetween(leastError, mostError);
    }

    @Test
    void kinkedReadingSetAsideHolds() {
        var seventh = night.at("/readings/6");
        assertThat(seventh.path("reading").asText()).isEqualTo("7");
        assertThat(seventh.path("used").asBoolean()).isFalse();
        assertThat(seventh.at("/excess/value").asDouble()).isBetween(10.5, 16.5);
        assertThat(seventh.at("/finding/kind").asText()).isEqualTo("extra-loss");
        assertThat(texts(seventh.at("/finding/also"))).contains("pump-gauge", "length");
        for (JsonNode other : night.path("readings")) {
            if (!other.path("reading").asText().equals("7")) {
                assertThat(other.at("/finding/kind").asText()).isEqualTo("none");
                assertThat(other.path("used").asBoolean()).isTrue();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"150, 77, 148.7, 90.0", "350, 113, 145.5, 138.1", "550, 149, 143.9, 186.1", "750, 185, 142.9, 234.2"})
    void presentRuleHolds(double length_ft, double rule_psi, double flow_gpm, double needed_psi) {
        var row = row("rule", length_ft);
        assertThat(value(row, "rulePump")).isBetween(rule_psi - 0.1, rule_psi + 0.1);
        assertThat(value(row, "flow")).isBetween(flow_gpm - 2, flow_gpm + 2);
        assertThat(value(row, "neededPump")).isBetween(needed_psi - 3, needed_psi + 3);
    }

    @ParameterizedTest
    @CsvSource({"150, 110, 178, 74", "350, 190, 189, 83", "550, 270, 194, 87", "750, 351, 197, 90"})
    void bookHolds(double length_ft, double book_psi, double flow_gpm, double reaction_lbf) {
        var row = row("book", length_ft);
        assertThat(value(row, "rulePump")).isBetween(book_psi - 1, book_psi + 1);
        assertThat(value(row, "flow")).isBetween(flow_gpm - 2, flow_gpm + 2);
        assertThat(value(row, "reaction")).isBetween(reaction_lbf - 2, reaction_lbf + 2);
    }

    @Test
    void acceptedKitHolds() throws Exception {
        var kit = Files.readString(folder.resolve("new.yaml"));
        assertThat(kit).contains("# An invented company.").contains("basis: test drill-night");
        var again = Hosewright.run(folder, "reach", "--kit", "new.yaml", "--json");
        assertThat(again.status()).as(again.err()).isZero();
        var reach = again.json().at("/packages/crosslay-1-200");
        assertThat(value(reach, "longestSafe")).isLessThan(value(reach, "longest"));
    }

    @Test
    void reportIsPdfHolds() throws Exception {
        assertThat(Files.readString(folder.resolve("night.pdf"), java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void filesThatAreThereRefused() throws Exception {
        Files.writeString(folder.resolve("mine.yaml"), "mine");
        var ran = Hosewright.run(
                folder,
                "drill",
                example("drill-night.readings.csv"),
                "--kit",
                example("drill-night.kit.yaml"),
                "--accept",
                "mine.yaml");
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).contains("mine.yaml").contains("--force");
        assertThat(ran.out()).isEmpty();
        assertThat(Files.readString(folder.resolve("mine.yaml"))).isEqualTo("mine");
    }

    private static JsonNode row(String table, double length_ft) {
        return StreamSupport.stream(night.path(table).spliterator(), false)
                .filter(row -> Math.abs(value(row, "length") - length_ft) < 0.01)
                .findFirst()
                .orElseThrow();
    }

    private static double value(JsonNode row, String key) {
        return row.path(key).path("value").asDouble(Double.NaN);
    }

    private static Iterable<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }
}
