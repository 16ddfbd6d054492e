package org.hosewright.files.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Random;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.SignedHandover;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ExchangeFileTest {
    private static final long SEED = 20261125;

    /** The order of the group that Ed25519 works in. @source RFC 8032, section 5.1 */
    private static final BigInteger ORDER =
            BigInteger.TWO.pow(252).add(new BigInteger("27742317777372353535851937790883648493"));

    @TempDir
    private Path folder;

    private SignedHandover signed;

    @BeforeEach
    void sign() {
        signed = ExchangeFile.write(AldwickVale.handover(), new KeyFile(folder));
    }

    @Test
    void whatIsWrittenReadsBackTheSameHolds() {
        SignedHandover read = read(signed.text());
        assertThat(HandoverText.write(read.handover())).isEqualTo(HandoverText.write(AldwickVale.handover()));
        assertThat(read.key()).isEqualTo(signed.key());
        assertThat(read.check()).isEqualTo(signed.check());
    }

    @Test
    void aFileWithAnyByteChangedIsRefused() {
        byte[] file = bytes(signed.text());
        for (int at = 0; at < file.length; at++) {
            requireRefused(file, at, file[at] ^ 1);
        }
    }

    @Test
    @Tag("long")
    void aFileWithManyOtherBytesAtEachPlaceIsRefused() {
        byte[] file = bytes(signed.text());
        Random random = new Random(SEED);
        System.out.println("seed " + SEED);
        for (int at = 0; at < file.length; at++) {
            for (int i = 0; i < 16; i++) {
                requireRefused(file, at, file[at] + 1 + random.nextInt(255));
            }
        }
    }

    @Test
    void aFileWithABytePutInOrLeftOutIsRefused() {
        String text = signed.text();
        for (int at = 0; at < text.length(); at += 7) {
            String head = text.substring(0, at);
            requireRefused(head + text.substring(at + 1));
            requireRefused(head + " " + text.substring(at));
        }
        requireRefused("\uFEFF" + text);
        requireRefused(text + "\n");
        requireRefused(text.replace("\n", "\r\n"));
        requireRefused(text.substring(0, text.length() - 1));
    }

    @Test
    void anotherSpellingOfASignatureIsRefused() {
        int at = signed.text().lastIndexOf(' ') + 1;
        String digits = signed.text().substring(at, at + 128);
        requireRefused(signed.text().replace(digits, digits.toUpperCase(Locale.ROOT)));
        byte[] half = HexFormat.of().parseHex(digits.substring(64));
        BigInteger s = new BigInteger(1, turned(half)).add(ORDER);
        String more = HexFormat.of().formatHex(turned(padded(s)));
        requireRefused(signed.text().replace(digits.substring(64), more));
    }

    @Test
    void anotherEditionIsRefused() {
        assertThatThrownBy(() -> read(signed.text().replace("exchange 1\n", "exchange 2\n")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("edition")
                .hasMessageContaining("newer version of this program");
    }

    @Test
    void aLargeFileIsRefused() {
        assertThatThrownBy(() -> ExchangeFile.read(new byte[ExchangeFile.LIMIT + 1], "x"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("200000");
    }

    @Test
    void aNumberWithoutItsUnitIsRefused() {
        requireContentRefused("\"600 kPa\"", "\"600\"", "kPa");
        requireContentRefused("\"600 kPa\"", "600", "a number with its unit");
        requireContentRefused("\"452 L/min\"", "\"452\"", "L/min");
        requireContentRefused("\"64 mm instantaneous\"", "\"64 instantaneous\"", "coupling");
        requireContentRefused("\"75 m\"", "\"3\"", "ft");
        requireContentRefused("\"600 kPa\"", "\"600 mm\"", "kPa");
        requireContentRefused("\"600 kPa\"", "\"0 kPa\"", "above 0");
    }

    @Test
    void wordsThatHideOrTurnOthersAreRefused() {
        requireContentRefused("T. Marsh", "T. \u202EhsraM", "plain words");
        requireContentRefused("T. Marsh", "T.\\nMarsh", "plain words");
        requireContentRefused("T. Marsh", "x".repeat(101), "plain words");
        requireContentRefused("\"by\"", "\"bye\"", "key");
    }

    /** A content that its own company signed, and that is refused all the same. */
    private void requireContentRefused(String part, String instead, String says) {
        String content = HandoverText.write(AldwickVale.handover());
        assertThat(content).contains(part);
        KeyFile key = new KeyFile(folder);
        String head =
                "hosewright exchange 1\n" + content.replace(part, instead) + "\nkey ed25519 " + key.publicKey() + "\n";
        assertThatThrownBy(() -> read(head + "signature " + key.sign(bytes(head)) + "\n"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(says);
    }

    private static void requireRefused(byte[] file, int at, int value) {
        byte[] changed = file.clone();
        changed[at] = (byte) value;
        assertThatThrownBy(() -> ExchangeFile.read(changed, "neighbour.exchange"))
                .as("byte %d changed to %d", at, value)
                .isInstanceOf(InvalidInput.class);
    }

    private static void requireRefused(String text) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(InvalidInput.class);
    }

    private static SignedHandover read(String text) {
        return ExchangeFile.read(bytes(text), "neighbour.exchange");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] padded(BigInteger number) {
        byte[] whole = new byte[32];
        byte[] digits = number.toByteArray();
        System.arraycopy(digits, 0, whole, 32 - digits.length, digits.length);
        return whole;
    }

    private static byte[] turned(byte[] bytes) {
        byte[] turned = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            turned[i] = bytes[bytes.length - 1 - i];
        }
        return turned;
    }
}
