package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** A night that no hose, piping and nozzle could give says so, and gives no number at all. */
class ContradictionTest {
    private static final double KPA = 6.894757;
    private static final double FEET = 3.28084;

    private static Row[] spoilt(UnaryOperator<Row> spoil) {
        return Arrays.stream(Ideal.attacks(new double[] {150, 350, 550, 750}, 40, 45, 50, 55))
                .map(spoil)
                .toArray(Row[]::new);
    }

    private static void noNumbers(UnaryOperator<Row> spoil, String why) {
        Calibration night = Calibration.of(Ideal.gear().rows(spoilt(spoil)).night());
        assertThat(night.withheld()).singleElement().satisfies(said -> {
            assertThat(said.what()).isEqualTo("every number of this night");
            assertThat(said.why()).contains(why);
            assertThat(said.needs()).contains("units", "lengths");
        });
        Terms terms = night.terms();
        assertThat(terms.hoses()).isEmpty();
        assertThat(terms.discharges()).isEmpty();
        assertThat(terms.nozzles()).isEmpty();
        assertThat(terms.meters()).isEmpty();
        assertThat(terms.gauges()).isEmpty();
        assertThat(night.residual()).isEmpty();
        assertThat(night.nextReading()).isEmpty();
        assertThat(night.leavingOut().listUsed()).isEmpty();
        assertThat(night.belief().neededPump(ExampleNight.level(350), Pressure.ofPsi(50)))
                .isEmpty();
        assertThat(night.readings()).hasSize(16).allSatisfy(judged -> {
            assertThat(judged.used()).isFalse();
            assertThat(judged.finding().kind()).isEqualTo(FindingKind.NONE);
            assertThat(judged.finding().says()).contains("the night as a whole").doesNotContain("psi");
        });
    }

    @Test
    void theSoundNightBesideThemGivesNumbersHolds() {
        Calibration night = Calibration.of(Ideal.gear().rows(spoilt(row -> row)).night());
        assertThat(night.terms().hoses()).containsKey("attack-175");
    }

    @Test
    void linesThatLoseNothingOrLessHold() {
        noNumbers(row -> row.pump(row.tip()), "no hose, piping and nozzle");
        noNumbers(row -> row.pump(row.tip() - 4), "no hose, piping and nozzle");
    }

    @Test
    void flowsThatDoNotFollowThePressureHold() {
        Random random = new Random(3);
        noNumbers(row -> row.flow(90 + 160 * random.nextDouble()), "scatter more than six times");
    }

    @Test
    void pumpPressuresThatFollowNothingHold() {
        Random random = new Random(4);
        noNumbers(row -> row.pump(80 + 200 * random.nextDouble()), "scatter more than six times");
        noNumbers(row -> row.pump(150), "contradict each other as a whole");
    }

    @Test
    void longerLinesThatLoseLessHold() {
        noNumbers(row -> row.hose(feet(900 - row.hose().get(0).length().feet())), "contradict each other as a whole");
    }

    @Test
    void unitsThatCannotBeHold() {
        noNumbers(row -> row.flow(row.flow() * 3.785412), "far more flow from seven-eighths");
        noNumbers(row -> row.pump(row.pump() / 14.5038).tip(row.tip() / 14.5038), "far less loss of attack-175");
        noNumbers(row -> row.hose(feet(row.hose().get(0).length().feet() * FEET)), "far less loss of attack-175");
    }

    /** Pressures in kPa under a head of psi keep every ratio; the gauge that showed them would have needed a longer scale. */
    @Test
    void moreThanTheGaugeShowsRefused() {
        UnaryOperator<Row> inKpa = row -> row.pump((double) Math.round(row.pump() * KPA))
                .tip((double) Math.round(row.tip() * KPA))
                .flow(-1);
        refused(inKpa, "pump pressure", "at most 400 psi", "gauge-a");
        refused(row -> row.pump(390).tip(276), "tip pressure", "276 psi", "at most 200 psi", "gauge-b");
    }

    private static void refused(UnaryOperator<Row> spoil, String... said) {
        assertThatThrownBy(() -> Calibration.of(Ideal.gear().rows(spoilt(spoil)).night()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContainingAll(said)
                .hasMessageContainingAll("reading 1", "is it in the unit that its column names?");
    }

    private static List<Stretch> feet(double length_ft) {
        return List.of(new Stretch("attack-175", Length.ofFeet(length_ft)));
    }
}
