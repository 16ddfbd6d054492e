package org.hosewright.files.kit;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.hosewright.files.plain.CanonicalJson;
import org.hosewright.ledger.kit.Kit;

/** The short code of what a kit says: kits that say the same bear the same code, however they are written. */
public final class Revision {
    private static final int DIGITS = 8;

    private Revision() {}

    /** The code of a kit: the first eight hexadecimal digits of the SHA-256 of its canonical JSON (RFC 8785). */
    public static String of(Kit kit) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(CanonicalJson.bytes(KitTree.of(kit)));
            return HexFormat.of().formatHex(hash).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
