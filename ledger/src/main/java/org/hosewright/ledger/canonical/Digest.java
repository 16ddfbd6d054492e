package org.hosewright.ledger.canonical;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 of something, in lower-case hexadecimal digits. @source FIPS 180-4 */
public final class Digest {
    /** How many digits a digest has. */
    public static final int DIGITS = 64;

    private Digest() {}

    /** The digest of a value's canonical JSON (RFC 8785). */
    public static String of(Object value) {
        return of(CanonicalJson.bytes(value));
    }

    /** The digest of a text, as UTF-8. */
    public static String ofText(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The digest of bytes that are written as hexadecimal digits. */
    public static String ofHex(String hex) {
        return of(HexFormat.of().parseHex(hex));
    }

    private static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
