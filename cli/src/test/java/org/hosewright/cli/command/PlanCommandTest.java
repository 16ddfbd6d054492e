package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

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
    void safety08HoseOutOfDateIsRefused() {
        Ran ran = Ran.of("plan", "--kit", KIT, "--package", "crosslay-1-200", "--date", "2027-05-12");
        assertThat(ran.err()).contains("attack-175", "12 months");
        assertThat(ran.out()).isEmpty();
    }
}
