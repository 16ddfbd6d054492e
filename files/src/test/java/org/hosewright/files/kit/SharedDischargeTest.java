package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

/** Two engines that name a discharge alike: a night's numbers go to the engine that flew it. */
final class SharedDischargeTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    @Test
    void pipingGoesToTheEngineThatFlewItHolds() throws IOException {
        KitDocument two = twoEngines();
        KitAcceptance.Accepted accepted = KitAcceptance.of(two, report(two.kit(), "engine-41"));
        Kit kit = accepted.document().kit();
        assertThat(kit.engines()
                        .get("engine-41")
                        .engine()
                        .getDischarge("crosslay-1")
                        .loss())
                .isPresent();
        assertThat(kit.engines().get("engine-42")).isEqualTo(two.kit().engines().get("engine-42"));
    }

    @Test
    void oneNightOfTwoEnginesSharingANameRefused() throws IOException {
        KitDocument two = twoEngines();
        String mixed = readings("engine-42").replaceFirst("engine-42,crosslay-1", "engine-41,crosslay-1");
        assertThatThrownBy(() -> DrillAnalysis.of(
                        "night",
                        Optional.empty(),
                        two.kit(),
                        ReadingParser.parse(ReadingsFile.read(mixed, "n"), two.kit(), "n"),
                        Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("a night of its own");
    }

    private static DrillReport report(Kit kit, String engine) throws IOException {
        var table = ReadingsFile.read(readings(engine), "night");
        return DrillAnalysis.of(
                "drill-night",
                Optional.of(LocalDate.of(2026, 5, 12)),
                kit,
                ReadingParser.parse(table, kit, "night"),
                Map.of());
    }

    private static KitDocument twoEngines() throws IOException {
        String kit = Files.readString(EXAMPLES.resolve("drill-night.kit.yaml"));
        String second = """
                engines:
                  engine-42:
                    pump: { rated: 1500 gpm, ceiling: 250 psi }
                    discharges:
                      crosslay-1: { size: 2 in }
                """;
        return KitDocument.of(kit.replaceFirst("engines:\n", second), "kit");
    }

    private static String readings(String engine) throws IOException {
        String readings = Files.readString(EXAMPLES.resolve("drill-night.readings.csv"));
        return readings.replace("reading,discharge", "reading,engine,discharge")
                .replace(",crosslay-1,", "," + engine + ",crosslay-1,");
    }
}
