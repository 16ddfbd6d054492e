package org.hosewright.acceptance.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hosewright.acceptance.process.Hosewright.example;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reach, lay and cards of the example kits, whose answers are worked out by hand. */
final class LineProcessTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "200 psi, 0 ft, 600", "225 psi, 0 ft, 700", "250 psi, 0 ft, 800",
        "200 psi, 20 ft, 550", "225 psi, 20 ft, 650", "250 psi, 20 ft, 750",
    })
    void gardenCourtReachHolds(String ceiling, String rise, double longest_ft) throws Exception {
        var reach = run("reach", "--kit", example("garden-court.kit.yaml"), "--ceiling", ceiling, "--rise", rise);
        assertThat(reach.at("/packages/crosslay-1-200/longest/value").asDouble())
                .isEqualTo(longest_ft);
        assertThat(reach.at("/packages/crosslay-1-200/longest/unit").asText()).isEqualTo("ft");
    }

    @Test
    void valeReachHolds() throws Exception {
        var reach = run("reach", "--kit", example("vale.kit.yaml"), "--rise", "8 m");
        assertThat(reach.at("/packages/delivery-75/longest/value").asDouble()).isEqualTo(175);
        assertThat(reach.at("/packages/delivery-75/sections").asInt()).isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource({
        "garden-court, crosslay-1, 600 ft attack-175, 20 ft, seven-eighths, 50 psi, psi, 207, 1, false",
        "vale, left-1, 75 m delivery-45, 8 m, tip-19, 350 kPa, kPa, 663, 6.63, false",
        "vale, left-1, 225 m delivery-45, 8 m, tip-19, 350 kPa, kPa, 1103, 11.03, true",
    })
    void laysHold(
            String kit,
            String discharge,
            String hose,
            String rise,
            String nozzle,
            String tip,
            String unit,
            double pump,
            double band,
            boolean broken)
            throws Exception {
        var engine = kit.equals("vale") ? "pump-1" : "engine-42";
        Files.writeString(
                folder.resolve("lay.yaml"),
                "engine: " + engine + "\nlines:\n  - { discharge: " + discharge + ", hose: " + hose + ", rise: " + rise
                        + ", nozzle: " + nozzle + " }\nask: { tip: " + tip + " }\n");
        var lay = run("lay", "lay.yaml", "--kit", example(kit + ".kit.yaml"));
        assertThat(lay.at("/pump/pressure/value").asDouble()).isBetween(pump - band, pump + band);
        assertThat(lay.at("/pump/pressure/unit").asText()).isEqualTo(unit);
        assertThat(lay.at("/limits/0/broken").asBoolean()).isEqualTo(broken);
    }

    @Test
    void safety03CardsAreWrittenUnsigned() throws Exception {
        var cards = run("cards", "--kit", example("garden-court.kit.yaml"), "--out", "cards");
        assertThat(cards.path("stamp").asText()).isEqualTo("UNSIGNED - NOT FOR USE");
        assertThat(cards.path("revision").asText()).matches("[0-9a-f]{8}");
        for (JsonNode file : cards.path("files")) {
            assertThat(folder.resolve(file.asText())).isNotEmptyFile();
        }
        assertThat(cards.path("files")).hasSize(3);
    }

    private JsonNode run(String... arguments) throws Exception {
        var withJson = new String[arguments.length + 1];
        System.arraycopy(arguments, 0, withJson, 0, arguments.length);
        withJson[arguments.length] = "--json";
        var ran = Hosewright.run(folder, withJson);
        assertThat(ran.status()).as(ran.err()).isZero();
        return ran.json();
    }
}
