package org.hosewright.files.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.night.ReadWith;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.Examples;
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
}
