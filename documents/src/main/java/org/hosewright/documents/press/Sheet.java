package org.hosewright.documents.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hosewright.documents.stamp.Stamp;

/** One paper before it is printed.
 *
 * @param title what the paper is, for the reader's window and for a voice
 * @param style names of its style sheets, parted by blanks, each upon the one before
 * @param size paper size as CSS writes it ("letter", "A4 landscape")
 * @param stamp whether it is an order, and the words across each page
 * @param grid where the stamps stand
 * @param body what stands on it
 */
public record Sheet(String title, String style, String size, Stamp stamp, StampGrid grid, Html body) {

    /** A report on whole pages, its parts one below the other. */
    public static Sheet report(String title, String size, Stamp stamp, List<Html> body) {
        return new Sheet(title, "report", size, stamp, StampGrid.WHOLE_PAGE, Html.all(body));
    }

    /** The whole page as XHTML. */
    String xhtml() {
        String css = styles().replace("PAPER-SIZE", size);
        return "<!DOCTYPE html><html lang=\"en\"><head><title>" + Typesetting.escaped(title)
                + "</title><meta name=\"description\" content=\"" + Typesetting.escaped(title) + "\"/><style>"
                + Typesetting.escaped(css) + "</style></head><body>" + body.xml() + "</body></html>";
    }

    private String styles() {
        var all = new StringBuilder(style("paper"));
        for (String name : style.split(" ", -1)) {
            all.append(style(name));
        }
        return all.toString();
    }

    private static String style(String name) {
        try (InputStream in = Sheet.class.getResourceAsStream(name + ".css")) {
            if (in == null) {
                throw new IOException("The style sheet " + name + ".css is not on the class path.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
