package org.hosewright.files.kit;

import org.hosewright.ledger.canonical.Digest;
import org.hosewright.ledger.kit.Kit;

/** The short code of what a kit says: kits that say the same bear the same code, however they are written. */
public final class Revision {
    private static final int DIGITS = 8;

    private Revision() {}

    /** The code of a kit: the first eight hexadecimal digits of the SHA-256 of its canonical JSON (RFC 8785). */
    public static String of(Kit kit) {
        return Digest.of(KitTree.of(kit)).substring(0, DIGITS);
    }
}
