package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** A lay by the trade's methods, beside the solved answer. */
class FieldMethodsTest {
    /** Sums of a few terms [psi]. */
    private static final double SUM = 1e-6;

    private static List<FieldMethods> at(double gpm) {
        End fog = Lays.outlet("t", new Fog(Flow.ofGpm(gpm), Pressure.ofPsi(100)), false);
        Lay lay = Lays.one(0, new Leg(List.of(Lays.run("h", 2.5, 2, 300, 0)), fog));
        return FieldMethods.listOf(LaySolver.solve(lay, new Ask.AtFlow(Flow.ofGpm(gpm))), UnitSystem.US);
    }

    private static FieldMethods by(TradeMethod method, List<FieldMethods> all) {
        return all.stream().filter(one -> one.method() == method).findFirst().orElseThrow();
    }

    /** 250 gpm in 300 ft of 2 1/2 in: 2Q^2 12.5, subtract ten 15, 2Q^2 + Q 15 psi per 100 ft (study cards). */
    @Test
    void methodsMatchesPractice() {
        List<FieldMethods> all = at(250);
        assertThat(psi(by(TradeMethod.COEFFICIENT, all))).isCloseTo(137.5, within(SUM));
        assertThat(psi(by(TradeMethod.CONDENSED, all))).isCloseTo(137.5, within(SUM));
        assertThat(psi(by(TradeMethod.HAND, all))).isCloseTo(137.5, within(SUM));
        assertThat(psi(by(TradeMethod.SUBTRACT_TEN, all))).isCloseTo(145, within(SUM));
        assertThat(psi(by(TradeMethod.N, all))).isCloseTo(145, within(SUM));
        assertThat(psi(by(TradeMethod.UNDERWRITERS, all))).isCloseTo(145, within(SUM));
        assertThat(by(TradeMethod.SUBTRACT_TEN, all).off().orElseThrow().psi()).isCloseTo(7.5, within(SUM));
    }

    private static double psi(FieldMethods one) {
        return one.pump().orElseThrow().psi();
    }

    /** The hand knows fingers and gaps: 260 gpm are taken as 250, and that is said; below 100 gpm it has none. */
    @Test
    void handTakesTheNearestFingerHolds() {
        FieldMethods near = by(TradeMethod.HAND, at(260));
        assertThat(psi(near)).isCloseTo(137.5, within(SUM));
        assertThat(near.note()).isEqualTo("260 gpm taken as 250 gpm, the nearest finger or gap");
        assertThat(by(TradeMethod.HAND, at(250)).note()).isEmpty();
        assertThat(by(TradeMethod.HAND, at(90)).refused()).contains("90 gpm").contains("100 to 500 gpm");
    }

    /** Outside its range or for a size it is not taught for, a method is refused with the reason. */
    @Test
    void methodsOutsideTheirRangeRefused() {
        List<FieldMethods> low = at(110);
        assertThat(by(TradeMethod.SUBTRACT_TEN, low).refused()).contains("flow");
        assertThat(low)
                .filteredOn(one -> one.pump().isPresent())
                .allMatch(one -> one.refused().isEmpty());
        assertThat(by(TradeMethod.COEFFICIENT, low).pump()).isPresent();
        LayState wye = LaySolver.solve(Lays.gardenCourt(false), new Ask.AtTip(Pressure.ofPsi(50)));
        List<FieldMethods> all = FieldMethods.listOf(wye, UnitSystem.US);
        assertThat(by(TradeMethod.HAND, all).refused()).contains("leader-3").contains("3 in");
        assertThat(by(TradeMethod.COEFFICIENT, all).off().orElseThrow().psi()).isCloseTo(0, within(SUM));
        assertThat(Optional.of(all.size())).contains(2 * TradeMethod.values().length);
    }

    /** On an SI page a size is in mm, and a flow beside the gpm of the rule in L/min. */
    @Test
    void reasonsInSiRefused() {
        LayState metric = LaySolver.solve(Lays.gardenCourt(false), new Ask.AtFlow(Flow.ofGpm(250)));
        List<FieldMethods> all = FieldMethods.listOf(metric, UnitSystem.SI);
        assertThat(all).noneMatch(one -> one.refused().contains(" in hose ("));
        assertThat(all).anyMatch(one -> one.refused().contains(" mm hose ("));
    }
}
