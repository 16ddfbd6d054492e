package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.foam.Eductor;
import org.hosewright.hydraulics.foam.FoamMix;
import org.hosewright.hydraulics.foam.Proportioner;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.quantity.Volume;
import org.junit.jupiter.api.Test;

/** Standpipes, reducers, monitors, sprinklers, eductors, open ends, bursts, kinks and gates in a lay. */
class PiecesOfLaysTest {
    /** Worked figures printed as whole numbers [psi, gpm]. */
    private static final double WHOLE = 0.6;

    private static final SmoothBore NINE_EIGHTHS = new SmoothBore(Length.ofInches(1.125), Pressure.ofPsi(50));

    private static Lay standpipe(FloorOutlet outlet, double rise) {
        Leg pack = new Leg(List.of(Lays.run("pack", 2.5, 2, 150, 0)), Lays.outlet("nozzle", NINE_EIGHTHS, false));
        End.Floor floor = new End.Floor("fourth", Length.ofFeet(rise), outlet, pack);
        End pipe =
                new End.Standpipe(PointLoss.ofUs(1), new Length(0), List.of(floor), Optional.of(Pressure.ofPsi(150)));
        return Lays.one(0, new Leg(List.of(Lays.run("feed", 3, 0.8, 50, 0)), pipe));
    }

    private static Ask pump(double psi) {
        return new Ask.AtPump(Pressure.ofPsi(psi));
    }

    /** 65 psi at the outlet, 150 ft of 2 1/2 in and a 1 1/8 in tip: 254 gpm at 46 psi (worked by hand, C 2, level). */
    @Test
    void safety12ReducingOutletMatchesPractice() {
        Lay lay = standpipe(new FloorOutlet.FixedReducer(Pressure.ofPsi(65)), 40);
        LayState low = LaySolver.solve(lay, pump(130));
        LayState high = LaySolver.solve(lay, pump(180));
        for (LayState state : List.of(low, high)) {
            AtTip tip = state.getTip("nozzle");
            assertThat(tip.state().flow().gpm()).isCloseTo(254, within(WHOLE));
            assertThat(tip.state().tip().psi()).isCloseTo(46, within(WHOLE));
            assertThat(state.parts().reducers().get(0).active()).isTrue();
        }
        Ask fifty = new Ask.AtTip(Pressure.ofPsi(50));
        LayState asked = LaySolver.solve(lay, fifty);
        assertThat(asked.pump().psi()).isLessThan(130);
        assertThat(LayCautions.list(asked, fifty, Bounds.NONE, UnitSystem.US))
                .anyMatch(say -> say.contains("pumping harder changes nothing here"))
                .anyMatch(say -> say.startsWith("nozzle gets less than asked"));
        assertThat(LayLimits.of(high, Bounds.NONE))
                .anyMatch(limit -> limit.broken() && limit.what().startsWith("the posted pressure"));
        assertThat(LayLimits.of(low, Bounds.NONE)).noneMatch(limit -> limit.broken());
    }

