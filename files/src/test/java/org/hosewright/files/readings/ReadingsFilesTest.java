package org.hosewright.files.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.night.ReadWith;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.Examples;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

/** The example night: read, written out, read back; and the ways in which a file may differ from it. */
class ReadingsFilesTest {
    private static final String NAME = "drill-night.readings.csv";
    private static final double EXACT = 1e-9;

    private final Kit kit = Examples.kit("drill-night.kit.yaml").kit();

    @Test
    void exampleSaysWhatItSaysHolds() {
        List<Reading> readings = ReadingParser.parse(Examples.readings(NAME), kit, NAME);
        assertThat(readings)
                .hasSize(9)
                .extracting(Reading::id)
                .containsExactly("1", "2", "3", "4", "5", "6", "7", "8", "9");
        Reading seventh = readings.get(6);
        assertThat(seventh.shown().pump().psi()).isCloseTo(203, within(EXACT));
        assertThat(seventh.shown().tip().orElseThrow().psi()).isCloseTo(50, within(EXACT));
        assertThat(seventh.shown().flow().orElseThrow().gpm()).isCloseTo(169, within(EXACT));
        assertThat(seventh.laid().length().feet()).isCloseTo(550, within(EXACT));
        assertThat(seventh.laid().rise().orElseThrow().feet()).isCloseTo(8, within(EXACT));
        assertThat(seventh.laid().engine()).contains("engine-41");
        assertThat(seventh.with())
                .isEqualTo(new ReadWith(Optional.of("gauge-a"), Optional.of("gauge-b"), Optional.of("meter-1")));
    }

    @Test
    void readBackHolds() {
        ReadingsTable table = Examples.readings(NAME);
        String written = ReadingsFile.write(table);
        assertThat(ReadingsFile.read(written, NAME)).isEqualTo(table);
        assertThat(written).isEqualTo(Examples.text(NAME));
    }

    @Test
    void byteOrderMarkAndWindowsLineEndsHold() {
        String windows = "\uFEFF" + Examples.text(NAME).replace("\n", "\r\n");
        assertThat(ReadingsFile.read(windows, NAME)).isEqualTo(Examples.readings(NAME));
    }

    @Test
    void otherOrderAndOwnColumnsAreKeptHolds() {
        String csv = """
                wind,pump [bar],nozzle,reading,hose,discharge,flow [L/min],length [m],note

                north,5,seven-eighths,1,attack-175,crosslay-1,575,45.72,"a ""quoted"", long
                note"
                ,6,seven-eighths,2,attack-175,crosslay-1,610,45.72,
                """;
        ReadingsTable table = ReadingsFile.read(csv, "n");
        assertThat(table.columns()).startsWith("wind", "pump [bar]").hasSize(9);
        assertThat(table.rows().get(0).cell("wind")).isEqualTo("north");
        assertThat(table.rows().get(0).cell("note")).isEqualTo("a \"quoted\", long\nnote");
        assertThat(table.rows()).extracting(ReadingsTable.Row::line).containsExactly(3, 5);
        String written = ReadingsFile.write(table);
        assertThat(ReadingsFile.read(written, "n").rows().get(0).cells())
                .isEqualTo(table.rows().get(0).cells());
        List<Reading> readings = ReadingParser.parse(table, kit, "n");
        assertThat(readings.get(0).shown().pump().bar()).isCloseTo(5, within(EXACT));
        assertThat(readings.get(0).shown().tip()).isEmpty();
        assertThat(readings.get(0).laid().rise()).isEmpty();
        assertThat(readings.get(0).with().pumpGauge()).isEmpty();
    }

    @Test
    void oneTypedRowIsReadAsInAFileHolds() {
        ReadingsTable table = Examples.readings(NAME);
        List<Reading> all = ReadingParser.parse(table, kit, NAME);
        for (int i = 0; i < all.size(); i++) {
            var typed = new ReadingsTable.Row(0, table.rows().get(i).cells());
            assertThat(ReadingParser.parse(typed, kit, "row")).isEqualTo(all.get(i));
        }
        var half = new ReadingsTable.Row(0, Map.of("reading", "1", "pump [psi]", "90 psi"));
        assertThatThrownBy(() -> ReadingParser.parse(half, kit, "row"))
                .hasMessage(
                        "row, reading 1, discharge: discharge is missing; what would do: one that the kit has: crosslay-1.");
    }

