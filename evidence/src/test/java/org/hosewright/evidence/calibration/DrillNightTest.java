package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** The invented company's drill night, made with a known truth; the bands are what an honest method may give. */
class DrillNightTest {
    private static final Calibration PITOT =
            Calibration.of(ExampleNight.tapped(new Tap.Pitot()).night());
    private static final Calibration SIDE = Calibration.of(
            ExampleNight.tapped(new Tap.Side(Optional.of(Length.ofInches(1.5)))).night());
    private static final Calibration UNKNOWN =
            Calibration.of(ExampleNight.tapped(new Tap.Side(Optional.empty())).night());

    @Test
    void hosePipingAndMeterHold() {
        Known<HoseLoss> hose = PITOT.terms().hoses().get("attack-175");
        assertThat(hose.value().us()).isBetween(8.8, 9.7);
        assertThat(hose.standardError().orElseThrow().us()).isBetween(0.09, 0.40);
        Known<PointLoss> piping = PITOT.terms().discharges().get("crosslay-1");
        assertThat(piping.value().us()).isBetween(0.3, 3.2);
        assertThat(piping.standardError().orElseThrow().us()).isBetween(0.4, 1.4);
        assertThat(PITOT.terms().meters().get("meter-1").value().value()).isBetween(1.035, 1.075);
        assertThat(PITOT.belief().correlation("attack-175", "crosslay-1")).isBetween(-1.0, 0.5);
    }

    @Test
    void readingSevenIsFoundAndTheOthersAreNotHolds() {
        for (Judged judged : PITOT.readings()) {
            boolean seven = judged.reading().equals("7");
            assertThat(judged.used()).as(judged.reading()).isEqualTo(!seven);
            if (!seven) {
                assertThat(judged.finding().kind()).as(judged.reading()).isEqualTo(FindingKind.NONE);
            }
        }
        Judged seven = PITOT.readings().get(6);
        assertThat(seven.predictedPump().value().psi()).isBetween(186.5, 192.5);
        assertThat(seven.excess().psi()).isBetween(10.5, 16.5);
        assertThat(seven.finding().kind()).isEqualTo(FindingKind.EXTRA_LOSS);
        assertThat(seven.finding().also()).contains(FindingKind.PUMP_GAUGE, FindingKind.LENGTH);
        assertThat(seven.finding().says()).startsWith("expected 1").endsWith("walk the line between pump and tip");
    }

    @Test
    void neededPressuresAndDeliveriesHold() {
        double[] lengths_ft = {150, 350, 550, 750};
        double[] needed_psi = {90.0, 138.1, 186.1, 234.2};
        double[] rule_gpm = {148.7, 145.5, 143.9, 142.9};
        double[] book_psi = {110, 190, 270, 351};
        double[] book_gpm = {178, 189, 194, 197};
        double[] book_lbf = {74, 83, 87, 90};
        for (int i = 0; i < lengths_ft.length; i++) {
            Course line = ExampleNight.level(lengths_ft[i]);
            Belief belief = PITOT.belief();
            assertThat(belief.neededPump(line, Pressure.ofPsi(50))
                            .orElseThrow()
                            .value()
                            .psi())
                    .isCloseTo(needed_psi[i], within(3.0));
            Pressure rule = Pressure.ofPsi(50 + 0.18 * lengths_ft[i]);
            assertThat(belief.delivered(line, rule).orElseThrow().value().gpm()).isCloseTo(rule_gpm[i], within(2.0));
            Pressure book = Pressure.ofPsi(book_psi[i]);
            assertThat(belief.delivered(line, book).orElseThrow().value().gpm()).isCloseTo(book_gpm[i], within(2.0));
            assertThat(belief.reaction(line, book).orElseThrow().value().newtons() / Constants.LBF_N)
                    .isCloseTo(book_lbf[i], within(2.0));
        }
    }

    @Test
    void safety06NeededIsKnownWithAndWithoutTheReadingSetAside() {
        Course longest = ExampleNight.level(750);
        double without = PITOT.belief()
                .neededPump(longest, Pressure.ofPsi(50))
                .orElseThrow()
                .value()
                .psi();
        double with = PITOT.ifUsed()
                .get("7")
                .neededPump(longest, Pressure.ofPsi(50))
                .orElseThrow()
                .value()
                .psi();
        assertThat(PITOT.ifUsed()).containsOnlyKeys("7");
        assertThat(with).isBetween(without + 1, 243.0);
    }

    @Test
    void aSideTapMissesTheVelocityHeadHolds() {
        assertThat(SIDE.terms().meters().get("meter-1").value().value()).isBetween(0.97, 1.015);
        assertThat(SIDE.terms().hoses().get("attack-175").value().us()).isBetween(7.7, 8.7);
        assertThat(SIDE.terms().discharges().get("crosslay-1").value().us()).isBetween(0.0, 1.2);
        assertThat(SIDE.belief()
                        .neededPump(ExampleNight.level(550), Pressure.ofPsi(50))
                        .orElseThrow()
                        .value()
                        .psi())
                .isCloseTo(166, within(5.0));
    }

    @Test
    void aSideTapOfUnknownDiameterWithholdsHolds() {
        assertThat(UNKNOWN.terms().hoses()).isEmpty();
        assertThat(UNKNOWN.terms().discharges()).isEmpty();
        assertThat(UNKNOWN.terms().meters()).isEmpty();
        assertThat(UNKNOWN.belief().neededPump(ExampleNight.level(550), Pressure.ofPsi(50)))
                .isEmpty();
        assertThat(UNKNOWN.belief().delivered(ExampleNight.level(550), Pressure.ofPsi(180)))
                .isEmpty();
        List<String> whats = UNKNOWN.withheld().stream().map(Withheld::what).toList();
        assertThat(whats)
                .contains("flow, tip pressure and reaction", "loss of attack-175", "piping loss of crosslay-1");
        assertThat(UNKNOWN.withheld().get(0).why()).contains("13 %", "6.3 %");
    }
}
