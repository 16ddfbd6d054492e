package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hosewright.files.Examples;
import org.hosewright.files.yaml.YamlEdit;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;

/** Changes to a kit's text touch what they mean and nothing else. */
class KitEditTest {
    private static final String WYE = "{ loss: 0.55 psi @ 100 gpm, per: leg }";

    @Test
    void scalarWithinBracesIsReplacedHolds() {
        KitDocument before = KitDocument.of(WholeKit.TEXT, "kit.yaml");
        KitDocument after = before.withEntry(List.of("hoses", "attack-175", "loss"), "8.5 psi / 100 ft @ 100 gpm");
        assertThat(after.text())
                .isEqualTo(WholeKit.TEXT.replace(
                        "loss: 9.19 ± 0.21 psi / 100 ft @ 100 gpm", "loss: 8.5 psi / 100 ft @ 100 gpm"));
    }

    @Test
    void scalarOnItsLineKeepsItsCommentHolds() {
        KitDocument after = KitDocument.of(WholeKit.TEXT, "kit.yaml")
                .withEntry(List.of("hoses", "leader-3", "diameter"), "3 1/16 in");
        assertThat(after.text())
                .isEqualTo(WholeKit.TEXT.replace("diameter: 3 in   # nominal", "diameter: 3 1/16 in   # nominal"));
    }

    @Test
    void keyIsAddedBehindTheLastHolds() {
        KitDocument before = KitDocument.of(WholeKit.TEXT, "kit.yaml");
        assertThat(before.withEntry(List.of("hoses", "leader-3", "basis"), "book")
                        .text())
                .isEqualTo(WholeKit.TEXT.replace("@ 161 gpm\n", "@ 161 gpm\n    basis: book\n"));
        assertThat(before.withEntry(List.of("engines", "engine-41", "discharges", "rear-3", "size"), "3 in")
                        .text())
                .isEqualTo(WholeKit.TEXT.replace("rear-3: {}", "rear-3: { size: 3 in }"));
        assertThat(before.withEntry(List.of("crew", "reaction", "4"), "110 lbf").text())
                .isEqualTo(WholeKit.TEXT.replace("3: 95 lbf }", "3: 95 lbf, 4: 110 lbf }"));
    }

    @Test
    void thingIsAddedInItsSectionHolds() {
        KitDocument before = KitDocument.of(WholeKit.TEXT, "kit.yaml");
        KitDocument after = before.withEntry(List.of("appliances", "second-wye"), WYE);
        String line = "  monitor: { loss: { rule: 10 psi, from: 350 gpm } }\n";
        assertThat(after.text()).isEqualTo(WholeKit.TEXT.replace(line, line + "  second-wye: " + WYE + "\n"));
    }

    @Test
    void sectionIsAddedWhereThereIsNoneHolds() {
        KitDocument before = Examples.kit("drill-night.kit.yaml");
        assertThat(before.withEntry(List.of("appliances", "gated-wye"), WYE).text())
                .isEqualTo(before.text() + "appliances: { gated-wye: " + WYE + " }\n");
        String noEnd = before.text().stripTrailing();
        assertThat(KitDocument.of(noEnd, "kit.yaml")
                        .withEntry(List.of("appliances", "gated-wye"), WYE)
                        .text())
                .isEqualTo(noEnd + "\nappliances: { gated-wye: " + WYE + " }");
    }

    @Test
    void emptySectionIsFilledHolds() {
        String text = Examples.text("drill-night.kit.yaml") + "appliances:   # none yet\nevidence:\n";
        assertThatThrownBy(() -> KitDocument.of(text, "kit.yaml")).isInstanceOf(InvalidInput.class);
        String filled = YamlEdit.set(text, "kit.yaml", List.of("appliances", "gated-wye"), WYE);
        assertThat(filled).contains("appliances: { gated-wye: " + WYE + " }   # none yet\nevidence:\n");
    }

    @Test
    void mergingKeepsCommentsAndOwnKeysHolds() {
        KitDocument before = KitDocument.of(WholeKit.TEXT, "kit.yaml");
        KitDocument after = before.withEntry(
                List.of("hoses", "leader-3"),
                "{ diameter: 3 in, section: 100 ft, loss: 23.8 psi / 100 ft @ 161 gpm, basis: maker }");
        assertThat(after.text())
                .isEqualTo(WholeKit.TEXT.replace(
                        "    section: 50 ft\n    loss: 23.8 psi / 100 ft @ 161 gpm\n",
                        "    section: 100 ft\n    loss: 23.8 psi / 100 ft @ 161 gpm\n    basis: maker\n"));
        KitDocument bare = before.withEntry(
                List.of("hoses", "attack-175"),
                "{ diameter: 1.75 in, section: 50 ft, loss: 9.19 ± 0.21 psi / 100 ft @ 100 gpm }");
        assertThat(bare.text())
                .contains("attack-175: { diameter: 1.75 in, section: 50 ft, "
                        + "loss: 9.19 ± 0.21 psi / 100 ft @ 100 gpm, x-rack: 4 }");
    }

    @Test
    void blockBecomesOneLineWhereKindsDifferHolds() {
        String text = "a:   # why\n  # inside\n  b: 1\n  c: 2\nd: 3\n";
        assertThat(YamlEdit.set(text, "t", List.of("a"), "none")).isEqualTo("a: none   # why\n  # inside\nd: 3\n");
        assertThat(YamlEdit.set("a: |\n  long\n  text\n\nd: 3\n", "t", List.of("a"), "x"))
                .isEqualTo("a: x\n\nd: 3\n");
    }

