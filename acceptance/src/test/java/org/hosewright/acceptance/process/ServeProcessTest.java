package org.hosewright.acceptance.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hosewright.acceptance.process.Hosewright.example;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The web application as a process: started on nothing, killed, started again. */
final class ServeProcessTest {
    @TempDir
    private Path folder;

    @Test
    void demoSurvivesAKillHolds() throws Exception {
        String kit;
        String drills;
        try (var first = Served.demo(folder)) {
            assertThat(first.get("/").statusCode()).isEqualTo(200);
            kit = first.get("/api/v1/kit").body();
            drills = first.get("/api/v1/drills").body();
            assertThat(kit).contains("Brindle Falls Fire Company");
            assertThat(drills).contains("Drill night");
            first.kill();
        }
        try (var second = Served.demo(folder)) {
            assertThat(second.get("/api/v1/kit").body()).isEqualTo(kit);
            assertThat(second.get("/api/v1/drills").body()).isEqualTo(drills);
        }
    }

    @Test
    void takenPortAndTakenFolderRefused() throws Exception {
        try (var first = Served.demo(folder)) {
            var port = Hosewright.run(folder, "serve", "--data", "other", "--port", String.valueOf(first.port()));
            assertThat(port.status()).isEqualTo(4);
            assertThat(port.err()).contains("Another program holds that port");
            var data = Hosewright.run(folder, "serve", "--data", "data", "--port", "0");
            assertThat(data.status()).isEqualTo(4);
            assertThat(data.err()).contains("has this store open");
        }
    }

    @Test
    void wrongUsageRefused() throws Exception {
        var ran = Hosewright.run(folder, "reach", "--kit", example("vale.kit.yaml"), "--celling", "900 kPa");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("--celling").contains("hosewright reach --help");
        assertThat(ran.out()).isEmpty();
    }
}
