package org.hosewright.documents.press;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A number made from a text: another text, another number. */
record Fingerprint(long number) {
    static Fingerprint of(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return new Fingerprint(ByteBuffer.wrap(digest).getLong());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }

    /** Eight characters of it, as people compare them by eye: "7c1f-09ae". */
    String code() {
        String hex = HexFormat.of().toHexDigits(number);
        return hex.substring(0, 4) + "-" + hex.substring(4, 8);
    }
}
