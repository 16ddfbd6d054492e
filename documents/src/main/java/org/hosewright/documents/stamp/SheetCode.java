package org.hosewright.documents.stamp;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;

/** What the square code on a sheet says: which order it is of, for which engine, and the check code. No address.
 *
 * @param order number of the order
 * @param engine the engine's id; several joined by "+"; "all" for more than a small code holds
 * @param check the order's short code
 */
public record SheetCode(long order, String engine, String check) {
    private static final Pattern FORM =
            Pattern.compile("HOSEWRIGHT 1;order=(\\d{1,9});engine=([a-z0-9+-]{1,200});check=([0-9a-f]{8})");

    /** Longer lists of engines are no use on a square that a phone is to read. */
    private static final int MOST_LETTERS = 60;

    private static final String ALL = "all";

    /** The code of a sheet for several engines: their ids, or "all" where those are too many for a square. */
    public static SheetCode ofEngines(long order, List<String> engines, String check) {
        String joined = String.join("+", engines);
        return new SheetCode(order, joined.length() > MOST_LETTERS ? ALL : joined, check);
    }

    /** The same order's code for one engine. */
    public SheetCode ofEngine(String id) {
        return new SheetCode(order, id, check);
    }

    /** What it says, for those who cannot see it. */
    public String says() {
        return "Square code: order " + order + ", " + engine + ", " + check + ".";
    }

    /** Whether the sheet is one of an engine's. */
    public boolean isOf(String id) {
        return engine.equals(ALL) || List.of(engine.split("\\+", -1)).contains(id);
    }

    /** The text that is encoded. */
    public String text() {
        return "HOSEWRIGHT 1;order=" + order + ";engine=" + engine + ";check=" + check;
    }

    /** The code that a text is.
     *
     * @throws InvalidInput it is the text of something else
     */
    public static SheetCode parse(String text) {
        return findIn(text)
                .orElseThrow(() -> new InvalidInput(
                        "code of a sheet", text, "the text of the square code on a printed order", ""));
    }

    /** The code that a text is; empty where it is the text of something else. */
    static Optional<SheetCode> findIn(String text) {
        Matcher form = FORM.matcher(text.strip());
        return form.matches()
                ? Optional.of(new SheetCode(Long.parseLong(form.group(1)), form.group(2), form.group(3)))
                : Optional.empty();
    }

    /** The code that a photograph of a sheet shows; empty where none can be made out. */
    public static Optional<SheetCode> find(byte[] photograph) {
        return Photograph.findText(photograph).map(SheetCode::parse);
    }
}
