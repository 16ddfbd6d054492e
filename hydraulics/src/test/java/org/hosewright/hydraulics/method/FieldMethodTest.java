package org.hosewright.hydraulics.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hosewright.hydraulics.demand.FireFlow;
import org.hosewright.hydraulics.demand.SprinklerHead;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.foam.Eductor;
import org.hosewright.hydraulics.foam.FoamMix;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.hydraulics.stream.OutletFlow;
import org.hosewright.hydraulics.stream.StreamReach;
import org.hosewright.hydraulics.supply.Drafting;
import org.hosewright.hydraulics.supply.MoreLines;
import org.hosewright.hydraulics.supply.Relay;
import org.hosewright.hydraulics.supply.Shuttle;
import org.junit.jupiter.api.Test;

final class FieldMethodTest {
    private static final long SEED = 1123581321;

    /** As a share; rounding only. */
    private static final double ROUNDING = 1e-9;

    private static final Length HUNDRED = Length.ofFeet(100);

    @Test
    void flowsOutsideARuleAreRefused() {
        refused(new UnderwritersMethod(), 1001);
        refused(NMethod.ONE_AND_THREE_QUARTER_INCH, 90);
        refused(NMethod.TWO_AND_HALF_INCH, 410);
        refused(new SubtractTen(), 150);
        refused(HandMethod.TWO_AND_HALF_INCH, 260);
        refused(HandMethod.ONE_AND_THREE_QUARTER_INCH, 225);
        refused(SquareMethod.FIVE_INCH, 2600);
        refused(new CoefficientMethod(HoseLoss.ofUs(10)), -1);
    }

