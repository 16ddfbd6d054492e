package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Intake;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.junit.jupiter.api.Test;

/** Supply lines side by side into one intake: hydrants, a relay among them, a tank. */
class SeveralSuppliesTest {
    /** Pressures of both sides of one sum, each solved on its own [psi]. */
    private static final double CLOSE_PSI = 1e-6;

    private static final String HYDRANT = "hydrant: { static: 62 psi, residual: 44 psi, at: 890 gpm }";
    private static final String NEAR = "{ " + HYDRANT + ", hose: 600 ft supply-5, rise: 10 ft }";
    private static final String RELAYED = "{ " + HYDRANT + ", hose: 100 ft supply-5, rise: 0 ft, relay:"
            + " [ { engine: engine-41, discharge: ldh-1, hose: 800 ft supply-5, rise: 10 ft, pump: 80 psi } ] }";

    private final Kit kit = Examples.kit("hill-road.kit.yaml").kit();

    private LayReport report(String lines) {
        String text = """
                engine: engine-42
                supply: { keep: 20 psi, lines: [ LINES ] }
                lines:
                  - discharge: rear-3
                    hose: 100 ft leader-3
                    rise: 0 ft
                    monitor: { appliance: deck-gun, tips: { a: { nozzle: gun-tip }, b: { nozzle: gun-tip, shut: true } } }
                ask: { tip: 80 psi }
                """.replace("LINES", lines);
        return LayReport.of(kit, LayFile.readLaid(text, kit, "lay.yaml"), Optional.empty());
    }

    /** The relay brings what 80 psi push through its hose, the hydrant the rest; both end at one pressure. */
    @Test
    void relayBesideAHydrantAgrees() {
        Intake intake = report(NEAR + ", " + RELAYED).state().intake().orElseThrow();
        Piece near = intake.hoses().get(0);
        Piece last = intake.hoses().get(2);
        assertThat(near.place()).isEqualTo("supply line 1");
        assertThat(last.place()).isEqualTo("engine-41");
        assertThat(near.after().psi()).isCloseTo(intake.pressure().psi(), within(CLOSE_PSI));
        assertThat(last.after().psi()).isCloseTo(intake.pressure().psi(), within(CLOSE_PSI));
        double all_gpm = report(NEAR + ", " + RELAYED).state().flow().gpm();
        assertThat(near.flow().gpm() + last.flow().gpm()).isCloseTo(all_gpm, within(1e-6));
        double q = last.flow().gpm() / 100;
        double by_hand_psi = 80 - (0.05 + 0.08 * 8) * q * q - 0.434 * 10;
        assertThat(intake.pressure().psi()).isCloseTo(by_hand_psi, within(0.01));
        assertThat(intake.pumps()).hasSize(1);
        assertThat(intake.pumps().get(0).flow().gpm()).isCloseTo(last.flow().gpm(), within(1e-9));
    }

    /** A hydrant of 12 psi brings nothing against what the relay leaves at the intake. */
    @Test
    void weakerLineStaysShutAndIsNamedHolds() {
        LayReport weak = report(RELAYED + ", { hydrant: { static: 12 psi, residual: 6 psi, at: 300 gpm },"
                + " hose: 600 ft supply-5, rise: 10 ft }");
        assertThat(weak.state().intake().orElseThrow().hoses().get(2).flow().gpm())
                .isZero();
        assertThat(weak.outside()).anyMatch(say -> say.startsWith("Nothing comes through supply-5 from supply line 2"));
    }

    /** The tank's check valve stays shut while the hydrant keeps the intake above the tank. */
    @Test
    void tankBesideAHydrantHolds() {
        LayReport both = report(NEAR + ", { tank: { level: 750 gal, loss: 10 psi @ 500 gpm } }");
        assertThat(both.state().intake().orElseThrow().tank()).isEmpty();
        assertThat(both.state().intake().orElseThrow().hoses().get(0).flow().gpm())
                .isCloseTo(both.state().flow().gpm(), within(1e-6));
    }

    @Test
    void linesThatCannotBeRefused() {
        refused(NEAR + ", " + RELAYED.replace(", pump: 80 psi", ""), "pump pressure of engine-41");
        refused(RELAYED + ", " + RELAYED, "engine of the relay, a second time");
        refused(RELAYED.replace("engine-41", "engine-42").replace("ldh-1", "rear-4") + ", " + NEAR, "engine-42");
        refused(NEAR + ", { tank: { level: 750 gal } }", "loss from the tank to the pump of supply line 2");
        refused(
                NEAR + ", { tank: { level: 750 gal, loss: 10 psi @ 500 gpm }, hose: 100 ft supply-5 }",
                "hose of a tank");
    }

    private void refused(String lines, String says) {
        assertThatThrownBy(() -> report(lines))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("lay.yaml")
                .hasMessageContaining(says);
    }
}
