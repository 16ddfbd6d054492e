package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The code of a kit follows what it says, not how it is written. */
class RevisionTest {
    private final KitDocument kit = KitDocument.of(WholeKit.TEXT, "kit.yaml");

    @Test
    void sameKitSameCodeHolds() {
        String code = Revision.of(kit.kit());
        assertThat(code).matches("[0-9a-f]{8}");
        assertThat(Revision.of(KitDocument.of(KitText.write(kit.kit()), "w").kit()))
                .isEqualTo(code);
        String otherwise = WholeKit.TEXT
                .replace("diameter: 1 3/4 in", "diameter: 1.75 in")
                .replace("# the new batch", "# a batch")
                .replace("x-rack: 4", "x-rack: 5");
        assertThat(Revision.of(KitDocument.of(otherwise, "kit.yaml").kit())).isEqualTo(code);
    }

    @Test
    void everyChangeChangesItHolds() {
        String code = Revision.of(kit.kit());
        assertThat(Revision.of(
                        kit.withEntry(List.of("hoses", "attack-175", "loss"), "9.19 ± 0.22 psi / 100 ft @ 100 gpm")
                                .kit()))
                .isNotEqualTo(code);
        assertThat(Revision.of(
                        kit.withoutEntry(List.of("packages", "crosslay-1-300")).kit()))
                .isNotEqualTo(code);
        assertThat(Revision.of(kit.withEntry(List.of("units"), "si").kit())).isNotEqualTo(code);
    }
}
