package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Lay files: read whole, solved where they are one line, refused with a sentence where they are more. */
class LayFilesTest {
    private static final String TWO_LINES = "garden-court.two-lines.lay.yaml";

    private static final String ONE_LINE = """
            engine: engine-42
            supply: { hydrant: { static: 62 psi, residual: 44 psi, at: 890 gpm, tested: 2025-09-14 }, hose: 650 ft supply-4, rise: 12 ft, keep: 20 psi }
            lines:
              - discharge: crosslay-1
                hose: 12 x attack-175
                rise: 20 ft
                nozzle: seven-eighths
                crew: 2
            ask: { tip: 50 psi }
            """;

    private static final String WHOLE = """
            engine: engine-42
            lines:
              - { discharge: crosslay-1, hose: 100 ft leader-3, join: porch }
              - { discharge: rear-3, hose: 100 ft leader-3, join: porch }
            joins:
              porch:
                hose: 100 ft leader-3
                wye: { appliance: gated-wye, legs: { a: { hose: 4 x attack-175, nozzle: seven-eighths }, b: { hose: 4 x attack-175, nozzle: seven-eighths, shut: true } } }
            ask: { flow: 161 gpm }
            """;

    private final Kit kit = Examples.kit("garden-court.kit.yaml").kit();

    @Test
    void exampleSaysWhatItSaysHolds() {
        LayDocument lay = LayFile.read(Examples.text(TWO_LINES), kit, TWO_LINES);
        assertThat(lay.engine()).isEqualTo("engine-42");
        assertThat(lay.ask()).isEqualTo(new Ask.AtTip(Pressure.ofPsi(50)));
        LaidSource supply = lay.supply().orElseThrow();
        assertThat(supply.from())
                .contains(new LaidSource.Hydrant(
                        Pressure.ofPsi(62), Pressure.ofPsi(44), Flow.ofGpm(890), Optional.empty(), Optional.empty()));
        assertThat(supply.keep()).contains(Pressure.ofPsi(20));
        assertThat(supply.rise()).contains(Length.ofFeet(12));
        LayDocument.Leg leg = lay.lines().get(0).leg();
        assertThat(leg.hose()).hasSize(1);
        LaidEnd.Wye wye = (LaidEnd.Wye) leg.end();
        assertThat(wye.appliance()).contains("gated-wye");
        assertThat(wye.legs().keySet()).containsExactly("a", "b");
        assertThat(wye.legs().get("b").end()).isEqualTo(new LaidEnd.Tip("seven-eighths", "", false));
    }

    @Test
    void linesThatJoinAndBranchAreReadHolds() {
        LayDocument lay = LayFile.read(WHOLE, kit, "whole.lay.yaml");
        assertThat(lay.lines().get(1).leg().end()).isEqualTo(new LaidEnd.Join("porch"));
        LaidEnd.Wye wye = (LaidEnd.Wye) lay.joins().get("porch").leg().end();
        assertThat(wye.legs().get("b").end()).isEqualTo(new LaidEnd.Tip("seven-eighths", "", true));
        assertThat(lay.ask()).isEqualTo(new Ask.AtFlow(Flow.ofGpm(161)));
    }

    /** The examples' expected numbers: 600 ft of attack-175 from crosslay-1, 20 ft up, needs 207 psi within 1. */
    @Test
    void lineOfExampleMatchesPractice() throws Exception {
        LayReport report = LayReport.of(kit, LayFile.readLaid(ONE_LINE, kit, "one.lay.yaml"), Optional.empty());
        assertThat(report.pump().value().psi()).isCloseTo(207, within(1.0));
        JsonNode json = new JsonMapper().readTree(ResultJson.lay(report));
        assertThat(json.at("/pump/pressure/value").asDouble()).isCloseTo(207, within(1.0));
        assertThat(json.at("/pump/pressure/unit").asText()).isEqualTo("psi");
        assertThat(json.at("/tips/0/id").asText()).isEqualTo("crosslay-1");
        assertThat(json.at("/tips/0/pressure/value").asDouble()).isCloseTo(50, within(1e-9));
        assertThat(json.at("/tips/0/reaction/unit").asText()).isEqualTo("lbf");
        assertThat(json.at("/limits/0/kind").asText()).isEqualTo("ceiling");
        assertThat(json.at("/limits/0/used").asDouble()).isCloseTo(207.0 / 250, within(0.01));
        assertThat(json.at("/limits/0/broken").asBoolean()).isFalse();
        assertThat(json.at("/pump/intake/value").asDouble()).isCloseTo(52.7, within(0.5));
        assertThat(json.at("/cautions").toString()).contains("The hydrant was tested on 2025-09-14");
        assertThat(json.toString()).doesNotContain("null");
        double before = 2;
        for (JsonNode limit : json.at("/limits")) {
            assertThat(limit.at("/used").asDouble()).isLessThanOrEqualTo(before);
            before = limit.at("/used").asDouble();
        }
    }

