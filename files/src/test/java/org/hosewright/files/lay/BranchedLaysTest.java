package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.Laid;
import org.hosewright.ledger.lay.LayReport;
import org.junit.jupiter.api.Test;

/** Lays of several lines and wyes, from their file to their result. */
class BranchedLaysTest {
    private static final String TWO_LINES = "garden-court.two-lines.lay.yaml";

    private final Kit kit = Examples.kit("garden-court.kit.yaml").kit();

    private static JsonNode json(Kit kit, String text) {
        try {
            Laid laid = LayFile.readLaid(text, kit, "lay.yaml");
            return new JsonMapper().readTree(ResultJson.lay(LayReport.of(kit, laid, Optional.empty())));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static double number(JsonNode node, String at) {
        assertThat(node.at(at).isNumber()).as(at).isTrue();
        return node.at(at).asDouble();
    }

    /** The examples' expected numbers: 145 psi, 322 of 487 gpm of supply, then 145 of 250 psi of ceiling. */
    @Test
    void twoLinesOfExampleMatchesPractice() {
        JsonNode json = json(kit, Examples.text(TWO_LINES));
        assertThat(number(json, "/pump/pressure/value")).isCloseTo(145, within(1.0));
        assertThat(number(json, "/pump/flow/value")).isCloseTo(322, within(1.0));
        assertThat(number(json, "/pump/intake/value")).isCloseTo(40.6, within(0.5));
        assertThat(json.at("/tips")).hasSize(2);
        assertThat(json.at("/tips/0/id").asText()).isEqualTo("a");
        assertThat(number(json, "/tips/1/pressure/value")).isCloseTo(50, within(1e-6));
        assertThat(json.at("/gates")).isEmpty();
        assertThat(json.at("/limits/0/kind").asText()).isEqualTo("supply");
        assertThat(number(json, "/limits/0/used")).isCloseTo(0.66, within(0.005));
        assertThat(number(json, "/limits/0/limit/value")).isCloseTo(487, within(3.0));
        assertThat(json.at("/limits/1/kind").asText()).isEqualTo("ceiling");
        assertThat(number(json, "/limits/1/used")).isCloseTo(0.58, within(0.005));
        assertThat(json.toString()).doesNotContain("null");
    }

    /** The second line stands in the result before the pump pressure, with the figure it exceeds. */
    @Test
    void safety05SecondLineIsSaidBeforeTheNumber() {
        JsonNode json = json(kit, Examples.text(TWO_LINES));
        assertThat(json.toString().indexOf("secondLine"))
                .isLessThan(json.toString().indexOf("\"pump\""));
        assertThat(json.at("/secondLine/1/turned").asText()).isEqualTo("b");
        assertThat(json.at("/secondLine/1/opens").asBoolean()).isFalse();
        assertThat(number(json, "/secondLine/1/tips/0/flow/value")).isCloseTo(180, within(1.0));
        assertThat(number(json, "/secondLine/1/tips/0/reaction/value")).isCloseTo(75.6, within(1.0));
        assertThat(json.at("/cautions/1").asText())
                .startsWith("If b shuts with the pump left at 145 psi: a gets 180 gpm")
                .contains("above the company's figure for a crew of 2 (75 lbf)");
    }

    /** The examples' expected numbers: 117 psi with b shut; left there with both open 143 gpm and 39.8 psi each. */
    @Test
    void shutLegAndGivenPumpHold() {
        String b = "b: { hose: 200 ft attack-175, rise: 20 ft, nozzle: seven-eighths";
        String shut = Examples.text(TWO_LINES).replace(b, b + ", shut: true");
        JsonNode one = json(kit, shut);
        assertThat(number(one, "/pump/pressure/value")).isCloseTo(117, within(1.0));
        assertThat(one.at("/tips")).hasSize(1);
        assertThat(one.at("/shut/0").asText()).isEqualTo("b");
        assertThat(number(one, "/secondLine/1/tips/0/pressure/value")).isCloseTo(39.8, within(1.0));
        JsonNode left = json(kit, Examples.text(TWO_LINES).replace("{ tip: 50 psi }", "{ pump: 117 psi }"));
        assertThat(number(left, "/tips/0/flow/value")).isCloseTo(143, within(1.0));
        assertThat(number(left, "/tips/1/pressure/value")).isCloseTo(39.8, within(1.0));
    }

    /** The examples' expected numbers: one branch 711 kPa, two 900; left at 711 with two: 395 L/min at 270 kPa. */
    @Test
    void metricBreechingOfExampleMatchesPractice() {
        Kit vale = Examples.kit("vale.kit.yaml").kit();
        String two = Examples.text("vale.breeching.lay.yaml");
        assertThat(number(json(vale, two), "/pump/pressure/value")).isCloseTo(900, within(9.0));
        String one = two.replace("tip-19 }\nask", "tip-19, shut: true }\nask");
        assertThat(number(json(vale, one), "/pump/pressure/value")).isCloseTo(711, within(7.11));
        JsonNode left = json(vale, two.replace("tip: 350 kPa", "pump: 711 kPa"));
        assertThat(number(left, "/tips/0/flow/value")).isCloseTo(395, within(3.95));
        assertThat(number(left, "/tips/1/pressure/value")).isCloseTo(270, within(2.7));
    }

    @Test
    void tipsBearTheirNamesAndGatesTheirsHolds() {
        String lay = """
                engine: engine-42
                lines:
                  - { discharge: crosslay-1, hose: 4 x attack-175, rise: 0 ft, crew: 1, nozzle: seven-eighths }
                  - discharge: rear-3
                    hose: 400 ft leader-3
                    wye:
                      appliance: gated-wye
                      legs:
                        crosslay-1: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths }
                        b: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths }
                ask: { tip: 50 psi }
                """;
        JsonNode json = json(kit, lay);
        assertThat(json.at("/tips").findValuesAsText("id")).containsExactly("crosslay-1", "rear-3/crosslay-1", "b");
        assertThat(json.at("/gates/0/discharge").asText()).isEqualTo("crosslay-1");
        assertThat(number(json, "/gates/0/gateDown/value")).isGreaterThan(10);
        assertThat(json.at("/assumed").toString()).contains("No rise is stated for rear-3");
    }

    /** A crew that is named stands against its own figure, as a limit. */
    @Test
    void safety10ReactionStandsAgainstTheNamedCrew() {
        JsonNode json =
                json(kit, Examples.text(TWO_LINES).replace("rise: 20 ft, nozzle", "rise: 20 ft, crew: 1, nozzle"));
        assertThat(json.at("/limits/0/kind").asText()).isEqualTo("reaction");
        assertThat(number(json, "/limits/0/at/value")).isCloseTo(1.57 * 0.875 * 0.875 * 50, within(0.1));
        assertThat(number(json, "/limits/0/limit/value")).isCloseTo(60, within(1e-6));
        assertThat(json.at("/limits/0/broken").asBoolean()).isTrue();
    }

    /** Downhill the hose's limit is held to the shut-off pressure at its lower end. */
    @Test
    void safety01ShutOffDownhillIsHeldToTheHose() {
        JsonNode json = json(kit, Examples.text(TWO_LINES).replace("rise: 20 ft", "rise: -200 ft"));
        double pump = number(json, "/pump/pressure/value");
        for (JsonNode limit : json.at("/limits")) {
            if (limit.at("/what").asText().startsWith("attack-175")) {
                assertThat(number(limit, "/at/value")).isCloseTo(pump + 0.434 * 200, within(0.1));
                return;
            }
        }
        throw new AssertionError("no limit of attack-175");
    }

    @Test
    void piecesThatCannotBeRefused() {
        String two = Examples.text(TWO_LINES);
        refused(two.replace("hose: 400 ft leader-3", "rise: 0 ft"), "hose of rear-3 is missing");
        refused(two.replace("appliance: gated-wye", "appliance: gated-why"), "gated-why");
        refused(
                two.replace(
                        "a: { hose: 200 ft attack-175, rise: 20 ft, nozzle: seven-eighths }",
                        "a: { hose: 200 ft attack-175 }"),
                "the end of the hose");
    }

    @Test
    void layWithEveryNozzleShutRefused() {
        String shut = Examples.text(TWO_LINES).replace("nozzle: seven-eighths", "nozzle: seven-eighths, shut: true");
        assertThatThrownBy(() -> json(kit, shut))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("every nozzle of the lay cannot be 'shut'; what would do: a nozzle that is open.");
    }

    private void refused(String text, String says) {
        assertThatThrownBy(() -> LayFile.readLaid(text, kit, "lay.yaml"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("lay.yaml")
                .hasMessageContaining(says);
    }
}
