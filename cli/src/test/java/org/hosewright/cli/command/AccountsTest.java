package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Accounts from the machine that keeps the record. */
final class AccountsTest {
    private static final String PASSWORD = "quiet lantern brindle ford";

    @TempDir
    private Path folder;

    @Test
    void firstAccountOwnsTheRecordHolds() {
        assertThat(people("list").out()).contains("Nobody has an account.");
        Ran refused = typing(PASSWORD, "add", "A. Fenn", "--hats", "recorder,operator");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("owner");
        assertThat(typing(PASSWORD, "add", "A. Fenn").status()).isZero();
        Ran second = typing(PASSWORD, "add", "B. Orr", "--hats", "recorder,apparatus officer");
        assertThat(second.out()).contains("chooses another password");
        assertThat(people("list").out())
                .contains("A. Fenn: recorder, analyst, approver, apparatus officer, operator, owner")
                .contains("B. Orr: recorder, apparatus officer");
    }

    @Test
    void unknownHatAndWeakPasswordRefused() {
        assertThat(typing(PASSWORD, "add", "A. Fenn", "--hats", "chief").err()).contains("what would do");
        Ran weak = typing("letmein", "add", "A. Fenn");
        assertThat(weak.status()).isEqualTo(1);
        assertThat(weak.err()).contains("12 to 128 characters").doesNotContain("letmein");
        assertThat(typing(PASSWORD, "password", "Nobody").status()).isEqualTo(1);
    }

    @Test
    void lanWithoutAccountsRefused() {
        Ran ran = Ran.of("serve", "--lan", "--port", "0", "--data", folder.toString());
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).contains("accounts first");
        Ran alone = Ran.of("serve", "--proxy", "https://hosewright.example", "--data", folder.toString());
        assertThat(alone.err()).contains("together with --lan");
    }

    @Test
    void storeThatIsNoDatabaseRefused() {
        Ran ran = Ran.of("audit", "--store", "jdbc:other://host/x?password=hidden");
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).contains("jdbc:postgresql:").doesNotContain("hidden");
    }

    private Ran people(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "people";
        System.arraycopy(words, 0, all, 1, words.length);
        all[words.length + 1] = "--data";
        all[words.length + 2] = folder.toString();
        return Ran.of(all);
    }

    private Ran typing(String password, String... words) {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream((password + "\n").getBytes(StandardCharsets.UTF_8)));
            String[] all = new String[words.length + 1];
            System.arraycopy(words, 0, all, 0, words.length);
            all[words.length] = "--password-stdin";
            return people(all);
        } finally {
            System.setIn(before);
        }
    }
}
