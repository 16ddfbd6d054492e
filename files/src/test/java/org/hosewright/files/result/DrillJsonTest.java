package org.hosewright.files.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillReport;
import org.junit.jupiter.api.Test;

/** The result file of a test night: its keys, its units, and the numbers of the example in it. */
class DrillJsonTest {
    private static final String NIGHT = "drill-night.readings.csv";

    static DrillReport report(String kitName) {
        KitDocument kit = Examples.kit(kitName);
        List<Reading> readings = ReadingParser.parse(Examples.readings(NIGHT), kit.kit(), NIGHT);
        return DrillAnalysis.of("drill-night", Optional.empty(), kit.kit(), readings, Map.of());
    }

    /** Bands of the examples' expected numbers. */
    @Test
    void exampleMatchesPractice() throws Exception {
        JsonNode json = json("drill-night.kit.yaml");
        JsonNode loss = json.at("/hoses/attack-175/loss");
        assertThat(loss.at("/value").asDouble()).isBetween(8.8, 9.7);
        assertThat(loss.at("/unit").asText()).isEqualTo("psi/100ft@100gpm");
        assertThat(loss.at("/standardError").asDouble()).isBetween(0.09, 0.40);
        JsonNode piping = json.at("/discharges/crosslay-1/loss");
        assertThat(piping.at("/value").asDouble()).isBetween(0.3, 3.2);
        assertThat(piping.at("/unit").asText()).isEqualTo("psi@100gpm");
        assertThat(json.at("/meters/meter-1/factor/value").asDouble()).isBetween(1.035, 1.075);
        assertThat(json.at("/meters/meter-1/factor/unit").asText()).isEqualTo("1");
        JsonNode seventh = json.at("/readings/6");
        assertThat(seventh.at("/reading").asText()).isEqualTo("7");
        assertThat(seventh.at("/used").asBoolean()).isFalse();
        assertThat(seventh.at("/predictedPump/value").asDouble()).isBetween(186.5, 192.5);
        assertThat(seventh.at("/excess/value").asDouble()).isBetween(10.5, 16.5);
        assertThat(seventh.at("/finding/kind").asText()).isEqualTo("extra-loss");
        assertThat(texts(seventh.at("/finding/also"))).contains("pump-gauge", "length");
        JsonNode last = json.at("/rule/3");
        assertThat(last.at("/length/value").asDouble()).isCloseTo(750, within(1e-6));
        assertThat(last.at("/rulePump/value").asDouble()).isCloseTo(185, within(1e-6));
        assertThat(last.at("/flow/value").asDouble()).isCloseTo(142.9, within(2.0));
        assertThat(last.at("/neededPump/value").asDouble()).isCloseTo(234.2, within(3.0));
        assertThat(json.at("/book/3/reaction/value").asDouble()).isCloseTo(90, within(2.0));
    }

    /** Every key of the open format, wherever there is something to say; never a null. */
    @Test
    void keysHold() throws Exception {
        JsonNode json = json("drill-night.kit.yaml");
        assertThat(names(json))
                .contains(
                        "hoses",
                        "discharges",
                        "nozzles",
                        "meters",
                        "gauges",
                        "residual",
                        "readings",
                        "withheld",
                        "nextReading",
                        "rule",
                        "book",
                        "assumed");
        assertThat(names(json.at("/readings/0"))).contains("reading", "predictedPump", "excess", "used", "finding");
        assertThat(names(json.at("/readings/0/finding"))).contains("kind", "also", "says", "check");
        assertThat(names(json.at("/withheld/0"))).containsExactly("what", "why", "needs");
        assertThat(names(json.at("/nextReading"))).contains("length", "tip", "says");
        assertThat(names(json.at("/rule/0"))).contains("length", "rulePump", "flow", "tip", "reaction", "neededPump");
        assertNoNull(json, "");
    }

