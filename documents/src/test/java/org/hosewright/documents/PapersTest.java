package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.ByteArrayOutputStream;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;

/** What every paper is as a file: tagged, fit to keep, its typefaces inside, the same for the same numbers. */
class PapersTest {
    private static final Map<String, Pdf> PAPERS = Samples.PAPERS;

    /** Source: ISO 14289-1:2014 (PDF/UA-1), as the veraPDF validator reads it */
    @Test
    void accessibilityMatchesPublished() {
        PAPERS.forEach((name, paper) -> assertThat(paper.faults("ua1")).as(name).isEmpty());
    }

    /** Source: ISO 19005-3:2012 (PDF/A-3a), as the veraPDF validator reads it */
    @Test
    void archivingMatchesPublished() {
        PAPERS.forEach((name, paper) -> assertThat(paper.faults("3a")).as(name).isEmpty());
    }

    @Test
    void anUntaggedPaperIsRefused() {
        Pdf bare = new Pdf(PAPERS.get("card").look(document -> {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.STRUCT_TREE_ROOT);
            var out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }));
        assertThat(bare.faults("ua1")).isNotEmpty();
        assertThat(bare.faults("3a")).isNotEmpty();
    }

    @Test
    void typefacesInsideTitleAndLanguageHold() {
        PAPERS.forEach((name, paper) -> paper.look(document -> {
            for (PDPage page : document.getPages()) {
                for (COSName font : page.getResources().getFontNames()) {
                    PDFont used = page.getResources().getFont(font);
                    assertThat(used.isEmbedded())
                            .as(name + " " + used.getName())
                            .isTrue();
                    assertThat(used.getName()).contains("DejaVuSansCondensed");
                }
            }
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentInformation().getTitle()).as(name).isNotBlank();
            return null;
        }));
    }

    /** A character that the typeface lacks is set as a number sign, which no paper uses. */
    @Test
    void noCharacterMissingHolds() {
        PAPERS.forEach((name, paper) -> assertThat(paper.text()).as(name).doesNotContain("#", "\uFFFD"));
    }

    /** What a voice reads follows the page: each name before its numbers, each head before what it heads. */
    @Test
    void readingOrderAndPageAgree() {
        assertThat(PAPERS.get("tags").look(ReadingOrder::of))
                .containsSubsequence("crosslay 1", "100 psi", "159 gpm", "crosslay 2", "130 psi", "rear 1", "70 psi");
        assertThat(PAPERS.get("pocket").look(ReadingOrder::of))
                .containsSubsequence(
                        "crosslay 1", "100 psi", "200 ft", "crosslay 2", "rear 1", "What do these numbers rest on?");
        assertThat(PAPERS.get("card").look(ReadingOrder::of))
                .containsSubsequence(
                        "what do I pump?", "crosslay 1", "100 psi", "200 ft", "what do these numbers rest on?");
        assertThat(PAPERS.get("report").look(ReadingOrder::of))
                .containsSubsequence(
                        "What did the night show?",
                        "to pump",
                        "The answer",
                        "Needed at 750 ft",
                        "Pump pressure needed",
                        "The readings",
                        "Set aside.",
                        "The working");
    }

    /** The recorder's sheet comes first; what harms people is said before what the plan rests on. */
    @Test
    void blankSheetInReadingOrderAgree() {
        assertThat(PAPERS.get("night").look(ReadingOrder::of))
                .containsSubsequence(
                        "What should we flow next?",
                        "The readings, in this order",
                        "Gauges open to air",
                        "Keep in mind",
                        "Go or no go",
                        "Who does what",
                        "What it should tell");
    }

    @Test
    void sameNumbersSameBytesHold() {
        Samples.papers()
                .forEach((name, again) -> assertThat(again.bytes())
                        .as(name)
                        .isEqualTo(PAPERS.get(name).bytes()));
    }

    @Test
    void paperSizeMatchesPractice() {
        assertThat(width("card")).isEqualTo(792, offset(1f));
        assertThat(width("card-si")).isEqualTo(842, offset(1f));
    }

    private static float width(String name) {
        return PAPERS.get(name)
                .look(document -> document.getPage(0).getMediaBox().getWidth());
    }
}
