package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.evidence.night.Ruling;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.drill.DrillReport;
import org.junit.jupiter.api.Test;

/** The report says all that the night showed. */
class DrillReportTest {
    private static final QuantityShown SHOWN = QuantityShown.us();
    private static final DrillReport NIGHT = Samples.drillNight();
    private static final String TEXT = new Pdf(Papers.drillReport(NIGHT, Stamp.UNSIGNED)).text();

    @Test
    void safety06NeededPressureStandsWithAndWithoutEachReadingSetAside() {
        assertThat(NIGHT.needed()).isNotEmpty();
        NIGHT.needed().forEach(row -> {
            assertThat(row.ifUsed()).containsOnlyKeys("7");
            row.ifUsed()
                    .forEach((reading, pump) -> assertThat(TEXT)
                            .contains("needed with reading " + reading + " used as well")
                            .contains(SHOWN.text(row.length()) + " " + band(row.pump()) + " " + band(pump)));
        });
    }

    @Test
    void safety06AReadingSetAsideStaysWithItsReason() {
        var seven = NIGHT.calibration().readings().get(6);
        assertThat(seven.used()).isFalse();
        assertThat(TEXT)
                .contains(
                        "Set aside. " + Pdf.typed(seven.finding().says()),
                        Pdf.typed(seven.finding().check()));
        assertThat(TEXT).contains("7 550 ft 8 ft up 203 50 169");
    }

    @Test
    void everyReadingAsTakenHolds() {
        NIGHT.night()
                .readings()
                .forEach(reading -> assertThat(TEXT)
                        .contains(reading.id() + " " + SHOWN.text(reading.laid().length()) + " "
                                + SHOWN.rise(reading.laid().rise().orElse(new Length(0))) + " "
                                + number(SHOWN.text(reading.shown().pump())) + " "
                                + number(SHOWN.text(reading.shown().tip().orElseThrow())) + " "
                                + number(SHOWN.text(reading.shown().flow().orElseThrow()))));
    }

    @Test
    void everyTermWithItsBandAndSourceHolds() {
        var terms = NIGHT.calibration().terms();
        terms.hoses().values().forEach(loss -> assertThat(TEXT).contains(band(loss)));
        terms.discharges().values().forEach(loss -> assertThat(TEXT).contains(band(loss)));
        terms.meters().values().forEach(factor -> assertThat(TEXT).contains(Pdf.typed(SHOWN.change(factor))));
        assertThat(TEXT).contains("8 readings fitted together");
    }

    @Test
    void ruleAndBookInTheLanguageOfTheNozzleHold() {
        assertThat(NIGHT.rule()).isNotEmpty();
        assertThat(NIGHT.book()).isNotEmpty();
        for (var rows : List.of(NIGHT.rule(), NIGHT.book())) {
            rows.forEach(row -> assertThat(TEXT)
                    .contains(SHOWN.text(row.length()) + " " + SHOWN.text(row.rulePump()) + " "
                            + SHOWN.text(row.neededPump().value()) + " " + band(row.flow()) + " "
                            + SHOWN.text(row.tip()) + " " + SHOWN.text(row.reaction())));
        }
    }

    @Test
    void whatCannotBeToldAndWhatWasGivenHold() {
        NIGHT.calibration().withheld().forEach(missing -> assertThat(TEXT).contains(Pdf.typed(missing.why())));
        NIGHT.assumed().forEach(assumed -> assertThat(TEXT).contains(Pdf.typed(assumed)));
        NIGHT.cautions().forEach(caution -> assertThat(TEXT).contains(Pdf.typed(caution)));
    }

    @Test
    void eachNumberWithoutSingleReadingsHolds() {
        assertThat(NIGHT.steadiness().swings()).hasSizeGreaterThan(3);
        NIGHT.steadiness().swings().forEach(swing -> assertThat(TEXT).contains(Pdf.typed(swing.says())));
    }

    @Test
    void everyStepOfEveryWorkingHolds() {
        assertThat(NIGHT.workings()).isNotEmpty();
        NIGHT.workings().forEach(working -> {
            assertThat(TEXT).contains(Pdf.typed(working.title()));
            working.steps().forEach(step -> assertThat(TEXT).contains(Pdf.typed(step.result())));
        });
    }

    @Test
    void safety02TheGaugesAndTheirTapsAreNamed() {
        assertThat(TEXT)
                .contains("Gauge a: pump pressure, on the panel, before the discharge piping")
                .contains("Gauge b: tip pressure, a pitot at the tip")
                .contains("for a gauge before the discharge piping that reads true");
    }

    @Test
    void aPersonsRulingWithItsReasonHolds() {
        DrillReport ruled = Samples.night(
                "drill-night.kit.yaml",
                Map.of(
                        "7",
                        new Ruling(true, "The line was walked and lay straight"),
                        "2",
                        new Ruling(false, "Valve moved")));
        String text = new Pdf(Papers.drillReport(ruled, Stamp.UNSIGNED)).text();
        assertThat(text)
                .contains("Used all the same: The line was walked and lay straight.")
                .contains("Set aside by a person: Valve moved.");
    }

    @Test
    void anotherNightAnotherRevisionHolds() {
        String other = new Pdf(
                        Papers.drillReport(Samples.night("drill-night.side-tap.kit.yaml", Map.of()), Stamp.UNSIGNED))
                .text();
        assertThat(revision(other)).isNotEqualTo(revision(TEXT)).matches("[0-9a-f]{4}-[0-9a-f]{4}");
    }

    private static String revision(String text) {
        return text.replaceAll(".*?revision ([0-9a-f-]{9}).*", "$1");
    }

    private static String band(Known<?> known) {
        return Pdf.typed(SHOWN.withBand(known));
    }

    private static String number(String quantity) {
        return quantity.substring(0, quantity.indexOf(' '));
    }
}
