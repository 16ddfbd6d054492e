package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.card.CardSet;
import org.junit.jupiter.api.Test;

/** Whatever a company has, its papers hold it: much, nothing, long names, long cautions. */
class RoomOnPaperTest {
    private static final double MM_PER_PT = 25.4 / 72;

    /** Where the first row of tags begins and how high a tag is, as the style sheet has it [mm]. */
    private static final double TAGS_TOP = 32;

    private static final double TAG = 79;

    /** Where the strip of the pocket card ends, as the style sheet has it [mm]. */
    private static final double STRIP_END = 34 + 140;

    @Test
    void smallPrintInsideItsTagHolds() {
        Pdf tags = new Pdf(Papers.tags(crowded(), Stamp.UNSIGNED));
        List<Double> ends = tags.look(document -> baselines(document, "Company."));
        assertThat(ends).hasSize(12);
        ends.forEach(end -> assertThat((end - TAGS_TOP) % TAG).isBetween(TAG / 2, TAG - 0.5));
    }

    @Test
    void everyPackageInsideItsLeafHolds() {
        Pdf pocket = new Pdf(Papers.pocketCard(crowded(), Stamp.UNSIGNED));
        List<Double> ends = pocket.look(document -> baselines(document, "revision"));
        assertThat(ends).hasSizeGreaterThan(6);
        ends.forEach(end -> assertThat(end).isLessThan(STRIP_END - 1));
        for (int i = 1; i <= 12; i++) {
            assertThat(pocket.text()).contains("line " + i + " 1 3/4 in");
        }
        assertThat(pocket.faults("ua1")).isEmpty();
    }

    @Test
    void aKitWithoutPackagesSaysSoHolds() {
        String kit = Samples.beside("brindle-falls.kit.yaml").replaceAll("(?s)packages:.*?evidence:", "evidence:");
        CardSet none = Samples.cards(kit);
        List.of(
                        Papers.pumpCard(none, Stamp.UNSIGNED),
                        Papers.tags(none, Stamp.UNSIGNED),
                        Papers.pocketCard(none, Stamp.UNSIGNED))
                .forEach(paper ->
                        assertThat(new Pdf(paper).text()).contains("The kit has no package", "UNSIGNED - NOT FOR USE"));
    }

    @Test
    void aNightOfOneLengthSaysWhatCannotBeToldHolds() {
        var night = Samples.night("drill-night.kit.yaml", Map.of(), List.of(0));
        String text = new Pdf(Papers.drillReport(night, Stamp.UNSIGNED)).text();
        // Hose and piping are known only as a sum: the pressure stands for the length flown, without a hand
        // calculation.
        assertThat(night.calibration().terms().hoses()).isEmpty();
        assertThat(night.calibration().terms().discharges()).isEmpty();
        assertThat(night.needed()).hasSize(1);
        assertThat(night.workings()).noneMatch(working -> working.title().startsWith("Needed pump pressure"));
        assertThat(text).contains("What did the night show?", "What cannot be told", "1 reading,");
        night.calibration().withheld().forEach(missing -> assertThat(text).contains(Pdf.typed(missing.why())));
    }

    @Test
    void namesWithMarkupHold() {
        String kit = Samples.beside("brindle-falls.kit.yaml")
                .replace("company: Brindle Falls Fire Company", "company: 'Brindle & <Falls> \"Fire\" Company'");
        assertThat(new Pdf(Papers.pumpCard(Samples.cards(kit), Stamp.UNSIGNED)).text())
                .contains("Brindle & <Falls> \"Fire\" Company");
    }

    /** Twelve packages whose hose has no dated test and whose nozzle has a low rating: many cautions. */
    private static CardSet crowded() {
        StringBuilder discharges = new StringBuilder();
        StringBuilder packages = new StringBuilder();
        for (int i = 1; i <= 12; i++) {
            discharges.append("      line-").append(i).append(": { size: 2 in, loss: 1.7 ± 0.7 psi @ 100 gpm }\n");
            packages.append("  package-")
                    .append(i)
                    .append(": { engine: engine-41, discharge: line-")
                    .append(i)
                    .append(", hose: 2 x attack-175 + ")
                    .append(i)
                    .append(" x attack-old, nozzle: fog-150, crew: 2, target: 150 gpm, least: 140 gpm }\n");
        }
        String kit = Samples.beside("brindle-falls.kit.yaml")
                .replaceAll("(?s)discharges:.*?instruments:", "discharges:\n" + discharges + "instruments:")
                .replaceAll("(?s)packages:.*?evidence:", "packages:\n" + packages + "evidence:")
                .replace(", correlation: { attack-175/crosslay-1: -0.8 }", "")
                .replace(
                        "nozzles:",
                        "  attack-old: { diameter: 1 3/4 in, section: 50 ft, loss: 10 psi / 100 ft @ 100 gpm, basis:"
                                + " estimate, service-test: 260 psi }\nnozzles:");
        return Samples.cards(kit);
    }

    /** Distances from the upper edge of the page to the baseline of each line that ends in a word [mm]. */
    private static List<Double> baselines(PDDocument document, String word) throws IOException {
        List<Double> found = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> letters) {
                // the running head stands above every piece
                double y = letters.get(0).getYDirAdj() * MM_PER_PT;
                if (text.contains(word) && y > TAGS_TOP) {
                    found.add(y);
                }
            }
        };
        stripper.getText(document);
        return found;
    }
}
