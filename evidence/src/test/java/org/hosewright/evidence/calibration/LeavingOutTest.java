package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.junit.jupiter.api.Test;

/** What a night tells without a reading is what it tells where a person sets that reading aside. */
class LeavingOutTest {
    /** Share of a standard error: both fits end within their tolerance of the same point. */
    private static final double NEAR = 2e-3;

    private static Calibration night(String... aside) {
        NightWriter writer = ExampleNight.tapped(new Tap.Pitot());
        for (String reading : aside) {
            writer.ruling(reading, false, "left out");
        }
        return Calibration.of(writer.night());
    }

    @Test
    void withoutAReadingIsTheNightWithItSetAsideHolds() {
        Calibration whole = night("7");
        assertThat(whole.leavingOut().listUsed()).containsExactly("1", "2", "3", "4", "5", "6", "8", "9");
        double moved = 0;
        for (String reading : whole.leavingOut().listUsed()) {
            Without without = whole.leavingOut().without(reading);
            Calibration refit = night("7", reading);
            assertThat(refit.readings().stream().filter(Judged::used)).hasSize(7);
            same(without.terms().hoses(), refit.terms().hoses());
            same(without.terms().discharges(), refit.terms().discharges());
            same(without.terms().nozzles(), refit.terms().nozzles());
            same(without.terms().meters(), refit.terms().meters());
            Course far = ExampleNight.level(750);
            Known<Pressure> needed =
                    without.belief().neededPump(far, Pressure.ofPsi(50)).orElseThrow();
            same(
                    Map.of("pump", needed),
                    Map.of(
                            "pump",
                            refit.belief().neededPump(far, Pressure.ofPsi(50)).orElseThrow()));
            Known<Pressure> all =
                    whole.belief().neededPump(far, Pressure.ofPsi(50)).orElseThrow();
            moved = Math.max(moved, Math.abs(needed.value().psi() - all.value().psi()));
        }
        System.out.println("needed at 750 ft moves by at most " + moved + " psi");
        assertThat(moved).isBetween(0.3, 6.0);
    }

    private static <Q extends Quantity> void same(Map<String, Known<Q>> one, Map<String, Known<Q>> other) {
        assertThat(one.keySet()).isEqualTo(other.keySet());
        one.forEach((id, known) -> {
            Known<Q> beside = other.get(id);
            double error = beside.standardErrorSi();
            assertThat(known.value().si()).as(id).isCloseTo(beside.value().si(), within(NEAR * error));
            assertThat(known.standardErrorSi()).as(id).isCloseTo(error, within(NEAR * error));
        });
    }

    @Test
    void aNumberThatOneReadingCarriesIsNotToldWithoutItHolds() {
        Row[] rows = Ideal.attacks(new double[] {350}, 40, 45, 50, 55, 60);
        Row far = Ideal.attack("far", 800, 50);
        Row[] all = java.util.Arrays.copyOf(rows, rows.length + 1);
        all[rows.length] = far;
        Calibration night = Calibration.of(Ideal.gear().rows(all).night());
        assertThat(night.terms().hoses()).containsKey("attack-175");
        assertThat(night.leavingOut().without("far").terms().hoses()).isEmpty();
        assertThat(night.leavingOut().without("1").terms().hoses()).containsKey("attack-175");
    }

    @Test
    void aReadingThatDoesNotCountRefused() {
        assertThatThrownBy(() -> night().leavingOut().without("7"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContainingAll("7", "one of 1, 2, 3");
    }

    @Test
    void aNightWithoutNumbersLeavesNothingOutHolds() {
        Calibration none = Calibration.of(Ideal.gear().night());
        assertThat(none.leavingOut().listUsed()).isEqualTo(List.of());
    }
}