    @Test
    void entryIsRemovedHolds() {
        KitDocument before = KitDocument.of(WholeKit.TEXT, "kit.yaml");
        assertThat(before.withoutEntry(List.of("crew", "reaction", "3")).text())
                .isEqualTo(WholeKit.TEXT.replace(", 3: 95 lbf }", " }"));
        assertThat(before.withoutEntry(List.of("crew", "reaction", "1")).text())
                .isEqualTo(WholeKit.TEXT.replace("1: 60 lbf, ", ""));
        assertThat(before.withoutEntry(List.of("packages", "crosslay-1-300")).text())
                .isEqualTo(WholeKit.TEXT.replaceAll("  crosslay-1-300: .*\n", ""));
        assertThat(before.withoutEntry(List.of("evidence", "drill-night")).text())
                .isEqualTo(WholeKit.TEXT.replaceAll("evidence: .*\n", "evidence: {}\n"));
    }

    @Test
    void removingFromBracesOverLinesKeepsOtherCommentsHolds() {
        String text = "m: { a: 1, # one\n     b: 2, # two\n     c: 3 } # end\n";
        assertThat(YamlEdit.remove(text, "t", List.of("m", "b"))).isEqualTo("m: { a: 1, # one\n     c: 3 } # end\n");
        assertThat(YamlEdit.remove(text, "t", List.of("m", "c")))
                .isEqualTo("m: { a: 1, # one\n     b: 2 # two\n } # end\n");
        assertThat(YamlEdit.remove("m: { a: 1 # x, y\n  , b: 2, }\n", "t", List.of("m", "b")))
                .isEqualTo("m: { a: 1 # x, y\n  , }\n");
    }

    @Test
    void whatIsNeededIsNotRemovedHolds() {
        KitDocument kit = KitDocument.of(WholeKit.TEXT, "kit.yaml");
        assertThatThrownBy(() -> kit.withoutEntry(List.of("hoses", "attack-175")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("packages.crosslay-1-200.hose: hose cannot be 'attack-175'");
        assertThatThrownBy(() -> kit.withoutEntry(List.of("hoses", "attack-176")))
                .hasMessage("kit.yaml: entry cannot be 'hoses.attack-176'; what would do: one that is there.");
        assertThatThrownBy(() -> kit.withEntry(List.of("hoses", "attack-175", "loss"), "9.2"))
                .hasMessageContaining("hoses.attack-175.loss: hose loss cannot be '9.2'");
        assertThatThrownBy(() -> kit.withEntry(List.of("units", "of"), "x")).isInstanceOf(InvalidInput.class);
    }

    @Test
    void windowsLineEndsStayHolds() {
        String text = Examples.text("garden-court.kit.yaml").replace("\n", "\r\n");
        KitDocument after = KitDocument.of(text, "kit.yaml").withEntry(List.of("appliances", "second-wye"), WYE);
        assertThat(after.text().replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(after.withoutEntry(List.of("appliances", "second-wye")).text())
                .isEqualTo(text);
    }

    @Test
    void charactersBeyondSixteenBitsDoNotShiftPlacesHolds() {
        String text =
                Examples.text("garden-court.kit.yaml").replace("company: Brindle", "company: \uD83D\uDE92 Brindle");
        KitDocument after =
                KitDocument.of(text, "kit.yaml").withEntry(List.of("engines", "engine-42", "tank"), "500 gal");
        assertThat(after.text()).isEqualTo(text.replace("750 gal", "500 gal"));
    }

    /** Any two edits that undo each other leave the text as it was, and every edit leaves the other entries' values. */
    @Test
    void setAndUnsetHolds() {
        long seed = 20260512;
        Random random = new Random(seed);
        List<List<String>> places = List.of(
                List.of("hoses", "attack-175", "tested"),
                List.of("hoses", "attack-175", "made"),
                List.of("hoses", "leader-3", "service-test"),
                List.of("nozzles", "fog-150", "most"),
                List.of("engines", "engine-41", "tank"),
                List.of("appliances", "gated-wye", "rated"),
                List.of("packages", "crosslay-1-200", "least"),
                List.of("instruments", "gauge-a", "offset"));
        List<String> values =
                List.of("2026-01-02", "2020", "400 psi", "175 psi", "1000 gal", "200 psi", "100 gpm", "1 ± 1 psi");
        for (int round = 0; round < 60; round++) {
            KitDocument document = KitDocument.of(WholeKit.TEXT, "kit.yaml");
            List<Integer> set = new ArrayList<>();
            for (int step = 0; step < 5; step++) {
                int which = random.nextInt(places.size());
                boolean remove = random.nextInt(3) == 0 && set.contains(which);
                if (remove) {
                    document = document.withoutEntry(places.get(which));
                    set.remove(Integer.valueOf(which));
                } else {
                    document = document.withEntry(places.get(which), values.get(which));
                    set.add(which);
                }
            }
            assertThat(document.text()
                            .lines()
                            .filter(line -> line.contains("#"))
                            .count())
                    .as("comments, seed " + seed)
                    .isEqualTo(WholeKit.TEXT
                            .lines()
                            .filter(line -> line.contains("#"))
                            .count());
            assertThat(document.kit().packages().keySet()).hasSize(2);
            assertThat(KitDocument.of(KitText.write(document.kit()), "written").kit())
                    .isEqualTo(document.kit());
        }
    }
}
