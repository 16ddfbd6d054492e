package org.hosewright.files.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.files.Examples;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.plan.KeptPlan;
import org.hosewright.ledger.plan.PlanAnalysis;
import org.hosewright.ledger.plan.PlanAsked;
import org.hosewright.ledger.plan.PlanReport;
import org.junit.jupiter.api.Test;

/** A plan's text, and the blank table of its readings. */
class PlanTextTest {
    private static final String ASKED = "{\"package\": \"crosslay-1-200\", \"questions\": [\"hose\", \"piping\"],"
            + " \"date\": \"2026-06-12\", \"hose\": \"600 ft\", \"down\": \"9 ft\", \"supply\": \"500 gpm\","
            + " \"instruments\": [\"gauge-a\", \"gauge-b\"], \"time\": \"150 min\", \"water\": \"4000 gal\"}";

    @Test
    void textReadsBackAsTheSamePlanHolds() {
        for (UnitSystem units : UnitSystem.values()) {
            KeptPlan plan =
                    new KeptPlan("June night", 7, PlanText.readAsked(ASKED), "{\n \"points\": []\n}", Optional.empty());
            assertThat(PlanText.read(PlanText.write(plan, units))).isEqualTo(plan);
            KeptPlan signed = plan.signedBy("T. Officer", LocalDate.of(2026, 6, 10));
            assertThat(PlanText.read(PlanText.write(signed, units))).isEqualTo(signed);
        }
        assertThat(PlanText.readAsked(ASKED).rise().feet()).isEqualTo(-9);
    }

    @Test
    void safety14ARiseIsUpOrDownAndNeverASignRefused() {
        assertThatThrownBy(() -> PlanText.readAsked(ASKED.replace("\"9 ft\"", "\"-9 ft\"")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("a height of 0 or more");
        assertThatThrownBy(() -> PlanText.readAsked(ASKED.replace("\"down\"", "\"rise\"")))
                .isInstanceOf(InvalidInput.class);
    }

    /** The table filled in as foretold reads as the planned readings. */
    @Test
    void filledInTableAgrees() {
        Kit kit = Examples.kit("brindle-falls.kit.yaml").kit();
        PlanAsked asked = PlanText.readAsked(ASKED);
        PlanReport report = PlanAnalysis.of(kit, asked);
        ReadingsTable blank = BlankReadings.of(report);
        List<ReadingsTable.Row> rows = new ArrayList<>();
        for (ReadingsTable.Row row : blank.rows()) {
            Map<String, String> cells = new LinkedHashMap<>(row.cells());
            cells.put("pump [psi]", "100");
            cells.put("tip [psi]", "50");
            rows.add(new ReadingsTable.Row(0, cells));
        }
        List<Reading> read = ReadingParser.parse(new ReadingsTable(blank.columns(), rows), kit, "plan");
        assertThat(read).hasSameSizeAs(report.plan().points());
        for (int i = 0; i < read.size(); i++) {
            TestPoint point = report.plan().points().get(i);
            assertThat(read.get(i).laid().length().feet())
                    .isEqualTo(point.line().length().feet());
            assertThat(read.get(i).laid().shut()).isEqualTo(point.shut());
            assertThat(read.get(i).with().pumpGauge()).contains(point.pumpGauge());
            assertThat(Math.abs(read.get(i).laid().rise().orElseThrow().feet()
                            - point.line().rise().feet()))
                    .isLessThan(0.051);
        }
    }
}
