package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.kit.KitText;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.Laid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pieces whose couplings do not mate, where both sides say theirs. */
class MatingTest {
    private static final String BIG = "2 1/2 in NH";
    private static final String SMALL = "1 1/2 in NH";
    private static final String LAY = Examples.text("garden-court.two-lines.lay.yaml");
    private static final String ADAPTERS = "\nadapters: { reducer: { in: 2 1/2 in NH, out: 1 1/2 in NH } }\n";

    /** The kit with a coupling at the discharge, on both hoses, at both sides of the wye and on the nozzle. */
    private static String kit(String discharge, String leader, String in, String out, String attack) {
        String text = Examples.text("garden-court.kit.yaml")
                .replaceAll("(rear-3: *\\{)", "$1 coupling: " + discharge + ",")
                .replaceAll("(leader-3: *\\{)", "$1 coupling: " + leader + ",")
                .replaceAll("(gated-wye: *\\{)", "$1 in: " + in + ", out: " + out + ",")
                .replaceAll("(attack-175: *\\{ diameter)", "attack-175: { coupling: " + attack + ", diameter")
                .replaceAll("(seven-eighths: *\\{)", "$1 coupling: " + SMALL + ",");
        assertThat(text.split("coupling: |in: [12]", -1)).as(text).hasSizeGreaterThanOrEqualTo(5);
        return text;
    }

    private static Laid laid(String kit, String lay) {
        Kit company = KitDocument.of(kit, "kit.yaml").kit();
        assertThat(KitDocument.of(KitText.write(company), "written").kit()).isEqualTo(company);
        return LayFile.readLaid(lay, company, "lay.yaml");
    }

    @Test
    void piecesThatMateHold() {
        Laid laid = laid(kit(BIG, BIG, BIG, SMALL, SMALL), LAY);
        assertThat(laid.assumed()).noneMatch(line -> line.contains("adapter"));
    }

    /** A size, and a thread, that do not mate; the sentence names both pieces. */
    @ParameterizedTest
    @CsvSource({
        "2 1/2 in NH, 3 in NH, 3 in NH, 1 1/2 in NH, 1 1/2 in NH, leader-3 behind rear-3",
        "2 1/2 in NH, 2 1/2 in NPSH, 2 1/2 in NPSH, 1 1/2 in NH, 1 1/2 in NH, leader-3 behind rear-3",
        "2 1/2 in NH, 2 1/2 in NH, 3 in NH, 1 1/2 in NH, 1 1/2 in NH, gated-wye behind leader-3",
        "2 1/2 in NH, 2 1/2 in NH, 2 1/2 in NH, 2 1/2 in NH, 1 1/2 in NH, attack-175 behind gated-wye",
        "2 1/2 in NH, 2 1/2 in NH, 2 1/2 in NH, 1 in NH, 1 in NH, seven-eighths behind attack-175",
    })
    void piecesThatDoNotMateRefused(
            String discharge, String leader, String in, String out, String attack, String named) {
        assertThatThrownBy(() -> laid(kit(discharge, leader, in, out, attack), LAY))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("lay.yaml")
                .hasMessageContaining("coupling of " + named);
    }

    @Test
    void adapterOfTheKitMatesThemAndIsSaidHolds() {
        String kit = kit(BIG, BIG, BIG, BIG, SMALL) + ADAPTERS;
        assertThat(laid(kit, LAY).assumed())
                .anyMatch(line -> line.contains("The adapter reducer stands between gated-wye and attack-175"));
        String other = ADAPTERS.replace("out: 1 1/2 in NH", "out: 1 in NH");
        assertThatThrownBy(() -> laid(kit(BIG, BIG, BIG, BIG, SMALL) + other, LAY))
                .hasMessageContaining("an adapter in the kit with in: 2 1/2 in NH and out: 1 1/2 in NH");
    }

    @Test
    void hydrantOfALayThatDoesNotMateRefused() {
        String lay = LAY.replace("at: 890 gpm", "at: 890 gpm, coupling: 4 1/2 in NH");
        String kit = kit(BIG, BIG, BIG, SMALL, SMALL).replaceAll("(supply-4: *\\{)", "$1 coupling: 4 in storz,");
        assertThatThrownBy(() -> laid(kit, lay)).hasMessageContaining("coupling of supply-4 behind the hydrant");
        assertThat(laid(kit, LAY).assumed()).noneMatch(line -> line.contains("adapter"));
    }

    /** What one side does not say is not judged. */
    @Test
    void unsaidCouplingsAreNotJudgedHold() {
        String kit = kit(BIG, BIG, BIG, SMALL, SMALL).replace("in: 2 1/2 in NH, out: 1 1/2 in NH,", "");
        assertThat(laid(kit, LAY).lay().outlets()).hasSize(2);
    }
}
