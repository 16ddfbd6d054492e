package org.hosewright.ledger.trial;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.hosewright.ledger.canonical.Digest;

/** Which label stands for which kind, with what opens it before the trial is open.
 *
 * <p>The code's hash makes the key's own hash in the history more than a guess among a few orders.
 *
 * @param kinds kind by label
 * @param codeHash SHA-256 of the holder's code, in hexadecimal
 */
public record TrialKey(Map<String, String> kinds, String codeHash) {
    public TrialKey {
        kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
    }

    /** A key that a code opens. */
    public static TrialKey of(Map<String, String> kinds, String code) {
        return new TrialKey(kinds, hash(code));
    }

    public boolean opensWith(String code) {
        return MessageDigest.isEqual(
                codeHash.getBytes(StandardCharsets.US_ASCII), hash(code).getBytes(StandardCharsets.US_ASCII));
    }

    /** Dashes, spaces and small letters make no difference. */
    private static String hash(String code) {
        return Digest.ofText(code.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT));
    }
}
