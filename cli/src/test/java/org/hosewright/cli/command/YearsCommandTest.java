package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many nights on the command line. */
class YearsCommandTest {
    private static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");
    private static final String KIT = EXAMPLES.resolve("brindle-falls.kit.yaml").toString();

    @TempDir
    private Path folder;

    @Test
    void nightsTogetherTellTheirWorthHolds() throws IOException {
        Ran ran = Ran.of("years", night("spring", "2025-05-13", 0), night("second", "2026-05-12", 1), "--kit", KIT);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("2 nights together, 13 May 2025 to 12 May 2026")
                .contains("The night of 12 May 2026 (second) is worth", "of this number.")
                .contains("believed, not seen, since no type was flown in two batches")
                .contains("meter-1 ", "against the true flow")
                .contains("crosslay-1 of engine-41");
    }

    @Test
    void oneNightAsDocumentHolds() throws IOException {
        Ran ran = Ran.of("years", night("spring", "2025-05-13", 0), "--kit", KIT, "--json");
        assertThat(ran.out()).contains("\"types\"", "\"standardError\"", "\"share\"", "\"batch\" : \"attack-175\"");
        assertThat(ran.out()).contains("it was flown on one day only; fly it again in a year.");
    }

    @Test
    void nightWithoutDayRefused() {
        Ran ran = Ran.of("years", EXAMPLES.resolve("drill-night.readings.csv").toString(), "--kit", KIT);
        assertThat(ran.err()).contains("day of the night", "time");
        assertThat(ran.out()).isEmpty();
    }

    /** The example night on another day, its pump pressures a little off. */
    private String night(String name, String day, int off) throws IOException {
        List<String> lines = Files.readAllLines(EXAMPLES.resolve("drill-night.readings.csv"));
        List<String> written = new ArrayList<>(List.of("time," + lines.get(0)));
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            cells[6] = String.valueOf(Integer.parseInt(cells[6]) + off * (cells[0].hashCode() % 2 == 0 ? 1 : -1));
            written.add(day + "T19:10," + String.join(",", cells));
        }
        return Files.write(folder.resolve(name + ".readings.csv"), written).toString();
    }
}
