package org.hosewright.hydraulics.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplyTest {
    /** The examples' expected numbers are given to 3 gpm and half a psi. */
    private static final double GPM = 3;

    private static final double HALF_PSI = 0.5;

    private static final HydrantCurve HYDRANT =
            new HydrantCurve(Pressure.ofPsi(62), Pressure.ofPsi(44), Flow.ofGpm(890));

    @Test
    void hydrantAtTwentyPsiExpectedNumbersHold() {
        assertThat(HYDRANT.flowAt(Pressure.ofPsi(20)).gpm()).isCloseTo(1406, within(GPM));
    }

    /** Source: NFPA 291, powers of the drop to 0.54 (from memory): 18 to 42 psi by 4.763 and 7.526. */
    @Test
    void hydrantProjectionMatchesPractice() {
        assertThat(HYDRANT.flowAt(Pressure.ofPsi(20)).gpm()).isCloseTo(890 * 7.526 / 4.763, within(1.0));
        assertThat(HYDRANT.flowAt(Pressure.ofPsi(62)).gpm()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"161,52.7", "322,40.6", "500,18.1"})
    void intakeExpectedNumbersHold(double flow_gpm, double intake_psi) {
        assertThat(line(0.20).intakeAt(Flow.ofGpm(flow_gpm)).psi()).isCloseTo(intake_psi, within(HALF_PSI));
    }

    @ParameterizedTest
    @CsvSource({"0.20,487", "0.08,698"})
    void mostFlowExpectedNumbersHold(double c, double most_gpm) {
        SupplyLine line = line(c);
        assertThat(line.most().gpm()).isCloseTo(most_gpm, within(GPM));
        assertThat(line.intakeAt(line.most()).psi()).isCloseTo(20, within(1e-6));
    }

    @Test
    void flowAndPressureBothWaysAgree() {
        for (double flow_gpm = 0; flow_gpm < 1700; flow_gpm += 13) {
            Pressure pressure = HYDRANT.pressureAt(Flow.ofGpm(flow_gpm));
            assertThat(HYDRANT.flowAt(pressure).gpm()).isCloseTo(flow_gpm, within(1e-6));
        }
    }

    @Test
    void supplyThatStandsTooLowGivesNothingHolds() {
        HydrantCurve weak = new HydrantCurve(Pressure.ofPsi(18), Pressure.ofPsi(10), Flow.ofGpm(300));
        assertThat(new SupplyLine(weak, List.of(), Pressure.ofPsi(20)).most().gpm())
                .isZero();
    }

    @Test
    void testThatCannotBeProjectedIsRefused() {
        assertThatThrownBy(() -> new HydrantCurve(Pressure.ofPsi(50), Pressure.ofPsi(50), Flow.ofGpm(500)))
                .isInstanceOf(InvalidInput.class);
        assertThat(new HydrantCurve(Pressure.ofPsi(60), Pressure.ofPsi(57), Flow.ofGpm(300)).isWeakTest())
                .isTrue();
        assertThat(HYDRANT.isWeakTest()).isFalse();
    }

    /** Source: Firehouse, tanker of 3,000 gal less 10 %, 12 minutes: 225 gpm. */
    @Test
    void safety16TankMinutesUseNineTenthsOfTheLevel() {
        TankTime time = TankTime.of(Volume.ofGallons(3000), Flow.ofGpm(225), Optional.empty());
        assertThat(time.lasts().seconds()).isCloseTo(12 * 60, within(1e-6));
        assertThat(time.isShort()).isFalse();
    }

    @Test
    void safety16TankMinutesKeepTheTankToPumpLimit() {
        TankTime time = TankTime.of(Volume.ofGallons(750), Flow.ofGpm(700), Optional.of(Flow.ofGpm(500)));
        assertThat(time.isShort()).isTrue();
        assertThat(time.drawn().gpm()).isCloseTo(500, within(1e-9));
        // 675 gal at 500 gpm
        assertThat(time.lasts().seconds()).isCloseTo(81, within(1e-6));
    }

    private static SupplyLine line(double c) {
        Hose hose = new Hose(
                "supply", Length.ofInches(4), Length.ofFeet(100), Known.of(HoseLoss.ofUs(c)), Optional.empty());
        Run run = new Run(hose, Length.ofFeet(650), Length.ofFeet(12));
        return new SupplyLine(HYDRANT, List.of(run), Pressure.ofPsi(20));
    }
}