    /** Without each reading in use the numbers stand under the same keys; a swing names the reading that moves its number most. */
    @Test
    void eachReadingLeftOutHolds() throws Exception {
        JsonNode json = json("drill-night.kit.yaml");
        List<String> left = new ArrayList<>();
        json.at("/leftOut").forEach(out -> left.add(out.at("/reading").asText()));
        assertThat(left).containsExactly("1", "2", "3", "4", "5", "6", "8", "9");
        double all = json.at("/needed/3/pump/value").asDouble();
        double most = 0;
        String which = "";
        for (JsonNode out : json.at("/leftOut")) {
            assertThat(names(out)).contains("hoses", "discharges", "nozzles", "meters", "gauges", "needed");
            assertThat(out.at("/hoses/attack-175/loss/standardError").asDouble())
                    .isPositive();
            double moved = Math.abs(out.at("/needed/3/pump/value").asDouble() - all);
            which = moved > most ? out.at("/reading").asText() : which;
            most = Math.max(most, moved);
        }
        JsonNode swing = null;
        for (JsonNode one : json.at("/swings")) {
            swing = one.at("/what").asText().contains("needed at 750 ft") ? one : swing;
        }
        assertThat(swing).isNotNull();
        assertThat(swing.at("/reading").asText()).isEqualTo(which);
        assertThat(Math.abs(swing.at("/without/value").asDouble() - all)).isCloseTo(most, within(1e-9));
        assertThat(swing.at("/without/unit").asText()).isEqualTo("psi");
        assertThat(swing.at("/untoldWithout").isEmpty()).isTrue();
        assertThat(swing.at("/says").asText()).startsWith("Without reading " + which);
    }

    /** Two readings: what they tell rests on both. */
    @Test
    void aNumberThatEveryReadingCarriesIsSaidHolds() throws Exception {
        JsonNode json = few();
        List<String> says = new ArrayList<>();
        json.at("/swings").forEach(one -> says.add(one.at("/says").asText()));
        assertThat(json.at("/leftOut").size()).isEqualTo(3);
        assertThat(says).anyMatch(text -> text.contains("could not be told"));
    }

    /** The tip gauge on a side tap of unknown size: what hangs on the flow is left out. */
    @Test
    void withheldIsLeftOutHolds() throws Exception {
        KitDocument kit =
                Examples.kit("drill-night.kit.yaml").withEntry(List.of("instruments", "gauge-b", "tap"), "side");
        List<Reading> readings = ReadingParser.parse(Examples.readings(NIGHT), kit.kit(), NIGHT);
        DrillReport report = DrillAnalysis.of("drill-night", Optional.empty(), kit.kit(), readings, Map.of());
        JsonNode json = new JsonMapper().readTree(ResultJson.drill(report));
        assertThat(json.at("/hoses").isEmpty()).isTrue();
        assertThat(json.at("/discharges").isEmpty()).isTrue();
        assertThat(json.at("/rule").isEmpty()).isTrue();
        assertThat(json.at("/withheld").isEmpty()).isFalse();
        assertNoNull(json, "");
    }

    /** The pump gauge at the outlet does not see the piping: what the line needs there is said where no pump pressure can be. */
    @Test
    void aLineWithoutAFigureIsSaidHolds() throws Exception {
        KitDocument kit =
                Examples.kit("drill-night.kit.yaml").withEntry(List.of("instruments", "gauge-a", "tap"), "discharge");
        List<Reading> readings = ReadingParser.parse(Examples.readings(NIGHT), kit.kit(), NIGHT);
        DrillReport report = DrillAnalysis.of("drill-night", Optional.empty(), kit.kit(), readings, Map.of());
        assertThat(report.needed()).isEmpty();
        assertThat(report.calibration().withheld())
                .filteredOn(line -> line.what().startsWith("needed pump pressure of attack-175 from crosslay-1"))
                .singleElement()
                .satisfies(
                        line -> assertThat(line.why()).contains("at the outlet, level, it needs", " psi", "at 750 ft"));
    }

