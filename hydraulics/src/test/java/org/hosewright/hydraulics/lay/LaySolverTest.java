package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Station;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** Lines and wyes: the examples' numbers, the handbook's wye, and what must hold of every lay. */
class LaySolverTest {
    /** The examples' bands [psi, gpm, lbf]. */
    private static final double BAND = 1;

    /** Agreement of two ways to the same number, relative: a few last digits through nested unknowns. */
    private static final double SAME = 1e-9;

    private static final Ask FIFTY = new Ask.AtTip(Pressure.ofPsi(50));

    /** The examples' expected numbers: 117 psi with one leg, 145 with two; 143 gpm and 39.8 psi when b opens. */
    @Test
    void exampleMatchesPractice() {
        LayState one = LaySolver.solve(Lays.gardenCourt(true), FIFTY);
        LayState both = LaySolver.solve(Lays.gardenCourt(false), FIFTY);
        assertThat(one.pump().psi()).isCloseTo(117, within(BAND));
        assertThat(both.pump().psi()).isCloseTo(145, within(BAND));
        assertThat(both.flow().gpm()).isCloseTo(322, within(BAND));
        LayState left = LaySolver.solve(Lays.gardenCourt(false), new Ask.AtPump(Pressure.ofPsi(117)));
        for (AtTip tip : left.tips()) {
            assertThat(tip.state().flow().gpm()).isCloseTo(143, within(BAND));
            assertThat(tip.state().tip().psi()).isCloseTo(39.8, within(BAND));
        }
    }

    /** The examples' expected numbers: at 145 psi, b shut, a gets 180 gpm at 62.9 psi and 75.6 lbf. */
    @Test
    void safety05OtherTipOfAWyeMatchesPractice() {
        Lay lay = Lays.gardenCourt(false);
        List<SecondLine> turned = SecondLine.listOf(lay, LaySolver.solve(lay, FIFTY));
        assertThat(turned).extracting(SecondLine::turned).containsExactly("a", "b");
        SecondLine shuts = turned.get(1);
        assertThat(shuts.opens()).isFalse();
        assertThat(shuts.tips()).hasSize(1);
        LineState a = shuts.tips().get(0).state();
        assertThat(a.flow().gpm()).isCloseTo(180, within(BAND));
        assertThat(a.tip().psi()).isCloseTo(62.9, within(BAND));
        assertThat(a.reaction().lbf()).isCloseTo(75.6, within(BAND));
        Lay single = Lays.gardenCourt(true);
        SecondLine opens =
                SecondLine.listOf(single, LaySolver.solve(single, FIFTY)).get(1);
        assertThat(opens.opens()).isTrue();
        assertThat(opens.tips()).hasSize(2);
        assertThat(opens.tips().get(0).state().flow().gpm()).isCloseTo(143, within(BAND));
    }

    /** Friction of a wye: 36 psi of feed and 33.75 of one branch are 69.75.
     *
     * <p>Source: City of Rohnert Park records, driver/operator deck 3-8, Calculating Friction Loss in Hose Lays.
     */
    @Test
    void wyeMatchesPublished() {
        Leg branch = new Leg(List.of(Lays.run("hose-175", 1.75, 10, 150, 0)), fog("a"));
        Leg other = new Leg(List.of(Lays.run("hose-175", 1.75, 10, 150, 0)), fog("b"));
        Leg feed = new Leg(
                List.of(Lays.run("hose-250", 2.5, 2, 200, 0)), new End.Wye(Optional.empty(), List.of(branch, other)));
        LayState state = LaySolver.solve(Lays.one(0, feed), new Ask.AtFlow(Flow.ofGpm(150)));
        assertThat(state.pump().psi() - 75).isCloseTo(69.75, within(1e-9));
        assertThat(state.tips().get(0).stations().get(2).pressure().psi()).isCloseTo(75 + 33.75, within(1e-9));
    }

    private static End.Outlet fog(String id) {
        return Lays.outlet(id, new Fog(Flow.ofGpm(150), Pressure.ofPsi(75)), false);
    }