    /** The examples' expected numbers: delivery-75 direct, nozzle 8 m up, 350 kPa, needs 663 kPa within 1 %. */
    @Test
    void metricLineOfExampleMatchesPractice() {
        Kit vale = Examples.kit("vale.kit.yaml").kit();
        String lay = """
                engine: pump-1
                lines: [ { discharge: left-1, hose: 3 x delivery-45, rise: 8 m, nozzle: tip-19 } ]
                ask: { tip: 350 kPa }
                """;
        LayReport report = LayReport.of(vale, LayFile.readLaid(lay, vale, "lay.yaml"), Optional.empty());
        assertThat(report.pump().value().kPa()).isCloseTo(663, within(6.63));
        String back = lay.replace("tip: 350 kPa", "pump: 6.63 bar");
        LayReport forward = LayReport.of(vale, LayFile.readLaid(back, vale, "lay.yaml"), Optional.empty());
        assertThat(forward.state().getTip("left-1").state().tip().kPa()).isCloseTo(350, within(3.5));
    }

    /** The examples' expected numbers: 4 in keeps 20 psi at the intake to 487 gpm, 5 in to 698, within 3. */
    @Test
    void supplyOfExampleMatchesPractice() {
        for (var most : Map.of("supply-4", 487.0, "supply-5", 698.0).entrySet()) {
            String lay = ONE_LINE.replace("supply-4", most.getKey());
            LayReport report = LayReport.of(kit, LayFile.readLaid(lay, kit, "lay.yaml"), Optional.empty());
            Limit supply = report.limits().stream()
                    .filter(limit -> limit.kind() == LimitKind.SUPPLY)
                    .findFirst()
                    .orElseThrow();
            assertThat(((Flow) supply.limit()).gpm()).isCloseTo(most.getValue(), within(3.0));
        }
    }

    @Test
    void supplyWithoutTestIsSaidHolds() {
        String lay = ONE_LINE.replace(
                "hydrant: { static: 62 psi, residual: 44 psi, at: 890 gpm, tested: 2025-09-14 }, ", "");
        LayReport report = LayReport.of(kit, LayFile.readLaid(lay, kit, "lay.yaml"), Optional.empty());
        assertThat(report.intake()).isEmpty();
        assertThat(report.cautions().get(0)).startsWith("No hydrant test is stated");
    }

    @Test
    void missingRiseIsAssumedAloudHolds() {
        String level = ONE_LINE.replace("    rise: 20 ft\n", "");
        LayReport report = LayReport.of(kit, LayFile.readLaid(level, kit, "one.lay.yaml"), Optional.empty());
        assertThat(report.assumed()).contains("No rise is stated for crosslay-1: its hose is taken level.");
    }

    /** A second line must never be left out of the reckoning: its flow is in the pump's, and in the supply's share. */
    @Test
    void safety17SecondLineIsNotIgnored() {
        String second = ONE_LINE.replace(
                "ask:", "  - { discharge: rear-3, hose: 4 x attack-175, rise: 0 ft, nozzle: seven-eighths }\nask:");
        LayReport one = LayReport.of(kit, LayFile.readLaid(ONE_LINE, kit, "lay.yaml"), Optional.empty());
        LayReport two = LayReport.of(kit, LayFile.readLaid(second, kit, "lay.yaml"), Optional.empty());
        assertThat(two.state().flow().gpm()).isCloseTo(2 * one.state().flow().gpm(), within(1e-6));
        assertThat(two.intake().orElseThrow().psi())
                .isLessThan(one.intake().orElseThrow().psi());
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/org/hosewright/files/bad-lays.csv",
            delimiter = '|',
            quoteCharacter = '`',
            ignoreLeadingAndTrailingWhitespace = false)
    void sentencesHold(String what, String replaced, String by, String says) {
        assertThat(ONE_LINE).as(what).contains(replaced.replace("%n", "\n"));
        String bad = ONE_LINE.replace(replaced.replace("%n", "\n"), by == null ? "" : by.replace("%n", "\n"));
        assertThatThrownBy(() -> LayFile.readLaid(bad, kit, "lay.yaml"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(says);
    }
}
