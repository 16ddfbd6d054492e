package org.hosewright.acceptance.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hosewright.acceptance.process.Hosewright.example;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example night again, had the tip gauge sat on a side tap, which misses the velocity head there. */
final class SideTapProcessTest {
    @TempDir
    private Path folder;

    @Test
    void sideTapChangesTheResultHolds() throws Exception {
        var night = analyse(example("drill-night.side-tap.kit.yaml"));
        assertThat(night.at("/hoses/attack-175/loss/value").asDouble()).isBetween(7.7, 8.7);
        assertThat(night.at("/discharges/crosslay-1/loss/value").asDouble()).isBetween(0.0, 1.2);
        assertThat(night.at("/meters/meter-1/factor/value").asDouble()).isBetween(0.97, 1.015);
        JsonNode at550 = night.at("/rule/2");
        assertThat(at550.at("/length/value").asDouble()).isBetween(549.9, 550.1);
        assertThat(at550.at("/neededPump/value").asDouble()).isBetween(161.0, 171.0);
    }

    @Test
    void unknownInsideDiameterWithholdsHolds() throws Exception {
        var kit = Files.readString(Hosewright.EXAMPLES.resolve("drill-night.side-tap.kit.yaml"))
                .replace("tap: side 1.5 in", "tap: side");
        Files.writeString(folder.resolve("unknown.yaml"), kit);
        assertThat(kit).contains("tap: side,");
        var night = analyse("unknown.yaml");
        assertThat(night.path("hoses").has("attack-175")).isFalse();
        assertThat(night.path("discharges").has("crosslay-1")).isFalse();
        assertThat(night.path("withheld")).isNotEmpty();
        assertThat(night.path("withheld").toString())
                .contains("inside diameter")
                .contains("%");
    }

    private JsonNode analyse(String kit) throws Exception {
        var ran = Hosewright.run(folder, "drill", example("drill-night.readings.csv"), "--kit", kit, "--json");
        assertThat(ran.status()).as(ran.err()).isZero();
        return ran.json();
    }
}
