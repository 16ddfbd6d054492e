package org.hosewright.files.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class KeyFileTest {
    private static final byte[] CONTENT = "any".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    @Test
    void aKeyIsMadeOnceAndOnlyItsOwnerMayReadItHolds() throws IOException {
        KeyFile key = new KeyFile(folder);
        assertThat(key.exists()).isFalse();
        String shown = key.publicKey();
        assertThat(new KeyFile(folder).publicKey()).isEqualTo(shown);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(KeyFile.NAME))))
                .isEqualTo("rw-------");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve(KeyFile.NAME));
        }
        assertThat(Ed25519.holds(shown, CONTENT, new KeyFile(folder).sign(CONTENT)))
                .isTrue();
    }

    /** RFC 8032, section 7.1, test 2: the message 72 and its signature. */
    @Test
    void aSignatureMatchesPublished() {
        String key = "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c";
        String signature = "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                + "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00";
        assertThat(Ed25519.holds(key, new byte[] {0x72}, signature)).isTrue();
        assertThat(Ed25519.holds(key, new byte[] {0x73}, signature)).isFalse();
    }

    @Test
    void aKeyThatOthersMayReadIsRefused() throws IOException {
        new KeyFile(folder).publicKey();
        Files.setPosixFilePermissions(folder.resolve(KeyFile.NAME), PosixFilePermissions.fromString("rw-r-----"));
        assertThatThrownBy(() -> new KeyFile(folder).publicKey())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("chmod 600");
    }

    @Test
    void aDamagedKeyIsRefusedAndLeftAsItIsAndNeverShownHolds() throws IOException {
        new KeyFile(folder).publicKey();
        Path file = folder.resolve(KeyFile.NAME);
        String whole = Files.readString(file);
        String secret = whole.lines().toList().get(1);
        Files.writeString(file, whole.replace(secret, secret.substring(0, 20)));
        assertThatThrownBy(() -> new KeyFile(folder).publicKey())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("damaged")
                .hasMessageNotContaining(secret.substring(0, 20));
        assertThat(Files.readString(file)).contains(secret.substring(0, 20));
    }

    @Test
    void halvesOfTwoKeysAreRefused() throws IOException {
        new KeyFile(folder).publicKey();
        Path file = folder.resolve(KeyFile.NAME);
        String one = Files.readString(file);
        Files.delete(file);
        new KeyFile(folder).publicKey();
        String other = Files.readString(file);
        Files.writeString(
                file,
                one.substring(0, one.indexOf("-----BEGIN PUBLIC"))
                        + other.substring(other.indexOf("-----BEGIN PUBLIC")));
        assertThatThrownBy(() -> new KeyFile(folder).publicKey())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("do not belong together");
    }
}