    /** Two legs of 175 gpm land exactly on the 350 gpm from which the rule allows 10 psi: it counts. */
    @Test
    void flowOnARulesThresholdHolds() {
        ApplianceLoss rule = new ApplianceLoss.Rule(Pressure.ofPsi(10), Flow.ofGpm(350));
        double[] pumps = new double[2];
        for (int i = 0; i < 2; i++) {
            Leg a = new Leg(List.of(Lays.run("h", 1.75, 10, 150, 0)), fog("a"));
            Leg b = new Leg(List.of(Lays.run("h", 1.75, 10, 150, 0)), fog("b"));
            Appliance wye = Lays.wye(Appliance.Per.TOTAL, rule);
            Leg feed = new Leg(
                    List.of(Lays.run("f", 2.5, 2, 200, 0)),
                    new End.Wye(i == 0 ? Optional.empty() : Optional.of(wye), List.of(a, b)));
            LayState state = LaySolver.solve(Lays.one(0, feed), new Ask.AtFlow(Flow.ofGpm(175)));
            pumps[i] = state.pump().psi();
            assertThat(state.flow().gpm()).isCloseTo(350, within(1e-6));
        }
        assertThat(pumps[1] - pumps[0]).isCloseTo(10, within(1e-9));
    }

    @Test
    void linesThatNeedLessAreGatedDownHolds() {
        Leg near = new Leg(List.of(Lays.run("h", 1.75, 9.19, 150, 0)), Lays.outlet("near", Lays.SEVEN_EIGHTHS, false));
        Leg far = new Leg(List.of(Lays.run("h", 1.75, 9.19, 350, 0)), Lays.outlet("far", Lays.SEVEN_EIGHTHS, false));
        Lay lay = new Lay(List.of(
                new Lay.FromDischarge(Lays.discharge("one", 2), near),
                new Lay.FromDischarge(Lays.discharge("two", 2), far)));
        LayState state = LaySolver.solve(lay, FIFTY);
        assertThat(state.gates()).hasSize(1);
        assertThat(state.gates().get(0).discharge()).isEqualTo("one");
        double loss = 9.19 * 1.61 * 1.61 * 2;
        assertThat(state.gates().get(0).down().psi()).isCloseTo(loss, within(0.5));
        for (AtTip tip : state.tips()) {
            assertThat(tip.state().tip().psi()).isCloseTo(50, within(1e-7));
        }
    }

    /** Within one wye no gate at the discharge helps: the short leg gets more, and that is said. */
    @Test
    void moreThanAskedIsSaidHolds() {
        Leg near = new Leg(List.of(Lays.run("h", 1.75, 9.19, 100, 0)), Lays.outlet("near", Lays.SEVEN_EIGHTHS, false));
        Leg far = new Leg(List.of(Lays.run("h", 1.75, 9.19, 200, 0)), Lays.outlet("far", Lays.SEVEN_EIGHTHS, false));
        Leg feed = new Leg(List.of(Lays.run("f", 3, 0.75, 300, 0)), new End.Wye(Optional.empty(), List.of(near, far)));
        LayState state = LaySolver.solve(Lays.one(1, feed), FIFTY);
        assertThat(state.gates()).isEmpty();
        assertThat(state.getTip("far").state().tip().psi()).isCloseTo(50, within(1e-7));
        assertThat(state.getTip("near").state().tip().psi()).isGreaterThan(55);
        List<String> says = LayCautions.list(state, FIFTY, Bounds.NONE, UnitSystem.US);
        assertThat(says.get(0)).startsWith("near gets more than asked");
        assertThat(says).noneMatch(say -> say.startsWith("far gets more"));
    }

    @Test
    void everyNozzleShutIsRefusedHolds() {
        Lay shut = Lays.gardenCourt(true).turned("a");
        assertThatThrownBy(() -> LaySolver.solve(shut, FIFTY))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("shut");
    }

