package org.hosewright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

/** Slips of the pen that would end in a wrong pump pressure do not get in. */
class SafetyTest {
    private static final String NIGHT = "drill-night.readings.csv";

    private final Kit kit = Examples.kit("drill-night.kit.yaml").kit();

    @Test
    void safety17MixedUnitsAreRefused() {
        String csv = Examples.text(NIGHT);
        assertRefused(csv.replace("pump [psi]", "pump"), "the unit in a column head");
        assertRefused(csv.replace("1,crosslay-1,attack-175,150", "1,crosslay-1,attack-175,45 m"), "without a unit");
        assertRefused(csv.replace("flow [gpm]", "flow [psi]"), "flow [gpm], flow [L/min]");
        assertRefused(
                csv.replace(",note\n", ",pump [bar]\n").replace("meter-1,\n", "meter-1,5\n"),
                "a second column for pump");
        String text = Examples.text("drill-night.kit.yaml");
        assertThatThrownBy(() -> KitDocument.of(text.replace("ceiling: 250 psi", "ceiling: 250"), "kit.yaml"))
                .hasMessageContaining("a number with its unit");
        assertThatThrownBy(() -> KitDocument.of(text.replace("section: 50 ft", "section: 50 in"), "kit.yaml"))
                .isInstanceOf(InvalidInput.class);
    }

    /** The same night in other units is the same night. */
    @Test
    void safety17UnitsOfTheHeadCount() {
        ReadingsTable table = ReadingsFile.read(Examples.text(NIGHT), NIGHT);
        List<String> columns = table.columns().stream()
                .map(head -> head.equals("pump [psi]") ? "pump [bar]" : head)
                .toList();
        List<ReadingsTable.Row> rows = table.rows().stream()
                .map(row -> {
                    Map<String, String> cells = new java.util.LinkedHashMap<>(row.cells());
                    double psi = Double.parseDouble(String.valueOf(cells.remove("pump [psi]")));
                    cells.put("pump [bar]", String.valueOf(Math.round(psi * 0.0689475729 * 1e6) / 1e6));
                    return new ReadingsTable.Row(row.line(), cells);
                })
                .toList();
        List<Reading> readings = ReadingParser.parse(new ReadingsTable(columns, rows), kit, "bar");
        assertThat(readings.get(6).shown().pump().psi()).isCloseTo(203, within(1e-4));
    }

    @Test
    void safety17SectionsCountedAsFeetAreRefused() {
        String csv = Examples.text(NIGHT);
        assertRefused(csv.replace("7,crosslay-1,attack-175,550", "7,crosslay-1,attack-175,11"), "at least one section");
        assertRefused(csv.replace("7,crosslay-1,attack-175,550", "7,crosslay-1,550 x attack-175,"), "1 to 60 sections");
        assertRefused(csv.replace("7,crosslay-1,attack-175,550", "7,crosslay-1,11 attack-175,"), "'4 x attack-175'");
        String text = Examples.text("drill-night.kit.yaml");
        for (String wrong : List.of("4 ft attack-175", "200 x attack-175", "4 attack-175", "200 attack-175")) {
            assertThatThrownBy(() -> KitDocument.of(text.replace("4 x attack-175", wrong), "kit.yaml"))
                    .as(wrong)
                    .isInstanceOf(InvalidInput.class);
        }
    }

    /** Uphill is positive, downhill negative, and an empty cell is not a rise of nothing. */
    @Test
    void safety17ElevationSignIsKept() {
        String csv = Examples.text(NIGHT)
                .replace("5,crosslay-1,attack-175,550,8", "5,crosslay-1,attack-175,550,-8")
                .replace("6,crosslay-1,attack-175,550,8", "6,crosslay-1,attack-175,550,");
        List<Reading> readings = ReadingParser.parse(ReadingsFile.read(csv, NIGHT), kit, NIGHT);
        assertThat(readings.get(4).laid().rise().orElseThrow().feet()).isCloseTo(-8, within(1e-9));
        assertThat(readings.get(5).laid().rise()).isEmpty();
        assertThat(readings.get(6).laid().rise().orElseThrow().feet()).isCloseTo(8, within(1e-9));
    }

    private void assertRefused(String csv, String says) {
        assertThatThrownBy(() -> ReadingParser.parse(ReadingsFile.read(csv, NIGHT), kit, NIGHT))
                .isInstanceOf(InvalidInput.class)
                .hasMessageStartingWith(NIGHT)
                .hasMessageContaining(says);
    }
}