    @Test
    void staticReadingsAndChainsHold() {
        String csv = """
                reading,discharge,hose,nozzle,setting,pump [psi],tip [psi],flow [gpm],mid [psi],mid at [ft],intake [psi],lay,doubt
                s,crosslay-1,3 x attack-175 + 100 ft attack-175,seven-eighths,shut,60,61,0,,,35,a,
                1,crosslay-1,3 x attack-175 + 100 ft attack-175,seven-eighths,,100,50,,70,150,35,a,yes
                """;
        List<Reading> readings = ReadingParser.parse(ReadingsFile.read(csv, "n"), kit, "n");
        assertThat(readings.get(0).laid().shut()).isTrue();
        assertThat(readings.get(0).laid().setting()).isEmpty();
        assertThat(readings.get(0).laid().lay()).isEqualTo("a");
        assertThat(readings.get(1).laid().hose()).hasSize(2);
        assertThat(readings.get(1).laid().length().feet()).isCloseTo(250, within(EXACT));
        assertThat(readings.get(1).shown().mid().orElseThrow().fromPump().feet())
                .isCloseTo(150, within(EXACT));
        assertThat(readings.get(1).shown().intake().orElseThrow().psi()).isCloseTo(35, within(EXACT));
        assertThat(readings.get(1).doubt()).isTrue();
    }

    @Test
    void dischargeOfSeveralEnginesNeedsItsEngineHolds() {
        Kit two = Examples.kit("drill-night.kit.yaml")
                .withEntry(List.of("engines", "engine-42"), "{ discharges: { crosslay-1: {} } }")
                .kit();
        ReadingsTable table = Examples.readings(NAME);
        assertThatThrownBy(() -> ReadingParser.parse(table, two, NAME))
                .hasMessageContaining("a column 'engine' that says which of engine-41, engine-42");
        String named =
                Examples.text(NAME).replace("reading,", "reading,engine,").replaceAll("(?m)^(\\d),", "$1,engine-42,");
        assertThat(ReadingParser.parse(ReadingsFile.read(named, NAME), two, NAME))
                .allSatisfy(reading -> assertThat(reading.laid().engine()).contains("engine-42"));
    }

    /** What only the analysis can refuse still names file, line, reading and column. */
    @Test
    void impossibleReadingIsPlacedHolds() {
        String swapped = Examples.text(NAME).replace(",72,40,152,", ",40,72,204,");
        ReadingsTable table = ReadingsFile.read(swapped, NAME);
        List<Reading> readings = ReadingParser.parse(table, kit, NAME);
        assertThatThrownBy(() -> {
                    try {
                        DrillAnalysis.of("night", Optional.empty(), kit, readings, Map.of());
                    } catch (InvalidInput impossible) {
                        throw table.placed(impossible, NAME);
                    }
                })
                .isInstanceOf(InvalidInput.class)
                .hasMessageStartingWith(NAME + ", line 2, reading 1, tip: tip pressure cannot be '72");
    }

    @Test
    void dayOfTheNightIsFoundHolds() {
        assertThat(NightDate.find(Examples.readings(NAME), kit)).isEmpty();
        String timed = "reading,time\n1,2026-05-13T00:20\n2,2026-05-12T23:50\n3,19:40\n";
        assertThat(NightDate.find(ReadingsFile.read(timed, "n"), kit)).contains(LocalDate.of(2026, 5, 12));
        String abroad = "reading,time\n1,2026-05-13T01:20:00Z\n";
        assertThat(NightDate.find(ReadingsFile.read(abroad, "n"), kit)).contains(LocalDate.of(2026, 5, 12));
    }
}
