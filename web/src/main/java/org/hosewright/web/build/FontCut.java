package org.hosewright.web.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A font file cut down to the characters that the pages write.
 *
 * @param source the whole font in its jar
 * @param name the cut file
 */
record FontCut(String source, String name) {
    private static final String FAMILY = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed";

    /** The two weights. */
    static final List<FontCut> ALL =
            List.of(new FontCut(FAMILY + ".ttf", "text.ttf"), new FontCut(FAMILY + "-Bold.ttf", "text-bold.ttf"));

    /** Latin for names of companies and people, first and last character. */
    private static final int[][] RANGES = {
        {0x20, 0x7e}, {0xa0, 0x17f}, {0x2150, 0x215e}, {0x2070, 0x2079}, {0x2080, 0x2089}
    };

    private static final String SIGNS =
            "\u2044\u2212\u2013\u2014\u2018\u2019\u201c\u201d\u2026\u2032\u2033\u2264\u2265\u2248\u221a"
                    + "\u2190\u2191\u2192\u2193\u25b2\u25bc\u25cf\u25cb\u25c6\u25c7\u2713\u2717\u0394\u03a3\u03c3\u03bc\u20ac\u202f\u2009";

    void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (InputStream whole = Objects.requireNonNull(FontCut.class.getResourceAsStream(source), source);
                OutputStream cut = Files.newOutputStream(folder.resolve(name))) {
            var subset = new TTFSubsetter(new TTFParser().parse(new RandomAccessReadBuffer(whole)));
            for (int[] range : RANGES) {
                for (int character = range[0]; character <= range[1]; character++) {
                    subset.add(character);
                }
            }
            SIGNS.codePoints().forEach(subset::add);
            subset.writeToStream(cut);
        }
    }
}
