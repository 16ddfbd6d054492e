package org.hosewright.acceptance.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hosewright.acceptance.process.Hosewright.example;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example walk, whose true length and rise its file names: 410 ft, 3.7 m. */
final class WalkProcessTest {
    private static final double TRUE_ft = 410;
    private static final double TRUE_RISE_ft = 12.1;

    /** Lengths written in feet to many digits [ft]. */
    private static final double WRITTEN_ft = 0.01;

    @TempDir
    private Path folder;

    @Test
    void walkWithPackageHolds() throws Exception {
        Path out = folder.resolve("marks.geojson");
        var ran = walkWithPackage("--out", out.toString(), "--json");
        assertThat(ran.status()).as(ran.err()).isEqualTo(0);
        var walk = ran.json();
        double error = walk.at("/distance/standardError").asDouble();
        assertThat(walk.at("/distance/value").asDouble()).isCloseTo(TRUE_ft, within(2 * error));
        double riseError = walk.at("/rise/standardError").asDouble();
        assertThat(walk.at("/rise/value").asDouble()).isCloseTo(TRUE_RISE_ft, within(2 * riseError));
        assertThat(walk.at("/riseSource").asText()).isEqualTo("barometer");
        assertThat(walk.at("/marks")).hasSize(walk.at("/sections").asInt());
        assertThat(walk.at("/marks/3/section").asInt()).isEqualTo(4);
        assertThat(walk.at("/marks/3/hose/value").asDouble()).isCloseTo(200, within(WRITTEN_ft));
        for (String key : new String[] {"lat", "lon", "elevation", "pump", "flow", "limit"}) {
            assertThat(walk.at("/marks/3").has(key)).as(key).isTrue();
        }
        assertThat(walk.at("/raw/value").asDouble())
                .isGreaterThan(walk.at("/distance/value").asDouble());
        String text = walkWithPackage("--measured", "410 \u00b1 2 ft").out();
        assertThat(text).contains("ordered", "corrected by what was measured: tape");
        assertThat(Files.readString(out)).contains("FeatureCollection", "\"mark\" : \"corner\"", "pump ");
    }

    @Test
    void refusedWalksHold() throws Exception {
        Path hostile = folder.resolve("hostile.gpx");
        Files.writeString(hostile, "<!DOCTYPE gpx [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><gpx>&a;</gpx>");
        var refused = Hosewright.run(folder, "walk", hostile.toString());
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("hostile.gpx, line 1", "document type");
        var halfSaid = Hosewright.run(
                folder, "walk", example("garden-court.walk.gpx"), "--kit", example("garden-court.kit.yaml"));
        assertThat(halfSaid.status()).isEqualTo(2);
        var bare = Hosewright.run(folder, "walk", example("garden-court.walk.gpx"), "--section", "50");
        assertThat(bare.status()).isEqualTo(1);
        assertThat(bare.err()).contains("--section");
    }

    private Hosewright walkWithPackage(String... more) throws Exception {
        List<String> words = new ArrayList<>(List.of("walk", example("garden-court.walk.gpx")));
        words.addAll(List.of("--kit", example("garden-court.kit.yaml"), "--package", "crosslay-1-200"));
        words.addAll(List.of(more));
        return Hosewright.run(folder, words.toArray(new String[0]));
    }
}
