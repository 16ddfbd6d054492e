package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
    private static final String KIT = Path.of(
                    System.getProperty("hosewright.root"), "examples", "brindle-falls.kit.yaml")
            .toString();

    @Test
    void aNightIsPlannedWithItsLimitsAndCautionsHolds() {
        Ran ran =
                Ran.of("plan", "--kit", KIT, "--package", "crosslay-1-200", "--date", "2026-05-12", "--hose", "800 ft");
        assertThat(ran.out()).contains("never above", "15 ft", "30 seconds", "loss of attack-175");
    }

    @Test
    void sheetsAndBlankTableAreWrittenHolds(@TempDir Path folder) throws IOException {
        Path sheets = folder.resolve("night.pdf");
        Path table = folder.resolve("night.readings.csv");
        Ran ran = Ran.of(
                "plan",
                "--kit",
                KIT,
                "--package",
                "crosslay-1-200",
                "--date",
                "2026-05-12",
                "--hose",
                "400 ft",
                "--with",
                "gauge-a,gauge-b",
                "--pdf",
                sheets.toString(),
                "--readings",
                table.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(Files.readAllBytes(sheets)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(Files.readString(table))
                .startsWith("reading,discharge,hose,length [ft]")
                .contains("\n1,crosslay-1,attack-175,", ",shut,", "gauge-a,gauge-b,,1,,\"hold ");
        Ran again = Ran.of("plan", "--kit", KIT, "--package", "crosslay-1-200", "--pdf", sheets.toString());
        assertThat(again.err()).contains("--force");
    }

    @Test
    void missingInstrumentsAreSaidRefused() {
        Ran one = Ran.of(
                "plan", "--kit", KIT, "--package", "crosslay-1-200", "--date", "2026-05-12", "--with", "gauge-a");
        assertThat(one.err()).contains("only a pump gauge", "a tip gauge, a flow meter, or both");
        Ran none = Ran.of(
                "plan", "--kit", KIT, "--package", "crosslay-1-200", "--date", "2026-05-12", "--with", "meter-1");
        assertThat(none.err()).contains("the gauge that pump pressure is read on");
        Ran unknown = Ran.of("plan", "--kit", KIT, "--package", "crosslay-1-200", "--with", "gauge-z");
        assertThat(unknown.err()).contains("gauge-z", "gauge-a");
    }

    @Test
    void safety08HoseOutOfDateIsRefused() {
        Ran ran = Ran.of("plan", "--kit", KIT, "--package", "crosslay-1-200", "--date", "2027-05-12");
        assertThat(ran.err()).contains("attack-175", "12 months");
        assertThat(ran.out()).isEmpty();
    }
}
