package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person reads on a terminal. */
final class PlainTextTest {
    private static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");

    @TempDir
    private Path folder;

    @Test
    void safety06NeededPressureStandsWithAndWithoutTheReadingSetAside() {
        var ran = Ran.of("drill", example("drill-night.readings.csv"), "--kit", example("drill-night.kit.yaml"));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out().lines().filter(line -> line.contains("750 ft") && line.contains("with reading 7 used")))
                .hasSize(1);
        assertThat(ran.out()).contains("203 psi").contains("set aside: ");
    }

    @Test
    void eachNumberWithoutSingleReadingsHolds() {
        var ran = Ran.of("drill", example("drill-night.readings.csv"), "--kit", example("drill-night.kit.yaml"));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("Without single readings")
                .contains("No reading moves the loss of attack-175 by more than 0.1 psi per 100 ft.")
                .containsPattern(
                        "Without reading \\d the pump pressure needed at 750 ft, level, would come out at 23\\d psi ± \\d+, 0\\.\\d psi more; no other reading moves it by more than 0\\.\\d psi");
    }

    @Test
    void brokenLimitBeforeTheNumberHolds() throws Exception {
        Files.writeString(folder.resolve("far.lay.yaml"), """
                engine: engine-42
                lines:
                  - { discharge: crosslay-1, hose: 900 ft attack-175, rise: 20 ft, nozzle: seven-eighths }
                ask: { tip: 50 psi }
                """);
        var ran = Ran.of("lay", folder.resolve("far.lay.yaml").toString(), "--kit", example("garden-court.kit.yaml"));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out().indexOf("Beyond its limit")).isBetween(0, ran.out().indexOf("at the tip"));
        assertThat(ran.out()).contains("the ceiling for the pump: 278 psi, above 250 psi");
    }

    @Test
    void safety15SafeStretchBeforeTheBestGuess() {
        var ran = Ran.of("reach", "--kit", example("garden-court.kit.yaml"));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out().indexOf("safe to")).isBetween(0, ran.out().indexOf("at best"));
    }

    @Test
    void safety05OtherLineOfAWyeBeforeTheNumbers() {
        var ran = Ran.of("lay", example("garden-court.two-lines.lay.yaml"), "--kit", example("garden-court.kit.yaml"));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out().indexOf("If b shuts with the pump left at 145 psi: a gets 180 gpm at 63 psi"))
                .isBetween(0, ran.out().indexOf("The pump"));
        assertThat(ran.out()).contains("reaction 76 lbf, above the company's figure for a crew of 2");
    }

    private static String example(String name) {
        return EXAMPLES.resolve(name).toString();
    }
}
