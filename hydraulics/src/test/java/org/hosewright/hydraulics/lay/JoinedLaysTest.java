package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Lay.FromDischarge;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Lines that meet again: siameses of like and unlike lines, two joins, loops. */
class JoinedLaysTest {
    /** Agreement of flows with a closed form, relative: a few last digits through nested unknowns. */
    private static final double SAME = 1e-9;

    /** What the ramp of a rule's step in the network may move a flow by, relative: a billionth of its threshold. */
    private static final double RAMP = 1e-8;

    private static final double FOG_GPM = 500;
    private static final double FOG_PSI = 100;

    private static Lay siamese(List<Run> runs) {
        List<FromDischarge> lines = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Leg leg = new Leg(List.of(runs.get(i)), new End.Join("siamese"));
            lines.add(new FromDischarge(Lays.discharge("d" + i, 0), leg));
        }
        End fog = Lays.outlet("fog", new Fog(Flow.ofGpm(FOG_GPM), Pressure.ofPsi(FOG_PSI)), false);
        Leg behind = new Leg(List.of(Lays.run("last", 3, 0.8, 100, 0)), fog);
        Map<String, Joint> joins = new LinkedHashMap<>();
        joins.put("siamese", new Joint(Optional.empty(), behind));
        return new Lay(lines, joins, Optional.empty(), new PumpMode.Governor());
    }

    /** Coefficient at the whole flow [psi per 100 ft at 100 gpm], got back from a lay of 100 ft lines. */
    private static double coefficient(double... each) {
        List<Run> runs = new ArrayList<>();
        for (double c : each) {
            runs.add(Lays.run("h" + runs.size(), 2.5, c, 100, 0));
        }
        LayState state = LaySolver.solve(siamese(runs), new Ask.AtFlow(Flow.ofGpm(FOG_GPM)));
        double last_psi = 0.8 * (FOG_GPM / 100) * (FOG_GPM / 100);
        return (state.pump().psi() - FOG_PSI - last_psi) / ((FOG_GPM / 100) * (FOG_GPM / 100));
    }

    /** Two and three 2 1/2 in lines: City of Renton hose sheet; the others from memory (IFSTA handbook table). */
    @Test
    void siameseTableMatchesPublished() {
        double handbook = 0.0051;
        assertThat(coefficient(2, 2)).isCloseTo(0.5, within(1e-8));
        assertThat(coefficient(2, 2, 2)).isCloseTo(0.22, within(handbook));
        assertThat(coefficient(0.8, 0.8)).isCloseTo(0.2, within(1e-8));
        assertThat(coefficient(0.8, 2)).isCloseTo(0.3, within(handbook));
        assertThat(coefficient(0.677, 2)).isCloseTo(0.27, within(handbook));
        assertThat(coefficient(2, 2, 0.8)).isCloseTo(0.16, within(handbook));
        assertThat(coefficient(0.8, 0.8, 2)).isCloseTo(0.12, within(handbook));
    }

    /** Lines of unlike length and hose fold to one by 1/sqrt(C L), the closed form. */
    @Test
    void unequalLinesAgree() {
        List<Run> runs = List.of(Lays.run("a", 2.5, 2, 300, 12), Lays.run("b", 3, 0.8, 450, 12));
        LayState state = LaySolver.solve(siamese(runs), new Ask.AtFlow(Flow.ofGpm(FOG_GPM)));
        double root = 1 / Math.sqrt(2 * 3) + 1 / Math.sqrt(0.8 * 4.5);
        double expected = FOG_PSI + 25 * 0.8 + 25 / (root * root) + 12 * 0.434;
        assertThat(state.pump().psi()).isCloseTo(expected, within(SAME * expected));
        double one = state.parts().flows().get("d0").gpm();
        double other = state.parts().flows().get("d1").gpm();
        assertThat(one + other).isCloseTo(FOG_GPM, within(SAME * FOG_GPM));
        assertThat(one / other).isCloseTo(Math.sqrt(0.8 * 4.5 / (2 * 3)), within(SAME));
        assertThat(state.gates()).isEmpty();
    }

    /** A wye whose legs join again, behind which another line comes in: two joins, one after the other. */
    private static Lay loop(Random random) {
        Leg near = new Leg(List.of(hose(random, "n")), new End.Join("first"));
        Leg far = new Leg(List.of(hose(random, "f")), new End.Join("first"));
        Leg feed = new Leg(List.of(hose(random, "feed")), new End.Wye(Optional.empty(), List.of(near, far)));
        Leg straight = new Leg(List.of(hose(random, "s")), new End.Join("second"));
        Leg between = new Leg(List.of(hose(random, "b")), new End.Join("second"));
        Leg b = new Leg(List.of(hose(random, "t")), Lays.outlet("b", Lays.SEVEN_EIGHTHS, false));
        Leg split = new Leg(List.of(hose(random, "w")), new End.Wye(Optional.empty(), List.of(between, b)));
        Leg last = new Leg(
                List.of(hose(random, "l")), Lays.outlet("a", new Fog(Flow.ofGpm(300), Pressure.ofPsi(75)), false));
        Map<String, Joint> joins = new LinkedHashMap<>();
        joins.put("second", new Joint(Optional.empty(), last));
        joins.put("first", new Joint(Optional.empty(), split));
        return new Lay(
                List.of(
                        new FromDischarge(Lays.discharge("one", random.nextDouble()), feed),
                        new FromDischarge(Lays.discharge("two", random.nextDouble()), straight)),
                joins,
                Optional.empty(),
                new PumpMode.Governor());
    }

    private static Run hose(Random random, String id) {
        return Lays.run(id, 2.5, 0.3 + 3 * random.nextDouble(), 50 + random.nextInt(500), 0);
    }

    /** Water balances at each join, what leaves is what comes, more pump never lowers a tip, forward of inverse. */
    @Test
    void loopsHold() {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int i = 0; i < 8; i++) {
            Lay lay = loop(random);
            String where = "seed " + seed + ", lay " + i;
            LayState low = LaySolver.solve(lay, new Ask.AtPump(Pressure.ofPsi(90)));
            LayState high = LaySolver.solve(lay, new Ask.AtPump(Pressure.ofPsi(110)));
            double out = 0;
            for (AtTip tip : low.tips()) {
                out += tip.state().flow().gpm();
                double more = high.getTip(tip.outlet().id()).state().flow().gpm();
                assertThat(more).as(where).isGreaterThan(tip.state().flow().gpm());
                var stations = tip.stations();
                assertThat(stations.get(stations.size() - 1).pressure().psi())
                        .as(where)
                        .isCloseTo(tip.state().tip().psi(), within(1e-7));
            }
            assertThat(out).as(where).isCloseTo(low.flow().gpm(), within(SAME * out));
            LayState asked = LaySolver.solve(lay, new Ask.AtFlow(Flow.ofGpm(120)));
            double least = asked.tips().stream()
                    .mapToDouble(tip -> tip.state().flow().gpm())
                    .min()
                    .orElse(0);
            assertThat(least).as(where).isCloseTo(120, within(1e-7));
        }
    }

    /** The folded way and the network's give one answer, on trees of every piece and on lays with loops. */
    @Test
    void networkAgrees() {
        long seed = 20261126;
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            Lay lay = i % 4 == 0 ? loop(random) : Lays.random(random);
            if (lay.outlets().stream().allMatch(End.Outlet::shut)) {
                continue;
            }
            Pressure pump = Pressure.ofPsi(80 + random.nextInt(100));
            LayState state = LaySolver.solve(lay, new Ask.AtPump(pump));
            Map<String, Flow> flows = LayNetwork.flows(lay, pump);
            for (AtTip tip : state.open()) {
                double folded = tip.state().flow().gpm();
                assertThat(flows.get(tip.outlet().id()).gpm())
                        .as("seed " + seed + ", lay " + i + ", " + tip.outlet().id())
                        .isCloseTo(folded, within(1e-9 * state.flow().gpm() + RAMP * folded));
            }
        }
    }

    @Test
    void joinsThatCannotBeRefused() {
        Leg one = new Leg(List.of(Lays.run("a", 2.5, 2, 100, 0)), new End.Join("x"));
        Leg two = new Leg(List.of(Lays.run("a", 2.5, 2, 100, 10)), new End.Join("x"));
        Leg behind = new Leg(List.of(Lays.run("a", 2.5, 2, 100, 0)), Lays.outlet("t", Lays.SEVEN_EIGHTHS, false));
        Leg back = new Leg(List.of(Lays.run("a", 2.5, 2, 100, 0)), new End.Join("x"));
        refused(List.of(one), Map.of("x", new Joint(Optional.empty(), behind)), "one line");
        refused(List.of(one, one), Map.of(), "stands under joins");
        refused(List.of(one, one), Map.of("x", new Joint(Optional.empty(), back)), "back into itself");
        refused(List.of(one, two), Map.of("x", new Joint(Optional.empty(), behind)), "0 ft (0 m) and 10 ft (3.048 m)");
    }

    private static void refused(List<Leg> legs, Map<String, Joint> joins, String says) {
        List<FromDischarge> lines = new ArrayList<>();
        for (Leg leg : legs) {
            lines.add(new FromDischarge(Lays.discharge("d" + lines.size(), 0), leg));
        }
        assertThatThrownBy(() -> new Lay(lines, joins, Optional.empty(), new PumpMode.Governor()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(says);
    }
}
