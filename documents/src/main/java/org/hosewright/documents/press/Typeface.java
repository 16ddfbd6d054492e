package org.hosewright.documents.press;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** One weight of the family that everything is set in, read from the class path.
 *
 * <p>Text goes to the page as text. Only the words inside a drawing and the stamp are drawn as outlines, from the same
 * file, so that nothing hangs on which typefaces a machine has.
 */
public final class Typeface {
    /** The family's name in style sheets. */
    public static final String FAMILY = "DejaVu Sans Condensed";

    public static final Typeface REGULAR = new Typeface("DejaVuSansCondensed.ttf");
    public static final Typeface BOLD = new Typeface("DejaVuSansCondensed-Bold.ttf");

    private static final String FOLDER = "net/sf/jasperreports/fonts/dejavu/";

    private final byte[] file;
    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    private Typeface(String name) {
        try (InputStream in = Typeface.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("The typeface " + name + " is not on the class path.");
            }
            file = in.readAllBytes();
            font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            glyphs = font.getUnicodeCmapLookup();
            unitsPerEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The font file. */
    InputStream open() {
        return new ByteArrayInputStream(file);
    }

    /** The font as an object, for reading only. */
    TrueTypeFont font() {
        return font;
    }

    /** True where the typeface can set every character of a text. */
    boolean canSet(String text) {
        return text.codePoints().allMatch(c -> glyphs.getGlyphId(c) != 0);
    }

    /** The width of a text, in the unit of its size. */
    public double width(String text, double size) {
        return text.codePoints().mapToDouble(c -> advance(c) * size).sum();
    }

    /** The outline of a text standing on the baseline at the origin, y growing upward. */
    public Path2D outline(String text, double size) {
        Path2D outline = new Path2D.Double();
        double x = 0;
        for (int c : text.codePoints().toArray()) {
            AffineTransform place = AffineTransform.getTranslateInstance(x, 0);
            place.scale(size / unitsPerEm, size / unitsPerEm);
            outline.append(glyph(c).getPathIterator(place), false);
            x += advance(c) * size;
        }
        return outline;
    }

    private synchronized double advance(int character) {
        try {
            return font.getAdvanceWidth(glyphs.getGlyphId(character)) / unitsPerEm;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private synchronized Path2D glyph(int character) {
        try {
            GlyphData data = font.getGlyph().getGlyph(glyphs.getGlyphId(character));
            return data == null ? new Path2D.Double() : data.getPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
