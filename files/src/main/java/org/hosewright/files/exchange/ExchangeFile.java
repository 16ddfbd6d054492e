package org.hosewright.files.exchange;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.CompanyKey;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.exchange.SignedHandover;

/** A handover as a small signed file: four lines of text, of which the last signs the three before it.
 *
 * <pre>
 * hosewright exchange 1
 * {"company":"…", …}                 the handover, canonical JSON (RFC 8785)
 * key ed25519 …                      64 hexadecimal digits
 * signature …                        128 hexadecimal digits
 * </pre>
 */
public final class ExchangeFile {
    /** The most that such a file may hold [bytes]. */
    public static final int LIMIT = 200_000;

    /** How such files end. */
    public static final String SUFFIX = ".exchange";

    private static final int EDITION = 1;
    private static final String HEAD = "hosewright exchange ";
    private static final Pattern EDITION_LINE = Pattern.compile("hosewright exchange ([0-9]{1,9})\n(?s:.*)");
    private static final Pattern FORM = Pattern.compile(
            "(" + HEAD + "[0-9]+\n(\\{[^\n]*\\})\nkey ed25519 ([0-9a-f]{64})\n)signature ([0-9a-f]{128})\n");

    private ExchangeFile() {}

    /** The file of a handover, signed. */
    public static SignedHandover write(Handover handover, CompanyKey key) {
        String shown = key.publicKey();
        String content = HEAD + EDITION + "\n" + HandoverText.write(handover) + "\nkey ed25519 " + shown + "\n";
        String text = content + "signature " + key.sign(content.getBytes(StandardCharsets.UTF_8)) + "\n";
        if (text.getBytes(StandardCharsets.UTF_8).length > LIMIT) {
            throw new InvalidInput("file", "larger than " + LIMIT + " bytes", "fewer packages at once", "");
        }
        return new SignedHandover(handover, shown, text);
    }

    /** Verifies and reads a file; nothing of its content is looked at before its signature holds.
     *
     * @param source its name, for errors
     * @throws InvalidInput too large, another edition, changed in any byte, or its content cannot be used
     */
    public static SignedHandover read(byte[] bytes, String source) {
        if (bytes.length > LIMIT) {
            throw new InvalidInput("size", bytes.length + " bytes", "at most " + LIMIT + " bytes", source);
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (!Arrays.equals(text.getBytes(StandardCharsets.UTF_8), bytes)) {
            throw new InvalidInput("file", "not text", "a text file in UTF-8, as it was made", source);
        }
        requireEdition(text, source);
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw changed(source);
        }
        byte[] content = form.group(1).getBytes(StandardCharsets.UTF_8);
        if (!Ed25519.holds(form.group(3), content, form.group(4))) {
            throw changed(source);
        }
        return new SignedHandover(HandoverText.read(form.group(2), source), form.group(3), text);
    }

    /** What a file says as plain keys and values, with its fingerprint and its check before them. */
    public static Map<String, Object> fields(SignedHandover signed) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("fingerprint", signed.fingerprint().groups());
        fields.put("check", signed.check());
        fields.putAll(HandoverText.fields(signed.handover()));
        return fields;
    }

    private static void requireEdition(String text, String source) {
        Matcher line = EDITION_LINE.matcher(text);
        if (!line.matches()) {
            throw new InvalidInput(
                    "file",
                    text.contains("\r\n") ? "one with changed line ends" : "another kind of file",
                    "a neighbour's exchange file exactly as it was made: have it sent as an attachment",
                    source);
        }
        if (!line.group(1).equals(Integer.toString(EDITION))) {
            throw new InvalidInput(
                    "edition of the file", line.group(1), EDITION + ", or a newer version of this program", source);
        }
    }

    private static InvalidInput changed(String source) {
        return new InvalidInput(
                "signature",
                "one that does not hold",
                "the file exactly as it was made: it was CHANGED on the way, so nothing of it is shown or kept."
                        + " Have it sent again",
                source);
    }
}