    @Test
    void valuesOutsideARuleAreRefused() {
        assertThatThrownBy(() -> StreamReach.across(Length.ofInches(0.5), Pressure.ofPsi(50)))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> StreamReach.up(Length.ofInches(1), Pressure.ofPsi(20)))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> OutletFlow.ROUNDED.of(Length.ofInches(2.5), Pressure.ofPsi(5)))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FoamMix(new Ratio(0.5))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new SprinklerHead(0.1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> FireFlow.nationalFireAcademy(HUNDRED, HUNDRED, 1, new Ratio(0.75), 0))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Drafting.SEA_LEVEL.correction(Length.ofFeet(30), Length.ofFeet(5)))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> CoefficientMethod.measured(
                        Pressure.ofPsi(50), Pressure.ofPsi(60), new Length(0), HUNDRED, Flow.ofGpm(100)))
                .isInstanceOf(InvalidInput.class);
    }

    @Test
    void parallelLinesLoseTheSameInEachHolds() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            List<HoseLoss> losses = List.of(
                    HoseLoss.ofUs(0.1 + 10 * random.nextDouble()),
                    HoseLoss.ofUs(0.1 + 10 * random.nextDouble()),
                    HoseLoss.ofUs(0.1 + 10 * random.nextDouble()));
            List<Length> lengths = List.of(
                    Length.ofFeet(50 + 500 * random.nextDouble()),
                    Length.ofFeet(50 + 500 * random.nextDouble()),
                    Length.ofFeet(50 + 500 * random.nextDouble()));
            Flow whole = Flow.ofGpm(1000 * random.nextDouble());
            double loss_Pa = ParallelLines.of(losses, lengths).at(whole).pascals();
            double sum = 0;
            for (int line = 0; line < 3; line++) {
                sum += Math.sqrt(
                        loss_Pa / (losses.get(line).r() * lengths.get(line).metres()));
            }
            assertThat(sum)
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(whole.cubicMetresPerSecond(), within(ROUNDING * sum));
        }
    }

    @Test
    void lengthsThatAreAlikeDoNotMatterInParallelAgree() {
        List<HoseLoss> losses = List.of(HoseLoss.ofUs(2), HoseLoss.ofUs(0.8));
        double alike = ParallelLines.of(losses).over(HUNDRED, Flow.ofGpm(500)).psi();
        double given = ParallelLines.of(losses, List.of(HUNDRED, HUNDRED))
                .at(Flow.ofGpm(500))
                .psi();
        assertThat(given).isCloseTo(alike, within(ROUNDING * alike));
    }

    @Test
    void speedAndWeightOfWaterMatchesPractice() {
        // v = 0.4085 Q / d^2: 150 gpm in 1 3/4 in runs at 20.0 ft/s; a 50 ft length of it holds 52 lb of water.
        HoseWater water = new HoseWater(Length.ofInches(1.75));
        double feet = Unit.FT.ofSi(water.speed_m_s(Flow.ofGpm(150)));
        assertThat(feet).isCloseTo(0.4085 * 150 / 1.75 / 1.75, within(0.01));
        assertThat(water.weight(Length.ofFeet(50)).lbf()).isCloseTo(52, within(0.5));
    }

    @Test
    void moreLinesAtTheirBoundsMatchesPractice() {
        assertThat(MoreLines.byPercent(Pressure.ofPsi(100), Pressure.ofPsi(90))).isEqualTo(3);
        assertThat(MoreLines.byPercent(Pressure.ofPsi(100), Pressure.ofPsi(89.5)))
                .isEqualTo(2);
        assertThat(MoreLines.byPercent(Pressure.ofPsi(100), Pressure.ofPsi(85))).isEqualTo(2);
        assertThat(MoreLines.byPercent(Pressure.ofPsi(100), Pressure.ofPsi(75))).isEqualTo(1);
        assertThat(MoreLines.byPercent(Pressure.ofPsi(100), Pressure.ofPsi(74))).isZero();
        assertThat(MoreLines.byFirstDigit(Pressure.ofPsi(70), Pressure.ofPsi(63)))
                .isEqualTo(3);
        assertThat(MoreLines.squared(Pressure.ofPsi(7), 3).psi()).isCloseTo(63, within(ROUNDING * 100));
    }

    @Test
    void foamRelayAndRoadMatchesPractice() {
        FoamMix mix = new FoamMix(new Ratio(0.03));
        assertThat(mix.lasts(Volume.ofGallons(5), Flow.ofGpm(95)).seconds() / 60)
                .isCloseTo(1.75, within(0.005));
        Eductor eductor = new Eductor(Pressure.ofPsi(200), Flow.ofGpm(95));
        assertThat(eductor.mostBackPressure().psi()).isCloseTo(130, within(ROUNDING * 1000));
        assertThat(eductor.matches(Flow.ofGpm(95))).isTrue();
        assertThat(eductor.matches(Flow.ofGpm(125))).isFalse();
        Relay relay = new Relay(Pressure.ofPsi(200), Pressure.ofPsi(20));
        assertThat(relay.pumpers(Length.ofFeet(2880), HoseLoss.ofUs(2), Flow.ofGpm(250)))
                .isEqualTo(3);
        assertThat(relay.apart(HoseLoss.ofUs(0.2), Flow.ofGpm(1000)).feet()).isCloseTo(900, within(0.001));
        // T = 0.65 + 1.7 D at 35 mph; the printed 1.7 is 60/35 rounded.
        assertThat(Shuttle.road(2, 35).seconds() / 60).isCloseTo(0.65 + 1.7 * 2, within(0.03));
    }

    @Test
    void aFloorAboveTheFirstMatchesPractice() {
        assertThat(WaterColumn.forFloor(1).psi()).isZero();
        assertThat(WaterColumn.forFloor(4).psi()).isCloseTo(15, within(ROUNDING * 100));
        assertThat(WaterColumn.FIELD.pressure(Length.ofFeet(30)).psi()).isCloseTo(15, within(ROUNDING * 100));
        assertThat(ApplianceAllowance.STRUCTURAL.of(2, Flow.ofGpm(349)).psi()).isZero();
        assertThat(ApplianceAllowance.STRUCTURAL.of(2, Flow.ofGpm(350)).psi()).isCloseTo(20, within(1e-9));
    }

    private static void refused(LossMethod method, double gpm) {
        assertThatThrownBy(() -> method.loss(Flow.ofGpm(gpm), HUNDRED))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("flow");
    }
}
