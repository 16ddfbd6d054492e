package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.Examples;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;
import org.junit.jupiter.api.Test;

/** Taking a night's numbers over into the text of a kit. */
class KitAcceptanceTest {
    private static final String NIGHT = "drill-night.readings.csv";
    private static final Optional<LocalDate> DATE = Optional.of(LocalDate.of(2026, 5, 12));

    private final KitDocument before = Examples.kit("drill-night.kit.yaml");

    @Test
    void onlyWhatTheNightTellsIsWrittenHolds() {
        DrillReport report = report("drill-night", before, Examples.text(NIGHT));
        KitAcceptance.Accepted accepted = KitAcceptance.of(before, report);
        Kit kit = accepted.document().kit();
        Known<?> loss = report.calibration().terms().hoses().get("attack-175");
        assertThat(kit.hoses().get("attack-175").basis().text()).isEqualTo("test drill-night");
        assertThat(kit.hoses().get("attack-175").hose().loss().value().r())
                .isCloseTo(loss.value().si(), within(0.01 * loss.standardErrorSi()));
        assertThat(kit.hoses().get("attack-175").hose().loss().standardErrorSi())
                .isCloseTo(loss.standardErrorSi(), within(0.01 * loss.standardErrorSi()));
        assertThat(kit.engines()
                        .get("engine-41")
                        .pipingBasis()
                        .get("crosslay-1")
                        .text())
                .isEqualTo("test drill-night");
        assertThat(kit.evidence().get("drill-night").date()).isEqualTo(DATE);
        assertThat(kit.evidence().get("drill-night").readings()).hasValue(8);
        assertThat(kit.evidence().get("drill-night").tested()).contains(Length.ofFeet(750));
        assertThat(kit.evidence().get("drill-night").flown()).containsOnlyKeys("attack-175", "crosslay-1");
        assertThat(accepted.document().text()).containsPattern("attack-175: \\{ from: \\d+ gpm, to: \\d+ gpm }");
        assertThat(kit.evidence().get("drill-night").correlation()).containsKey("attack-175/crosslay-1");
        assertThat(accepted.taken())
                .extracting(KitAcceptance.Taken::path)
                .contains(
                        List.of("hoses", "attack-175", "loss"),
                        List.of("engines", "engine-41", "discharges", "crosslay-1", "loss"));
        assertThat(accepted.taken().get(0).was()).isEqualTo("15.5 psi / 100 ft @ 100 gpm");
        assertThat(report.calibration().terms().nozzles())
                .as("a gauged bore tells no more of itself")
                .isEmpty();
        assertThat(accepted.document().text()).doesNotContain("flow-meter, accuracy: 5 % of reading, ");
    }

    /** All other lines stay, and within the changed ones all other entries. */
    @Test
    void restOfTheTextStaysHolds() {
        String after = KitAcceptance.of(before, report("drill-night", before, Examples.text(NIGHT)))
                .document()
                .text();
        List<String> old = before.text().lines().toList();
        List<String> lines = after.lines().toList();
        assertThat(lines).hasSizeGreaterThan(old.size());
        for (String line : old) {
            boolean changed =
                    line.contains("attack-175: {") || line.contains("crosslay-1: {") || line.contains("gauge-");
            if (!changed) {
                assertThat(lines).contains(line);
            }
        }
        assertThat(after).contains("service-test: 300 psi, tested: 2026-04-11, made: 2019 }");
        assertThat(after)
                .containsPattern("loss: [0-9.]+ ± [0-9.]+ psi / 100 ft @ 100 gpm, basis: test drill-night, service");
    }

    /** The kit then says what the night said: needed pressures and how well they are known. */
    @Test
    void neededPressureFromTheKitAgrees() {
        DrillReport report = report("drill-night", before, Examples.text(NIGHT));
        Kit kit = KitAcceptance.of(before, report).document().kit();
        var line = KitLines.of(kit, kit.packages().get("crosslay-1-200"), new Length(0));
        for (var needed : report.needed()) {
            var longer = line.withLastLength(needed.length());
            var fromKit =
                    org.hosewright.hydraulics.line.LineSolver.neededPump(longer, KitErrors.of(kit), Pressure.ofPsi(50));
            assertThat(fromKit.value().psi()).isCloseTo(needed.pump().value().psi(), within(0.5));
            assertThat(fromKit.standardErrorSi() / needed.pump().standardErrorSi())
                    .isBetween(0.99, 1.01);
        }
    }

