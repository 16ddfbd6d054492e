package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.hydraulics.profile.GroundAt;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.hydraulics.profile.PressureAt;
import org.hosewright.hydraulics.profile.Sheet;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.picture.LayPicture;
import org.junit.jupiter.api.Test;

/** The way to a tip, drawn: what hose climbs is a slope, what pipe climbs is a wall. */
class LayPictureTest {
    /** Heights that came back from the pressure of their water [ft]. */
    private static final double CLOSE_FT = 1e-6;

    private final Kit kit = Examples.kit("hill-road.kit.yaml").kit();

    private LineProfile profile(String text, String tip) {
        LayReport report = LayReport.of(kit, LayFile.readLaid(text, kit, "lay.yaml"), Optional.empty());
        return LayPicture.of(report, report.state().getTip(tip));
    }

    private static List<Double> feet(LineProfile profile, double at_ft) {
        return profile.ground().stream()
                .filter(point -> Math.abs(point.at().feet() - at_ft) < CLOSE_FT)
                .map(point -> point.height().feet())
                .toList();
    }

    /** The example's standpipe rises 30 ft at 100 ft of hose, and its fifth floor 10 ft more. */
    @Test
    void standpipeIsAWallHolds() {
        String lay = Examples.text("hill-road.standpipe.lay.yaml");
        List<Double> wall = feet(profile(lay, "fifth"), 100);
        assertThat(wall).hasSize(3);
        assertThat(wall.get(0)).isCloseTo(0, within(CLOSE_FT));
        assertThat(wall.get(1)).isCloseTo(30, within(CLOSE_FT));
        assertThat(wall.get(2)).isCloseTo(40, within(CLOSE_FT));
        LineProfile fourth = profile(lay, "fourth");
        assertThat(fourth.tip().beside()).contains("30 ft up");
        List<PressureAt> there = fourth.pressure().stream()
                .filter(point -> Math.abs(point.at().feet() - 100) < CLOSE_FT)
                .toList();
        double climbed_psi =
                there.get(0).pressure().psi() - there.get(1).pressure().psi();
        assertThat(climbed_psi).isCloseTo(0.434 * 30, within(0.01));
        assertThat(fourth.draw(new Sheet(600, 300, 12)).marks()).isNotEmpty();
    }

    @Test
    void hoseThatClimbsIsASlopeHolds() {
        LineProfile profile = profile("""
                engine: engine-42
                lines: [ { discharge: rear-3, hose: 200 ft leader-3, rise: 12 ft, nozzle: gun-tip } ]
                ask: { tip: 80 psi }
                """, "rear-3");
        long atPump = profile.ground().stream()
                .filter(point -> point.at().metres() == 0)
                .count();
        assertThat(atPump).isEqualTo(1);
        GroundAt last = profile.ground().get(profile.ground().size() - 1);
        assertThat(last.height().feet()).isCloseTo(12, within(CLOSE_FT));
        assertThat(last.at().feet()).isCloseTo(profile.length().feet(), within(CLOSE_FT));
    }
}
