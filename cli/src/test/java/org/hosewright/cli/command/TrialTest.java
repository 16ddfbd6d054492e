package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A blind trial from its sheet to its verdict. */
final class TrialTest {
    @TempDir
    private Path folder;

    @Test
    void verdictOfATrialHolds() throws IOException {
        Path relays = folder.resolve("relays.csv");
        Files.writeString(
                relays,
                "label,lay,loss [psi]\nA,1,42\nB,2,48\nA,3,43\nB,4,47\nB,5,49\nA,6,41\nA,7,42\nB,8,48\nA,9,42\nB,10,48\n");
        var ran = Ran.of("trial", relays.toString(), "--over", "300 ft", "--longest", "600 ft", "--step", "1 psi");
        assertThat(ran.status()).isEqualTo(Exit.DONE.status());
        assertThat(ran.out()).startsWith("A loses less than every other.");
        assertThat(ran.out()).contains("A loses 6 psi less than B over 300 ft, between ");
    }

    @Test
    void oneRelayOfEachGivesNoVerdictHolds() throws IOException {
        Path relays = folder.resolve("relays.csv");
        Files.writeString(relays, "label,lay,loss [psi]\nA,1,42\nB,2,60\n");
        var ran = Ran.of("trial", relays.toString(), "--over", "300 ft", "--longest", "600 ft");
        assertThat(ran.status()).isEqualTo(Exit.DONE.status());
        assertThat(ran.out()).startsWith("No verdict yet");
    }

    @Test
    void headWithoutUnitIsRefused() throws IOException {
        Path relays = folder.resolve("relays.csv");
        Files.writeString(relays, "label,lay,loss\nA,1,42\n");
        var ran = Ran.of("trial", relays.toString(), "--over", "300 ft", "--longest", "600 ft");
        assertThat(ran.status()).isEqualTo(Exit.REFUSED.status());
        assertThat(ran.err()).contains("loss [psi]");
    }

    /** The sheet shows labels only; the key lies in its own file, and a file that is there is not replaced. */
    @Test
    void blindSheetKeepsTheKeyApartHolds() throws IOException {
        Path key = folder.resolve("key.csv");
        List<String> words = List.of(
                "blind",
                "old",
                "lent",
                "--find",
                "5 psi",
                "--scatter",
                "3 psi",
                "--seed",
                "7",
                "--key",
                key.toString());
        var ran = Ran.of(words.toArray(String[]::new));
        assertThat(ran.status()).isEqualTo(Exit.DONE.status());
        assertThat(ran.out())
                .startsWith("8 re-lays of each")
                .contains("lay 16 ")
                .doesNotContain("lent");
        assertThat(Files.readString(key)).startsWith("label,kind\nA,").contains("\"old\"", "\"lent\"");
        assertThat(Ran.of(words.toArray(String[]::new)).status()).isEqualTo(Exit.REFUSED.status());
    }
}
