package org.hosewright.ledger.exchange;

import org.hosewright.ledger.canonical.Digest;

/** A handover whose signature was verified.
 *
 * @param handover what it says
 * @param key the key that signed it, 64 hexadecimal digits
 * @param text the file, character for character
 */
public record SignedHandover(Handover handover, String key, String text) {
    private static final int CHECK_DIGITS = 16;

    public Fingerprint fingerprint() {
        return Fingerprint.ofDigest(Digest.ofHex(key));
    }

    /** The check of the whole file, which its printed sheet bears too. */
    public String check() {
        return Digest.ofText(text).substring(0, CHECK_DIGITS);
    }
}
