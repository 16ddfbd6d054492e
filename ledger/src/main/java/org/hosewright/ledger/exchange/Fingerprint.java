package org.hosewright.ledger.exchange;

import java.util.Locale;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;

/** The fingerprint of a company's key: what two people read to each other by telephone.
 *
 * @param digits 32 hexadecimal digits, small letters: the first half of the key's SHA-256
 */
public record Fingerprint(String digits) {
    private static final int DIGITS = 32;
    private static final int GROUP = 4;
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{" + DIGITS + "}");

    public Fingerprint {
        if (!FORM.matcher(digits).matches()) {
            throw new InvalidInput(
                    "fingerprint", digits, "eight groups of four, each 0 to 9 or a to f, as it was read out", "");
        }
    }

    /** The fingerprint of a digest of the key. */
    public static Fingerprint ofDigest(String sha256) {
        return new Fingerprint(sha256.substring(0, DIGITS));
    }

    /** What a person typed; spaces, hyphens and capital letters do not matter. */
    public static Fingerprint parse(String typed) {
        return new Fingerprint(typed.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT));
    }

    /** As it is read out: "3f2a 91c0 …", eight groups. */
    public String groups() {
        StringBuilder groups = new StringBuilder();
        for (int i = 0; i < DIGITS; i += GROUP) {
            groups.append(i == 0 ? "" : " ").append(digits, i, i + GROUP);
        }
        return groups.toString();
    }

    /** The first group: enough to tell neighbours apart in a name, never enough to trust. */
    public String start() {
        return digits.substring(0, 2 * GROUP);
    }
}
