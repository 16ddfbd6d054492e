package org.hosewright.acceptance.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hosewright.acceptance.process.Hosewright.example;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad input ends with status 1, one sentence that names the place and what would do, and nothing on standard output. */
final class RefusalProcessTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "350 kPa | 350 | line 10 | at",
                "14.5 kPa / 100 m | 14.5 furlong / 100 m | line 6 | loss",
                "bore: 19 mm | bore: 19 kPa | line 10 | bore",
                "service-test: 1500 kPa | service-test: -1500 kPa | line 8 | service-test",
                "hose: 3 x delivery-45 | hose: 3 x delivery-54 | line 19 | delivery-54",
            })
    void badKitRefused(String right, String wrong, String line, String names) throws Exception {
        var kit = Files.readString(Hosewright.EXAMPLES.resolve("vale.kit.yaml"));
        assertThat(kit).contains(right);
        Files.writeString(folder.resolve("bad.kit.yaml"), kit.replace(right, wrong));
        var ran = Hosewright.run(folder, "reach", "--kit", "bad.kit.yaml");
        refused(ran, "bad.kit.yaml", line, names, "what would do");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,crosslay-1,attack-175,150 | 1,crosslay-1,attack-571,150 | line 2, reading 1 | attack-571",
                "9,crosslay-1 | 8,crosslay-1 | line 10 | 8",
                "4,crosslay-1,attack-175,350,0,seven-eighths,138,50,171 "
                        + "| 4,crosslay-1,attack-175,350,0,seven-eighths,138,250,171 | 4 | tip",
                "4,crosslay-1,attack-175,350,0,seven-eighths,138,50,171 "
                        + "| 4,crosslay-1,attack-175,350,0,seven-eighths,138,50,0 | 4 | flow",
                "pump [psi] | pump | pump | unit",
                "pump [psi], | note2, | pump | column",
            })
    void badReadingsRefused(String right, String wrong, String place, String names) throws Exception {
        var csv = Files.readString(Hosewright.EXAMPLES.resolve("drill-night.readings.csv"));
        assertThat(csv).contains(right);
        Files.writeString(folder.resolve("bad.csv"), csv.replace(right, wrong));
        var ran = Hosewright.run(
                folder, "drill", "bad.csv", "--kit", example("drill-night.kit.yaml"), "--accept", "new.yaml");
        refused(ran, place, names, "what would do");
        assertThat(folder.resolve("new.yaml")).doesNotExist();
    }

    @Test
    void fileThatIsNoTextRefused() throws Exception {
        var bytes = new byte[1000];
        Arrays.fill(bytes, (byte) 0xff);
        Files.write(folder.resolve("picture.csv"), bytes);
        refused(drill("picture.csv"), "picture.csv", "text");
    }

    @Test
    void fiftyMegabytesRefused() throws Exception {
        Files.write(folder.resolve("big.csv"), new byte[50_000_000]);
        refused(drill("big.csv"), "big.csv", "at most 2 MB");
    }

    private Hosewright drill(String readings) throws Exception {
        return Hosewright.run(folder, "drill", readings, "--kit", example("drill-night.kit.yaml"));
    }

    private static void refused(Hosewright ran, String... says) {
        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(says).doesNotContain("Exception");
        assertThat(ran.err().strip().lines()).hasSize(1);
    }
}
