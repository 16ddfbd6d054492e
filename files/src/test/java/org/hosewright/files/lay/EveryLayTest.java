package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.junit.jupiter.api.Test;

/** The examples' lays of every kind of piece, from their file to their result, against what hand work says. */
class EveryLayTest {
    /** The pressure of a hand calculation with each number to three places [psi]. */
    private static final double BY_HAND_PSI = 1;

    private final Kit kit = Examples.kit("hill-road.kit.yaml").kit();

    private JsonNode json(String text) {
        try {
            LayReport report = LayReport.of(kit, LayFile.readLaid(text, kit, "lay.yaml"), Optional.empty());
            return new JsonMapper().readTree(ResultJson.lay(report));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private JsonNode example(String name) {
        return json(Examples.text("hill-road." + name + ".lay.yaml"));
    }

    private static double number(JsonNode node, String at) {
        assertThat(node.at(at).isNumber()).as(at + " of " + node).isTrue();
        return node.at(at).asDouble();
    }

    /** Engine 41 pumps what leaves engine 42 its 20 psi: 20 + 0.08 x 8 x 3.217^2 + 0.434 x 100 + 0.05 x 3.217^2. */
    @Test
    void relayMatchesPractice() {
        JsonNode json = example("relay");
        assertThat(number(json, "/pump/flow/value")).isCloseTo(321.7, within(0.5));
        assertThat(number(json, "/pump/intake/value")).isCloseTo(20, within(1e-6));
        double needed_psi = 20 + (0.08 * 8 + 0.05) * 3.217 * 3.217 + 0.434 * 100;
        assertThat(json.at("/pumps/0/engine").asText()).isEqualTo("engine-41");
        assertThat(number(json, "/pumps/0/pressure/value")).isCloseTo(needed_psi, within(BY_HAND_PSI));
        assertThat(json.at("/cautions").toString()).doesNotContain("below the 20 psi to keep");
        assertThat(json.at("/limits").findValuesAsText("kind")).contains("supply");
    }

    /** Little rise needs less than the hydrant brings: an idling pump passes that on, and the next intake has more. */
    @Test
    void idlingRelayPassesOnWhatItIsFedHolds() {
        String low = Examples.text("hill-road.relay.lay.yaml").replace("rise: 100 ft", "rise: 60 ft");
        JsonNode json = json(low);
        double fed_psi = number(json, "/pumps/0/intake/value");
        assertThat(number(json, "/pumps/0/pressure/value")).isCloseTo(fed_psi, within(1e-9));
        double left_psi = fed_psi - (0.08 * 8 + 0.05) * 3.217 * 3.217 - 0.434 * 60;
        assertThat(number(json, "/pump/intake/value")).isCloseTo(left_psi, within(BY_HAND_PSI));
        JsonNode less = json(low.replace("rise: 60 ft }", "rise: 60 ft, pump: 50 psi }"));
        assertThat(less.at("/outside").toString()).contains("engine-41 is to hold 50 psi, less than the 58 psi");
    }

    /** What a pump gives goes by what it adds: fed with 20 psi it may stand 20 psi higher than out of the tank. */
    @Test
    void capacityGoesByWhatThePumpAddsHolds() {
        String fed =
                Examples.text("hill-road.relay.lay.yaml").replace("ask: { tip: 50 psi }", "ask: { pump: 170 psi }");
        double most = limit(json(fed), "the capacity of the pump at that pressure");
        double intake_psi = number(json(fed), "/pump/intake/value");
        double left = intake_psi >= 20 ? 1500 : 1500 * (1 - 0.3 * (20 - intake_psi) / 50);
        assertThat(most).isCloseTo(left, within(1e-6));
        String bare = fed.replaceAll("(?s)supply:.*?lines:", "lines:");
        assertThat(limit(json(bare), "the capacity of the pump at that pressure"))
                .isCloseTo(1500 * (1 - 0.3 * 20 / 50), within(1e-6));
    }

    private static double limit(JsonNode json, String what) {
        for (JsonNode limit : json.at("/limits")) {
            if (limit.at("/what").asText().equals(what)) {
                return limit.at("/limit/value").asDouble();
            }
        }
        throw new AssertionError(what + " is not among " + json.at("/limits"));
    }

    /** Both lines meet at one pressure, so that flows share as the roots of what each loses. */
    @Test
    void linesOfASiameseShareTheFlowMatchesPractice() {
        JsonNode json = example("siamese");
        double q = 29.7 * 1.5 * 1.5 * Math.sqrt(80);
        assertThat(number(json, "/tips/0/flow/value")).isCloseTo(q, within(0.5));
        assertThat(json.at("/tips/0/id").asText()).isEqualTo("gun");
        double near = 1 / Math.sqrt(0.6 + 0.75 * 3);
        double far = 1 / Math.sqrt(0.6 + 0.75 * 4);
        double k = 1 / ((near + far) * (near + far));
        double behind_psi = 80 + 0.434 * 3 + (0.06 + 0.75 * 0.5 + 0.2) * q * q / 1e4;
        assertThat(number(json, "/pump/pressure/value")).isCloseTo(behind_psi + k * q * q / 1e4, within(BY_HAND_PSI));
    }

    /** An unknown outlet gives no pressure, and a reducing one no more than it holds. */
    @Test
    void safety12StandpipeOutlets() {
        JsonNode json = example("standpipe");
        assertThat(json.at("/reducers/0/what").asText()).contains("fifth");
        assertThat(number(json, "/reducers/0/holds/value")).isCloseTo(90, within(1e-9));
        String unknown = Examples.text("hill-road.standpipe.lay.yaml").replace("outlet: plain", "outlet: unknown");
        assertThatThrownBy(() -> json(unknown)).isInstanceOf(InvalidInput.class).hasMessageContaining("fourth");
    }

    /** 0.4085 Q / d^2 ft/s of water (fire hydraulics notes), 13.48 psi more for each at a wave of 1,000 ft/s (computed). */
    @Test
    void velocityAndSuddenStopMatchesPractice() {
        JsonNode json = example("relay");
        JsonNode leader = json.at("/pieces/1");
        assertThat(leader.at("/what").asText()).isEqualTo("leader-3");
        double velocity = 0.4085 * number(leader, "/flow/value") / 9;
        assertThat(number(leader, "/velocity/value")).isCloseTo(velocity, within(0.01));
        assertThat(leader.at("/velocity/unit").asText()).isEqualTo("ft/s");
        assertThat(number(leader, "/suddenStop/value")).isCloseTo(13.48 * velocity, within(0.3));
        assertThat(json.at("/suddenStop/estimate").asBoolean()).isTrue();
        JsonNode supply = json.at("/supply/1");
        assertThat(supply.at("/id").asText()).isEqualTo("engine-41");
        assertThat(number(supply, "/velocity/value"))
                .isCloseTo(0.4085 * number(supply, "/flow/value") / 25, within(0.01));
        assertThat(number(json, "/suddenStop/waveSpeed/value")).isCloseTo(1000, within(1e-6));
    }

    @Test
    void foamDrawsItsShareHolds() {
        JsonNode json = example("foam");
        double flow = number(json, "/foam/0/flow/value");
        assertThat(json.at("/foam/0/draws").asBoolean()).isTrue();
        assertThat(number(json, "/foam/0/concentrate/value")).isCloseTo(0.03 * flow, within(1e-6));
        assertThat(number(json, "/foam/0/inlet/value")).isCloseTo(200 * (flow / 95) * (flow / 95), within(0.1));
    }

    /** Lifting takes 0.434 psi a foot, suction hose and strainer their losses. */
    @Test
    void draftMatchesPractice() {
        JsonNode json = example("draft");
        double q = 29.7 * 1.5 * 1.5 * Math.sqrt(50) / 100;
        double intake_psi = -0.434 * 10 - (0.03 * 0.2 + 1 / 25.0) * q * q;
        assertThat(number(json, "/pump/intake/value")).isCloseTo(intake_psi, within(BY_HAND_PSI));
    }

    /** What the night flew ends at 750 ft: more hose than that is said before the pump pressure. */
    @Test
    void safety17BeyondTheFlownLengthIsMarkedBeforeTheNumber() {
        String flown = Examples.text("hill-road.kit.yaml").replace("readings: 8,", "readings: 8, longest: 750 ft,");
        Kit tested = KitDocument.of(flown, "kit.yaml").kit();
        String line = """
                engine: engine-42
                lines:
                  - { discharge: crosslay-1, hose: 800 ft attack-175, rise: 0 ft, nozzle: seven-eighths }
                ask: { tip: 50 psi }
                """;
        assertThat(flown).contains("longest: 750 ft");
        String beyond = ResultJson.lay(LayReport.of(tested, LayFile.readLaid(line, tested, "x"), Optional.empty()));
        assertThat(beyond).contains("attack-175 was tested to 750 ft, here are 800 ft of it to crosslay-1");
        assertThat(beyond.indexOf("tested to 750 ft")).isLessThan(beyond.indexOf("\"pump\""));
        String within = line.replace("800 ft", "750 ft");
        assertThat(LayReport.of(tested, LayFile.readLaid(within, tested, "x"), Optional.empty())
                        .outside())
                .isEmpty();
    }

    /** What the night flew ends at 180 gpm: more than a meter's 5 % beyond it through the hose or the piping is said before the number. */
    @Test
    void safety17BeyondTheFlownFlowIsMarkedBeforeTheNumber() {
        String ranges =
                "flown: { attack-175: { from: 95 gpm, to: 180 gpm }, crosslay-1: { from: 95 gpm, to: 180 gpm } }";
        String text = Examples.text("hill-road.kit.yaml")
                .replace("readings: 8,", "readings: 8, " + ranges + ",")
                .replace("loss: 2.06 ± 1.0 psi @ 100 gpm", "loss: 2.06 ± 1.0 psi @ 100 gpm, basis: test drill-night");
        Kit tested = KitDocument.of(text, "kit.yaml").kit();
        String line = """
                engine: engine-42
                lines:
                  - { discharge: crosslay-1, hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths }
                ask: { flow: 190 gpm }
                """;
        LayReport beyond = LayReport.of(tested, LayFile.readLaid(line, tested, "x"), Optional.empty());
        assertThat(beyond.outside())
                .containsExactly(
                        "Outside what was flown: attack-175 was tested from 95 gpm to 180 gpm, here 190 gpm run through"
                                + " it to crosslay-1.",
                        "Outside what was flown: crosslay-1 was tested from 95 gpm to 180 gpm, here 190 gpm run through"
                                + " it.");
        String json = ResultJson.lay(beyond);
        assertThat(json.indexOf("attack-175 was tested from")).isLessThan(json.indexOf("\"pump\""));
        for (String within : new String[] {"91 gpm", "188 gpm"}) {
            String asked = line.replace("190 gpm", within);
            assertThat(LayReport.of(tested, LayFile.readLaid(asked, tested, "x"), Optional.empty())
                            .outside())
                    .as(within)
                    .isEmpty();
        }
    }

    /** A half-shut gate, a kink and a burst each take from the tip, with the pump left at its pressure. */
    @Test
    void gateKinkAndBurstTakeFromTheTipHold() {
        String line = """
                engine: engine-42
                lines:
                  - { discharge: crosslay-1, hose: 4 x attack-175, rise: 0 ft, nozzle: seven-eighths }
                ask: { pump: 105 psi }
                """;
        double whole = number(json(line), "/tips/0/flow/value");
        for (String worse : new String[] {"gate: half", "damage: { kink: 10 psi @ 100 gpm }", "damage: { burst: 2 }"}) {
            double less = number(json(line.replace("rise: 0 ft", "rise: 0 ft, " + worse)), "/tips/0/flow/value");
            assertThat(less).as(worse).isLessThan(whole - 1);
        }
    }
}