    /** An outlet that nobody has looked up gives no pressure; shut, it does no harm. */
    @Test
    void safety12UnknownOutletRefused() {
        Lay lay = standpipe(new FloorOutlet.Unknown(), 40);
        assertThatThrownBy(() -> LaySolver.solve(lay, pump(130)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("fourth");
    }

    /** A reducing valve taken as plain would give another answer: each kind does what it is. */
    @Test
    void safety17KindsOfOutletHold() {
        double plain = tip_psi(standpipe(new FloorOutlet.Plain(), 40));
        double held = tip_psi(standpipe(new FloorOutlet.AdjustableReducer(Pressure.ofPsi(65)), 40));
        double plate = tip_psi(standpipe(new FloorOutlet.Restrictor(PointLoss.ofUs(3)), 40));
        assertThat(plain).isGreaterThan(held + 10);
        assertThat(plate).isLessThan(plain - 5);
        Lay plated = standpipe(new FloorOutlet.Restrictor(PointLoss.ofUs(3)), 40);
        assertThat(LaySolver.solve(plated, pump(140)).getTip("nozzle").stations())
                .anyMatch(station -> station.what().equals("outlet fourth"));
        assertThat(tip_psi(standpipe(new FloorOutlet.Plain(), 60))).isLessThan(plain - 5);
    }

    private static double tip_psi(Lay lay) {
        return LaySolver.solve(lay, pump(140)).getTip("nozzle").state().tip().psi();
    }

    private static Lay eductor(double gpm, double feet) {
        Proportioner made = new Proportioner(
                new Eductor(Pressure.ofPsi(200), Flow.ofGpm(gpm)),
                new Ratio(0.65),
                new FoamMix(new Ratio(0.03)),
                Optional.of(Volume.ofGallons(5)));
        Leg behind = new Leg(
                List.of(Lays.run("attack", 1.75, 9.19, feet, 0)),
                Lays.outlet("foam", new Fog(Flow.ofGpm(gpm), Pressure.ofPsi(75)), false));
        End end = new End.InlineEductor("eductor", made, behind);
        return Lays.one(0, new Leg(List.of(Lays.run("feed", 3, 0.8, 400, 0)), end));
    }

    /** 125 gpm through 400 ft of 3 in to 200 psi at the inlet: Firehouse prints about 210, its C of 0.8 gives 205. */
    @Test
    void eductorMatchesPublished() {
        LayState state = LaySolver.solve(eductor(125, 100), new Ask.AtFlow(Flow.ofGpm(125)));
        assertThat(state.pump().psi()).isCloseTo(205, within(1e-6));
        FoamState foam = state.parts().foam().get(0);
        assertThat(foam.inlet().psi()).isCloseTo(200, within(1e-6));
        assertThat(foam.concentrate().gpm()).isCloseTo(3.75, within(1e-6));
        assertThat(foam.matches()).isTrue();
        LayState forward = LaySolver.solve(eductor(125, 100), pump(205));
        assertThat(forward.flow().gpm()).isCloseTo(125, within(1e-6));
    }

    /** 5 gal at 95 gpm and 3 %: 1.75 minutes (worked by hand). */
    @Test
    void concentrateMatchesPractice() {
        LayState state = LaySolver.solve(eductor(95, 100), new Ask.AtFlow(Flow.ofGpm(95)));
        double minutes = state.parts().foam().get(0).lasts().orElseThrow().seconds() / 60;
        assertThat(minutes).isCloseTo(1.754, within(1e-3));
    }

    /** Too much hose behind it: the back pressure passes 65 %, it draws nothing, and that is a broken limit. */
    @Test
    void backPressureHolds() {
        LayState state = LaySolver.solve(eductor(125, 600), pump(205));
        FoamState foam = state.parts().foam().get(0);
        assertThat(foam.draws()).isFalse();
        assertThat(foam.lasts()).isEmpty();
        assertThat(state.flow().gpm()).isLessThan(125);
        assertThat(LayLimits.of(state, Bounds.NONE))
                .anyMatch(limit -> limit.kind() == LimitKind.BACK_PRESSURE && limit.used() > 1 - 1e-9);
        assertThat(LayCautions.list(state, pump(205), Bounds.NONE, UnitSystem.US))
                .anyMatch(say -> say.startsWith("Eductor draws no concentrate"));
    }

    /** K 5.6 at 85 psi flows 51.63 gpm: USFA/NFA Coffee Break 2006-2; three heads flow three times that. */
    @Test
    void sprinklerHeadsMatchesPublished() {
        End heads = End.Outlet.sprinklers("heads", Flow.ofGpm(5.6), 3, false);
        Lay lay = Lays.one(0, new Leg(List.of(Lays.run("feed", 2.5, 2, 100, 0)), heads));
        LayState state = LaySolver.solve(lay, new Ask.AtTip(Pressure.ofPsi(85)));
        assertThat(state.flow().gpm()).isCloseTo(3 * 51.63, within(0.05));
        assertThat(state.getTip("heads").state().reaction().lbf()).isZero();
    }

    /** Two tips of one monitor, 6 ft up: the same pressure at both, less its loss at their sum. */
    @Test
    void monitorHolds() {
        End monitor = new End.Monitor(
                Optional.of(Lays.wye(org.hosewright.hydraulics.equipment.Appliance.Per.TOTAL, Lays.quadratic(0.5))),
                Length.ofFeet(6),
                List.of(Lays.outlet("top", NINE_EIGHTHS, false), Lays.outlet("low", Lays.SEVEN_EIGHTHS, false)));
        Lay lay = Lays.one(0, new Leg(List.of(Lays.run("feed", 3, 0.8, 100, 0)), monitor));
        LayState state = LaySolver.solve(lay, new Ask.AtTip(Pressure.ofPsi(60)));
        double flow = state.flow().gpm() / 100;
        assertThat(state.getTip("top").state().tip().psi()).isCloseTo(60, within(1e-6));
        assertThat(state.getTip("low").state().tip().psi()).isCloseTo(60, within(1e-6));
        assertThat(state.pump().psi()).isCloseTo(60 + 6 * 0.434 + 1.3 * flow * flow, within(1e-6));
    }

    /** A burst: the word to the crew stands first, then what to gate; nothing says raise. */
    @Test
    void safety13BurstHolds() {
        Leg whole = new Leg(List.of(Lays.run("leader", 3, 0.8, 400, 20)), Lays.outlet("a", Lays.SEVEN_EIGHTHS, false));
        Lay burst = Lays.one(0, whole.withDamage(Optional.of(new Damage.Burst(3))));
        LayState before = LaySolver.solve(Lays.one(0, whole), pump(120));
        LayState state = LaySolver.solve(burst, pump(120));
        assertThat(state.flow().gpm()).isGreaterThan(2 * before.flow().gpm());
        assertThat(state.getTip("a").state().flow().gpm())
                .isLessThan(before.getTip("a").state().flow().gpm());
        List<String> says = LayCautions.list(state, pump(120), Bounds.NONE, UnitSystem.US);
        assertThat(says.get(0)).startsWith("By radio first, to the crew at a").contains("gate that line down slowly");
        assertThat(says).noneMatch(say -> say.contains("raise"));
        assertThatThrownBy(() -> LaySolver.solve(burst, new Ask.AtTip(Pressure.ofPsi(50))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("a pump is not raised against a burst");
        assertThatThrownBy(() ->
                        LaySolver.solve(Lays.one(0, whole.withDamage(Optional.of(new Damage.Burst(9)))), pump(120)))
                .hasMessageContaining("coupling of a burst");
    }

    /** A kink and a gate part shut take what they are said to take. */
    @Test
    void kinkAndGateHold() {
        Leg whole = new Leg(List.of(Lays.run("h", 1.75, 9.19, 200, 0)), Lays.outlet("a", Lays.SEVEN_EIGHTHS, false));
        Ask ask = new Ask.AtFlow(Flow.ofGpm(100));
        double plain = LaySolver.solve(Lays.one(0, whole), ask).pump().psi();
        Leg hurt = whole.withGate(Optional.of(PointLoss.ofUs(12)))
                .withDamage(Optional.of(new Damage.Kink(PointLoss.ofUs(10))));
        assertThat(LaySolver.solve(Lays.one(0, hurt), ask).pump().psi()).isCloseTo(plain + 22, within(1e-6));
    }

    /** 150 gpm in 1 3/4 in run 20.0 ft/s: 0.4085 Q / d^2; 1,000 ft/s of wave add 13.5 psi for each ft/s (computed). */
    @Test
    void safety16SurgeOnlyWarnsMatchesPublished() {
        Leg leg = new Leg(
                List.of(Lays.run("h", 1.75, 9.19, 200, 0)),
                Lays.outlet("a", new Fog(Flow.ofGpm(150), Pressure.ofPsi(75)), false));
        Ask ask = new Ask.AtFlow(Flow.ofGpm(150));
        LayState state = LaySolver.solve(Lays.one(0, leg), ask);
        Surge surge = state.parts().pieces().get(1).surge().orElseThrow();
        assertThat(surge.feetPerSecond()).isCloseTo(20.0, within(0.05));
        assertThat(surge.rise().psi()).isCloseTo(13.5 * surge.feetPerSecond(), within(1.0));
        assertThat(LayLimits.of(state, Bounds.NONE)).noneMatch(limit -> limit.broken());
        assertThat(LayCautions.list(state, ask, Bounds.NONE, UnitSystem.US))
                .anyMatch(say -> say.startsWith("Shut slowly") && say.contains("an estimate"));
    }
}