    /** A lay without a wye is a line: both solvers give one answer. */
    @Test
    void lineAgrees() {
        Random random = new Random(20260510);
        for (int i = 0; i < 300; i++) {
            Leg leg = new Leg(
                    List.of(
                            Lays.run(
                                    "h",
                                    1.75,
                                    5 + random.nextDouble(),
                                    50 + random.nextInt(500),
                                    random.nextInt(40) - 20),
                            Lays.run("g", 1.75, 9 + random.nextDouble(), 50 + random.nextInt(500), 10)),
                    Lays.outlet("a", Lays.SEVEN_EIGHTHS, false));
            Lay lay = Lays.one(2, leg);
            Ask pump = new Ask.AtPump(Pressure.ofPsi(60 + random.nextInt(150)));
            for (Ask ask : List.of(FIFTY, pump)) {
                LayState state = LaySolver.solve(lay, ask);
                LineState line = LineSolver.solve(state.tips().get(0).path(), ask);
                assertThat(state.pump().psi()).isCloseTo(line.pump().psi(), within(SAME * 100));
                assertThat(state.flow().gpm()).isCloseTo(line.flow().gpm(), within(SAME * 100));
            }
        }
    }

    /** Of every lay: the walk closes, more pump never lowers a tip, forward of inverse gives what was asked. */
    @Test
    void everyLayHolds() {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            Lay lay = Lays.random(random);
            if (lay.outlets().stream().allMatch(End.Outlet::shut)) {
                continue;
            }
            String where = "seed " + seed + ", lay " + i;
            LayState low = LaySolver.solve(lay, new Ask.AtPump(Pressure.ofPsi(100)));
            LayState high = LaySolver.solve(lay, new Ask.AtPump(Pressure.ofPsi(120)));
            for (int t = 0; t < low.tips().size(); t++) {
                double before = low.tips().get(t).state().flow().gpm();
                assertThat(high.tips().get(t).state().flow().gpm())
                        .as(where)
                        .isGreaterThanOrEqualTo(before - SAME * before);
                walkCloses(low.tips().get(t), where);
            }
            LayState asked = LaySolver.solve(lay, new Ask.AtFlow(Flow.ofGpm(120)));
            assertThat(asked.open())
                    .as(where)
                    .allMatch(tip -> tip.state().flow().gpm() > 120 * (1 - SAME));
            assertThat(asked.open())
                    .as(where)
                    .anyMatch(tip -> tip.state().flow().gpm() < 120 * (1 + SAME));
        }
    }

    /** Pressures along the walk reach the tip's; at a rule's threshold the wye takes what is left, no more than 10 psi. */
    private static void walkCloses(AtTip tip, String where) {
        List<Station> stations = tip.stations();
        double end = stations.get(stations.size() - 1).pressure().psi();
        assertThat(end).as(where).isCloseTo(tip.state().tip().psi(), within(1e-6));
        for (int i = 1; i < stations.size(); i++) {
            double taken = stations.get(i - 1).pressure().psi()
                    - stations.get(i).pressure().psi();
            boolean fall = stations.get(i).what().equals("fall");
            assertThat(taken).as(where + " " + stations.get(i)).isGreaterThanOrEqualTo(fall ? -40 : -1e-6);
        }
    }

    @Test
    void symmetricLegsHold() {
        LayState state = LaySolver.solve(Lays.gardenCourt(false), new Ask.AtPump(Pressure.ofPsi(131)));
        assertThat(state.getTip("a").state()).isEqualTo(state.getTip("b").state());
    }

    /** What the trail shows adds up to the last digit shown. */
    @Test
    void trailClosesHolds() {
        LayState state = LaySolver.solve(Lays.gardenCourt(false), FIFTY);
        for (UnitSystem units : UnitSystem.values()) {
            var working = Trail.listOf(state, units).get(0);
            assertThat(working.title()).isEqualTo("From the pump to a");
            for (var step : working.steps().subList(1, working.steps().size())) {
                String[] parts = step.numbers().split(" ", -1);
                long left = Math.round(10 * Double.parseDouble(parts[0]));
                long taken = Math.round(10 * Double.parseDouble(parts[2])) * (parts[1].equals("+") ? -1 : 1);
                long result = Math.round(10 * Double.parseDouble(step.result().split(" ", -1)[0]));
                assertThat(left - taken).as(step.toString()).isEqualTo(result);
            }
        }
    }
}