    /** Readings that agree at four lengths and five flows: the file says that two more would change nothing. */
    @Test
    void enoughIsSaidHolds() throws Exception {
        KitDocument kit = Examples.kit("drill-night.kit.yaml");
        List<Reading> readings = ReadingParser.parse(ReadingsFile.read(steady(), "steady"), kit.kit(), "steady");
        DrillReport report = DrillAnalysis.of("steady", Optional.empty(), kit.kit(), readings, Map.of());
        JsonNode json = new JsonMapper().readTree(ResultJson.drill(report));
        assertThat(json.at("/stop").asText()).startsWith("two more readings change nothing you decide");
        assertThat(names(few())).doesNotContain("stop");
    }

    private static JsonNode few() throws Exception {
        KitDocument kit = Examples.kit("drill-night.kit.yaml");
        List<Reading> two =
                ReadingParser.parse(Examples.readings(NIGHT), kit.kit(), NIGHT).subList(0, 3);
        return new JsonMapper()
                .readTree(ResultJson.drill(DrillAnalysis.of("few", Optional.empty(), kit.kit(), two, Map.of())));
    }

    /** Ideal readings: 9.2 psi per 100 ft and 1.5 psi of piping, each at 100 gpm, through a true 7/8 in tip. */
    private static String steady() {
        StringBuilder rows = new StringBuilder(
                "reading,discharge,hose,length [ft],rise [ft],nozzle,pump [psi],tip [psi],flow [gpm],pump gauge,tip gauge,meter\n");
        int number = 0;
        for (int length_ft : new int[] {150, 350, 550, 750}) {
            for (int tip_psi : new int[] {35, 45, 50, 55, 60}) {
                number++;
                double hundreds = 29.7 * 49 / 64 * Math.sqrt(tip_psi) / 100;
                double pump_psi = tip_psi + (9.2 * length_ft / 100 + 1.5) * hundreds * hundreds;
                rows.append(number + ",crosslay-1,attack-175," + length_ft + ",0,seven-eighths," + pump_psi + ","
                        + tip_psi + "," + 100 * hundreds + ",gauge-a,gauge-b,meter-1\n");
            }
        }
        return rows.toString();
    }

    @Test
    void metricKitIsWrittenInItsUnitsHolds() throws Exception {
        KitDocument kit = Examples.kit("drill-night.kit.yaml").withEntry(List.of("units"), "si");
        List<Reading> readings = ReadingParser.parse(Examples.readings(NIGHT), kit.kit(), NIGHT);
        JsonNode json = new JsonMapper()
                .readTree(ResultJson.drill(
                        DrillAnalysis.of("drill-night", Optional.empty(), kit.kit(), readings, Map.of())));
        double us =
                json("drill-night.kit.yaml").at("/hoses/attack-175/loss/value").asDouble();
        JsonNode loss = json.at("/hoses/attack-175/loss");
        assertThat(loss.at("/unit").asText()).isEqualTo("kPa/100m@100L/min");
        assertThat(loss.at("/value").asDouble()).isCloseTo(us * 1.57862, within(1e-3));
        assertThat(json.at("/rule/0/length/unit").asText()).isEqualTo("m");
        assertThat(json.at("/rule/0/flow/unit").asText()).isEqualTo("L/min");
        assertThat(json.at("/rule/0/reaction/unit").asText()).isEqualTo("N");
    }

    private static JsonNode json(String kit) throws Exception {
        return new JsonMapper().readTree(ResultJson.drill(report(kit)));
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(item -> texts.add(item.asText()));
        return texts;
    }

    private static void assertNoNull(JsonNode node, String path) {
        assertThat(node.isNull()).as(path).isFalse();
        node.properties().forEach(field -> assertNoNull(field.getValue(), path + "/" + field.getKey()));
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                assertNoNull(node.get(i), path + "/" + i);
            }
        }
    }
}