    /** A tip that flows 7 % more than rated in one setting says nothing about the nozzle's other setting. */
    @Test
    void safety07FactorOfOneSettingStaysWithThatSetting() {
        String slug = "slug-fog: { kind: break-apart, settings: { fog: { kind: fog, rated: 150 gpm @ 75 psi },"
                + " slug: { kind: smooth-bore, bore: 7/8 in, at: 50 psi } } }";
        KitDocument kit = KitDocument.of(
                before.text()
                        .replace(
                                "seven-eighths: { kind: smooth-bore, bore: 7/8 in, at: 50 psi, gauged: 2026-05-12 }",
                                slug)
                        .replace("accuracy: 5 % of reading", "accuracy: 0.5 % of reading")
                        .replace("nozzle: seven-eighths", "nozzle: slug-fog, setting: slug"),
                "kit.yaml");
        String csv = Examples.text(NIGHT)
                .replace(",nozzle,", ",nozzle,setting,")
                .replace(",seven-eighths,", ",slug-fog,slug,");
        DrillReport report = report("drill-night", kit, csv);
        Kit accepted = KitAcceptance.of(kit, report).document().kit();
        assertThat(accepted.evidence().get("drill-night").flow()).containsOnlyKeys("slug-fog slug");
        assertThat(KitLines.nozzle(accepted, "slug-fog", "slug")
                        .flow()
                        .orElseThrow()
                        .value()
                        .value())
                .isGreaterThan(1.03);
        assertThat(KitLines.nozzle(accepted, "slug-fog", "fog").flow()).isEmpty();
        var line = KitLines.of(accepted, accepted.packages().get("crosslay-1-200"), new Length(0));
        for (var needed : report.needed()) {
            var fromKit = org.hosewright.hydraulics.line.LineSolver.neededPump(
                    line.withLastLength(needed.length()), KitErrors.of(accepted), Pressure.ofPsi(50));
            assertThat(fromKit.value().psi()).isCloseTo(needed.pump().value().psi(), within(0.5));
        }
    }

    /** safety.md has it that only determined terms are taken: one length cannot part hose from piping. */
    @Test
    void safety07UndeterminedTermsKeepTheirBasis() {
        String oneLength = Examples.text(NIGHT)
                .lines()
                .filter(line -> line.startsWith("reading") || line.contains(",350,"))
                .reduce("", (a, b) -> a + b + "\n");
        DrillReport report = report("short-night", before, oneLength);
        KitDocument after = KitAcceptance.of(before, report).document();
        var was = before.kit();
        var now = after.kit();
        was.hoses().forEach((id, hose) -> {
            if (!report.calibration().terms().hoses().containsKey(id)) {
                assertThat(now.hoses().get(id)).isEqualTo(hose);
            }
        });
        assertThat(report.calibration().terms().discharges()).doesNotContainKey("crosslay-1");
        assertThat(now.engines()).isEqualTo(was.engines());
    }

    @Test
    void secondNightOfOneNameHasItsDateHolds() {
        KitDocument first = KitAcceptance.of(before, report("Drill night!", before, Examples.text(NIGHT)))
                .document();
        assertThat(first.kit().evidence().keySet()).containsExactly("drill-night");
        DrillReport again = DrillAnalysis.of(
                "drill-night",
                Optional.of(LocalDate.of(2026, 9, 1)),
                first.kit(),
                ReadingParser.parse(ReadingsFile.read(Examples.text(NIGHT), NIGHT), first.kit(), NIGHT),
                Map.of());
        Kit kit = KitAcceptance.of(first, again).document().kit();
        assertThat(kit.evidence().keySet()).containsExactly("drill-night", "drill-night-2026-09-01");
        assertThat(kit.hoses().get("attack-175").basis().text()).isEqualTo("test drill-night-2026-09-01");
        assertThat(kit.evidence().get("drill-night").correlation())
                .as("correlations of numbers that were replaced")
                .isEmpty();
    }

    @Test
    void acceptingTwiceIsAcceptingOnceHolds() {
        KitDocument once = KitAcceptance.of(before, report("drill-night", before, Examples.text(NIGHT)))
                .document();
        DrillReport same = report("drill-night", before, Examples.text(NIGHT));
        assertThat(KitAcceptance.of(before, same).document().text()).isEqualTo(once.text());
    }

    private static DrillReport report(String name, KitDocument kit, String csv) {
        List<Reading> readings = ReadingParser.parse(ReadingsFile.read(csv, NIGHT), kit.kit(), NIGHT);
        return DrillAnalysis.of(name, DATE, kit.kit(), readings, Map.of());
    }
}
