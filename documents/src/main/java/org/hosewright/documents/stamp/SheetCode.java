package org.hosewright.documents.stamp;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;

/** What the square code on a sheet says: which order it is of, for which engine, and the check code. No address.
 *
 * @param order number of the order
 * @param engine the engine's id; several joined by "+"
 * @param check the order's short code
 */
public record SheetCode(long order, String engine, String check) {
    private static final Pattern FORM =
            Pattern.compile("HOSEWRIGHT 1;order=(\\d{1,9});engine=([a-z0-9+-]{1,200});check=([0-9a-f]{8})");

    /** The text that is encoded. */
    public String text() {
        return "HOSEWRIGHT 1;order=" + order + ";engine=" + engine + ";check=" + check;
    }

    /** The code that a text is.
     *
     * @throws InvalidInput it is the text of something else
     */
    public static SheetCode parse(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new InvalidInput("code of a sheet", text, "the text of the square code on a printed order", "");
        }
        return new SheetCode(Long.parseLong(form.group(1)), form.group(2), form.group(3));
    }

    /** The code that a photograph of a sheet shows; empty where none can be made out. */
    public static Optional<SheetCode> find(byte[] photograph) {
        return Photograph.findText(photograph).map(SheetCode::parse);
    }
}
