package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.LayWhatIf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What happens to a lay with nobody at the pump, from its words to its result. */
class WhatIfTest {
    /** The examples' expected numbers are given to one in their last digit. */
    private static final double BAND = 1.5;

    private final Kit kit = Examples.kit("garden-court.kit.yaml").kit();
    private final LayReport lay = LayReport.of(
            kit, LayFile.readLaid(Examples.text("garden-court.two-lines.lay.yaml"), kit, "lay.yaml"), Optional.empty());

    private LayWhatIf found(String change) {
        return LayWhatIf.of(lay, WhatIfText.parse(change), Optional.empty());
    }

    private JsonNode json(String change) {
        try {
            return new JsonMapper()
                    .readTree(ResultJson.lay(lay, List.of(found(change))))
                    .at("/whatIf/0");
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    /** The expected numbers of the examples: at 145 psi b shuts, and a gets 180 gpm. */
    @Test
    void safety05SecondLineShutsAtThePanel() {
        JsonNode json = json("b shuts");
        assertThat(json.path("says").asText()).isEqualTo("b shuts");
        JsonNode pump = json.at("/gauges/0");
        assertThat(pump.path("gauge").asText()).isEqualTo("pump");
        assertThat(pump.at("/now/pressure/value").asDouble()).isCloseTo(145, within(BAND));
        assertThat(pump.at("/then/pressure/value").asDouble())
                .isCloseTo(pump.at("/now/pressure/value").asDouble(), within(1e-6));
        assertThat(pump.at("/then/flow/value").asDouble()).isCloseTo(180, within(BAND));
        JsonNode intake = json.at("/gauges/1");
        assertThat(intake.path("gauge").asText()).isEqualTo("intake");
        assertThat(intake.at("/then/pressure/value").asDouble())
                .isGreaterThan(intake.at("/now/pressure/value").asDouble());
        assertThat(json.at("/gauges/2/gauge").asText()).isEqualTo("rear-3");
        assertThat(json.at("/tips/1/then/shut").asBoolean()).isTrue();
    }

    /** What the gauge at the panel then tells: more flow and less behind the piping for a burst, less flow for a kink. */
    @ParameterizedTest
    @CsvSource({
        "rear-3 burst 2, 1, -1, coupling 2 of the hose from rear-3 lets go",
        "a burst 1, 1, -1, coupling 1 of the hose to a lets go",
        "rear-3 kink 10 psi @ 100 gpm, -1, 1, the hose from rear-3 kinks",
        "a gate half, -1, 1, the gate of the hose to a is part shut",
        "a gate 20 psi @ 100 gpm, -1, 1, the gate of the hose to a is part shut",
    })
    void panelTellsWhatWentWrongHolds(String change, int flow, int pressure, String says) {
        LayWhatIf found = found(change);
        assertThat(found.whatIf().says()).isEqualTo(says);
        var now = found.now().get(2);
        var then = found.then().get(2);
        double more = then.flow().orElseThrow().gpm() - now.flow().orElseThrow().gpm();
        assertThat(Math.signum(more)).isEqualTo(flow);
        assertThat(Math.signum(then.pressure().psi() - now.pressure().psi())).isEqualTo(pressure);
    }

    /** A burst that draws more than the supply gives breaks that limit, and the crew is told before all else. */
    @Test
    void safety13BurstIsToldToTheCrewFirst() {
        LayWhatIf found = found("rear-3 burst 2");
        assertThat(found.broken()).isNotEmpty();
        assertThat(found.radio().get(0)).startsWith("By radio first");
        String json = ResultJson.lay(lay, List.of(found));
        assertThat(json.indexOf("By radio first")).isLessThan(json.lastIndexOf("\"cautions\""));
    }

    /** The gauges of the engine that relays stand with those at the fire: a weaker hydrant shows at its intake alone. */
    @Test
    void gaugesOfARelayAreShownHold() {
        Kit relay = Examples.kit("hill-road.kit.yaml").kit();
        LayReport normal = LayReport.of(
                relay,
                LayFile.readLaid(Examples.text("hill-road.relay.lay.yaml"), relay, "lay.yaml"),
                Optional.empty());
        LayWhatIf found = LayWhatIf.of(normal, WhatIfText.parse("hydrant 60 %"), Optional.empty());
        assertThat(found.now())
                .extracting(one -> one.gauge())
                .containsExactly("pump", "intake", "rear-3", "engine-41 pump", "engine-41 intake");
        assertThat(found.then().get(4).pressure().psi())
                .isLessThan(found.now().get(4).pressure().psi() - 1);
        assertThat(found.then().get(1).pressure().psi())
                .isCloseTo(found.now().get(1).pressure().psi(), within(1e-6));
        assertThat(normal.panel()).hasSize(5);
    }

    /** The same drop at three quarters of the flow: 18 psi of the static at 667 gpm, (322 / 667)^1.85 of it at 322. */
    @Test
    void weakerHydrantMatchesPractice() {
        LayWhatIf found = found("hydrant 75 %");
        double flow = found.whatIf().before().flow().gpm();
        double less = 18 * (Math.pow(flow / 667.5, 1.85) - Math.pow(flow / 890, 1.85));
        double lost = found.now().get(1).pressure().psi()
                - found.then().get(1).pressure().psi();
        assertThat(lost).isCloseTo(less, within(0.1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "c shuts",
                "a opens",
                "a kinks",
                "a burst 0",
                "a burst 9",
                "a burst two",
                "rear-9 kink 10 psi @ 100 gpm",
                "a kink 10 psi",
                "a gate",
                "a tip nozzle-9",
                "hydrant 75",
                "hydrant 0 %",
                "shuts",
                ""
            })
    void changesThatCannotBeRefused(String change) {
        assertThatThrownBy(() -> found(change)).isInstanceOf(InvalidInput.class);
    }
}
