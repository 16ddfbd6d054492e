package org.hosewright.acceptance.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The scripts at the door say plainly what a machine lacks. */
final class ScriptTest {
    @TempDir
    private Path bench;

    @Test
    void machineWithoutJavaRefused() throws Exception {
        var ran = ScriptRun.of(bench, Map.of(), "hosewright", "--version");
        assertThat(ran.status()).isEqualTo(4);
        assertThat(ran.err()).contains("needs Java 17 or later and found none.").contains("JAVA_HOME");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void tooOldJavaRefused() throws Exception {
        var old = javaThatSays("openjdk version \"11.0.2\" 2019-01-15");
        var ran = ScriptRun.of(bench, Map.of("JAVA_HOME", old.toString()), "hosewright", "--version");
        assertThat(ran.status()).isEqualTo(4);
        assertThat(ran.err()).contains(old + " is version 11");
    }

    @Test
    void wrongWordsToTheCheckRefused() throws Exception {
        var ran = ScriptRun.of(bench, Map.of(), "check", "--lnog");
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).contains("Usage: ./check");
    }

    @Test
    void realDataWithoutFolderRefused() throws Exception {
        var ran = ScriptRun.of(
                bench,
                Map.of(),
                "check",
                "--real-data",
                bench.resolve("nowhere").toString());
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).contains("there is no folder").contains("nowhere");
    }

    private Path javaThatSays(String version) throws IOException {
        var home = bench.resolve("an old java");
        Programs.write(home.resolve("bin/java"), "echo '" + version + "' >&2");
        return home;
    }
}
