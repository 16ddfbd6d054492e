package org.hosewright.documents.stamp;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.Fingerprint;
import org.hosewright.ledger.exchange.SignedHandover;

/** What the square code on a neighbour's sheet says: whose key signed its file, and the check of the file. No address.
 *
 * @param fingerprint of the company that made it
 * @param check of the file, 16 hexadecimal digits
 */
public record HandoverCode(Fingerprint fingerprint, String check) {
    private static final Pattern FORM = Pattern.compile("HOSEWRIGHT 1;key=([0-9a-f]{32});file=([0-9a-f]{16})");

    public static HandoverCode of(SignedHandover signed) {
        return new HandoverCode(signed.fingerprint(), signed.check());
    }

    /** The text that is encoded. */
    public String text() {
        return "HOSEWRIGHT 1;key=" + fingerprint.digits() + ";file=" + check;
    }

    /** True where the sheet is of this file. */
    public boolean isOf(SignedHandover signed) {
        return fingerprint.equals(signed.fingerprint()) && check.equals(signed.check());
    }

    /** The code that a text is.
     *
     * @throws InvalidInput it is the text of something else
     */
    public static HandoverCode parse(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new InvalidInput("code of a sheet", text, "the text of the square code on a neighbour's sheet", "");
        }
        return new HandoverCode(new Fingerprint(form.group(1)), form.group(2));
    }

    /** The code that a photograph of a sheet shows; empty where none can be made out. */
    public static Optional<HandoverCode> find(byte[] photograph) {
        return Photograph.findText(photograph).map(HandoverCode::parse);
    }
}
