package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Unsigned papers say so, to an eye, to a reader and on every piece. */
class StampTest {
    private static final Map<String, Pdf> PAPERS = Samples.PAPERS;

    /** Where the sheet is cut or folded, how many pieces bear the words of their own. */
    private static final Map<String, Integer> PIECES = Map.of("tags", 3, "tags-si", 1, "pocket", 3, "pocket-si", 2);

    private static final float DPI = 50;

    /** The stamp's fill; paper is white, ink is black. */
    private static final int PALE_FROM = 200;

    private static final int PALE_TO = 245;

    @Test
    void safety03EveryPageSaysUnsigned() {
        PAPERS.forEach((name, paper) -> {
            String words = name.matches("card-si|tags|pocket-si") ? "DEMO" : "UNSIGNED - NOT FOR USE";
            assertThat(paper.pages()).as(name).isNotEmpty().allMatch(page -> page.contains(words));
        });
    }

    @Test
    void safety03EveryPieceThatIsCutOrFoldedSaysUnsigned() {
        PIECES.forEach((name, pieces) -> {
            Matcher words =
                    Pattern.compile("NOT FOR USE").matcher(PAPERS.get(name).text());
            long said = words.results().count();
            // once in the head, once as a sentence, once on each piece
            assertThat(said).as(name).isGreaterThanOrEqualTo(2L + pieces);
        });
    }

    @Test
    void safety03TheStampRunsAcrossThePage() {
        List.of("report", "card", "card-si").forEach(name -> {
            Pdf paper = PAPERS.get(name);
            int pages = paper.pages().size();
            for (int page = 0; page < pages; page++) {
                BufferedImage picture = paper.picture(page, DPI);
                assertThat(quartersWithStamp(picture))
                        .as(name + " page " + (page + 1))
                        .isEqualTo(4);
            }
        });
    }

    @Test
    void safety03TheStampLeavesNumbersBlackOnPale() {
        BufferedImage picture = PAPERS.get("card").picture(0, DPI);
        int darkest = 255;
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                darkest = Math.min(darkest, picture.getRGB(x, y) & 0xff);
            }
        }
        assertThat(darkest).isLessThan(30);
    }

    /** Of four equal parts of the page's rising diagonal, those in which pale ink is met. */
    private static int quartersWithStamp(BufferedImage picture) {
        int met = 0;
        for (int quarter = 0; quarter < 4; quarter++) {
            int pale = 0;
            for (int step = 0; step < 500; step++) {
                double share = 0.1 + 0.8 * (quarter + step / 500.0) / 4;
                int x = (int) (share * (picture.getWidth() - 1));
                int y = (int) ((1 - share) * (picture.getHeight() - 1));
                int grey = picture.getRGB(x, y) & 0xff;
                pale += grey >= PALE_FROM && grey <= PALE_TO ? 1 : 0;
            }
            met += pale > 50 ? 1 : 0;
        }
        return met;
    }
}
