package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.files.lay.LayFile;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hose that goes by Hazen-Williams or by the roughness of its lining, from the kit file to the lay. */
class HoseLawKitTest {
    private static final String LEADER = "loss: 0.75 psi / 100 ft @ 100 gpm";

    private static String kit(String loss) {
        String text = Examples.text("garden-court.kit.yaml");
        assertThat(text).contains(LEADER);
        return text.replace(LEADER, loss);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"hazen-williams: 140", "roughness: 0.02 mm", "roughness: 0.001 in", "hazen-williams: 137.25"})
    void readBackHolds(String law) {
        Kit kit = KitDocument.of(kit(law), "kit.yaml").kit();
        assertThat(kit.hoses().get("leader-3").hose().law()).isPresent();
        String written = KitText.write(kit);
        assertThat(KitDocument.of(written, "written").kit()).isEqualTo(kit);
        assertThat(KitText.write(KitDocument.of(written, "written").kit())).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hazen-williams: 14",
                "hazen-williams: 140 psi",
                "roughness: 3 mm",
                "roughness: 20 psi",
                "hazen-williams: 140, roughness: 0.02 mm",
                LEADER + ", roughness: 0.02 mm"
            })
    void notALawRefused(String law) {
        assertThatThrownBy(() -> KitDocument.of(kit(law), "kit.yaml")).isInstanceOf(InvalidInput.class);
    }

    /** Once a night has determined its coefficient, the coefficient stands in the law's place. */
    @ParameterizedTest
    @ValueSource(strings = {"hazen-williams: 140", "roughness: 0.02 mm"})
    void coefficientReplacesTheLawHolds(String law) {
        KitDocument before = KitDocument.of(kit(law), "kit.yaml");
        String key = law.substring(0, law.indexOf(':'));
        KitDocument after = before.with(List.of(
                new KitChange.Set(List.of("hoses", "leader-3", "loss"), "0.8 psi / 100 ft @ 100 gpm"),
                new KitChange.Remove(List.of("hoses", "leader-3", key))));
        assertThat(after.kit().hoses().get("leader-3").hose().law()).isEmpty();
    }

    /** The sprinkler trade's form, psi/ft = 4.52 Q^1.85 / (C^1.85 d^4.87): NFPA 13 (from memory). */
    @ParameterizedTest
    @ValueSource(strings = {"hazen-williams: 140"})
    void layGoesByTheLawMatchesPublished(String law) {
        Kit kit = KitDocument.of(kit(law), "kit.yaml").kit();
        String text = Examples.text("garden-court.two-lines.lay.yaml");
        LayReport report = LayReport.of(kit, LayFile.readLaid(text, kit, "lay.yaml"), Optional.empty());
        double gpm = report.state().flow().gpm();
        double by = 4.52 * Math.pow(gpm, 1.85) / (Math.pow(140, 1.85) * Math.pow(3, 4.87)) * 400;
        double lost = report.state().parts().pieces().stream()
                .filter(piece -> piece.what().equals("leader-3"))
                .mapToDouble(piece -> piece.before().psi() - piece.after().psi())
                .sum();
        assertThat(lost).isCloseTo(by, within(0.01 * by));
        assertThat(report.assumed()).anyMatch(line -> line.contains("goes by Hazen-Williams, C 140"));
        assertThat(report.methods()).anyMatch(method -> method.refused().contains("leader-3 has no coefficient"));
    }
}
