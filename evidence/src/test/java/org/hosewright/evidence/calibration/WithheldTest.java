package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Night;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** What a night cannot tell is withheld, with the reason and the reading that would settle it. */
class WithheldTest {
    private static final Pressure AT = Pressure.ofPsi(50);

    private static Optional<Withheld> find(Calibration night, String what) {
        return night.withheld().stream().filter(w -> w.what().contains(what)).findFirst();
    }

    private static Course level(double length_ft) {
        return ExampleNight.level(length_ft);
    }

    @Test
    void oneLengthTellsOnlyTheSumHolds() {
        Calibration night = Calibration.of(
                Ideal.gear().rows(Ideal.attacks(new double[] {350}, 40, 50, 60)).night());
        assertThat(night.terms().hoses()).isEmpty();
        assertThat(night.terms().discharges()).isEmpty();
        assertThat(find(night, "loss of attack-175").orElseThrow().why()).contains("only their sum is known");
        assertThat(find(night, "loss of attack-175").orElseThrow().needs()).contains("twice as long, or half as long");
        assertThat(night.belief()
                        .neededPump(level(350), AT)
                        .orElseThrow()
                        .value()
                        .psi())
                .isCloseTo(Ideal.pump(350, 0, Ideal.PIPING_K, 50), within(3.0));
        assertThat(night.belief().neededPump(level(1000), AT)).isEmpty();
        assertThat(night.nextReading().orElseThrow().length().feet()).isNotCloseTo(350, within(100.0));
    }

    @Test
    void oneReadingTellsWhatIsMissingHolds() {
        Calibration night =
                Calibration.of(Ideal.gear().rows(Ideal.attack("1", 350, 50)).night());
        assertThat(night.terms().hoses()).isEmpty();
        assertThat(night.residual()).isEmpty();
        assertThat(night.readings().get(0).finding().says()).contains("too little else was read");
        assertThat(night.withheld()).isNotEmpty();
    }

    @Test
    void hosesFlownInLikeSharesAreNotToldApartHolds() {
        Calibration night = Calibration.of(Ideal.gear()
                .rows(
                        Ideal.chain("1", 300, 150, 50),
                        Ideal.chain("2", 300, 150, 40),
                        Ideal.chain("3", 400, 200, 50),
                        Ideal.chain("4", 400, 200, 40))
                .night());
        assertThat(night.terms().hoses()).isEmpty();
        assertThat(find(night, "loss of leader-3").orElseThrow().why()).contains("attack-175", "like shares");
        assertThat(find(night, "loss of attack-175").orElseThrow().needs()).contains("another share of the two");
    }

    @Test
    void withAMeterAloneThePipingIsWithheldForWhatItIsHolds() {
        Calibration night = Calibration.of(ExampleNight.gear(new Tap.Pitot())
                .rows(ExampleNight.rows().stream().map(row -> row.tip(-1)).toArray(Row[]::new))
                .night());
        assertThat(night.terms().hoses()).containsKey("attack-175");
        assertThat(night.terms().discharges()).isEmpty();
        Withheld piping = find(night, "piping loss of crosslay-1").orElseThrow();
        assertThat(piping.why()).contains("small beside the loss of attack-175").doesNotContain("shares");
        assertThat(piping.needs()).contains("shortest line");
    }

    @Test
    void hosesFlownInDifferentSharesAreToldApartHolds() {
        Calibration night = Calibration.of(Ideal.gear()
                .rows(
                        Ideal.chain("1", 300, 150, 50),
                        Ideal.chain("2", 300, 150, 40),
                        Ideal.chain("3", 1000, 150, 50),
                        Ideal.chain("4", 1000, 150, 40),
                        Ideal.chain("5", 200, 400, 50),
                        Ideal.chain("6", 200, 400, 40))
                .night());
        assertThat(night.terms().hoses().get("attack-175").value().us()).isCloseTo(Ideal.ATTACK_C, within(0.4));
        assertThat(night.terms().hoses().get("leader-3").value().us()).isCloseTo(Ideal.LEADER_C, within(0.15));
    }

    @Test
    void theMeterCannotBeJudgedByAnUngaugedBoreHolds() {
        NightWriter ungauged = Ideal.gear().ungauged("seven-eighths");
        Calibration night = Calibration.of(ungauged.rows(Ideal.attacks(new double[] {150, 350, 550}, 40, 50))
                .night());
        assertThat(night.terms().meters()).isEmpty();
        assertThat(find(night, "factor of meter-1").orElseThrow().why()).contains("scaled together");
        assertThat(find(night, "flow factor of seven-eighths").orElseThrow().needs())
                .contains("the bore gauged");
        assertThat(night.assumed()).anyMatch(text -> text.contains("7/8 in taken as true; 1/64 in wider means 3.6 %"));
        double error = night.terms().hoses().get("attack-175").standardErrorSi();
        double gauged = Calibration.of(Ideal.gear()
                        .rows(Ideal.attacks(new double[] {150, 350, 550}, 40, 50))
                        .night())
                .terms()
                .hoses()
                .get("attack-175")
                .standardErrorSi();
        assertThat(error).isGreaterThan(1.5 * gauged);
    }

    @Test
    void theGaugeAtTheDischargeDoesNotSeeThePipingHolds() {
        NightWriter gear = Ideal.gear().gauge("gauge-a", 400, 0.005, new Tap.AtDischarge());
        List<Row> rows = new ArrayList<>();
        for (Row row : Ideal.attacks(new double[] {150, 350, 550}, 40, 50)) {
            double length = row.hose().get(0).length().feet();
            rows.add(row.pump(Ideal.pump(length, 0, 0, row.tip())));
        }
        Calibration night = Calibration.of(gear.rows(rows.toArray(new Row[0])).night());
        assertThat(night.terms().hoses().get("attack-175").value().us()).isCloseTo(Ideal.ATTACK_C, within(0.4));
        assertThat(night.belief().neededPump(level(350), AT)).isEmpty();
        assertThat(night.belief()
                        .neededAtDischarge(level(350), AT)
                        .orElseThrow()
                        .value()
                        .psi())
                .isCloseTo(Ideal.pump(350, 0, 0, 50), within(3.0));
        assertThat(find(night, "piping loss of crosslay-1").orElseThrow().needs())
                .contains("panel gauge");
    }

    private static Row[] automatic(boolean metered) {
        List<Row> rows = new ArrayList<>();
        for (double length : new double[] {150, 350, 550}) {
            for (double hundred : new double[] {1.2, 1.6}) {
                double pump = 100 + (Ideal.ATTACK_C * length / 100 + Ideal.PIPING_K) * hundred * hundred;
                rows.add(NightWriter.row(
                        String.valueOf(rows.size() + 1),
                        "attack-175",
                        length,
                        0,
                        "auto-100",
                        (double) Math.round(pump),
                        100,
                        metered ? 100 * hundred : -1));
            }
        }
        return rows.toArray(new Row[0]);
    }

    private static Night automaticNight(boolean metered) {
        Automatic auto = new Automatic(Pressure.ofPsi(100), Flow.ofGpm(60), Flow.ofGpm(200));
        return Ideal.gear()
                .nozzle("auto-100", auto, false)
                .rows(automatic(metered))
                .night();
    }

    @Test
    void safety11AnAutomaticTipTellsNoFlow() {
        Calibration night = Calibration.of(automaticNight(false));
        assertThat(night.terms().hoses()).isEmpty();
        assertThat(night.terms().discharges()).isEmpty();
        assertThat(find(night, "flow of auto-100").orElseThrow().needs()).contains("flow meter");
        Course line = new Course(
                List.of(new Stretch("attack-175", Length.ofFeet(350))), "crosslay-1", new Length(0), "auto-100", "");
        assertThat(night.belief().delivered(line, Pressure.ofPsi(180))).isEmpty();
        Calibration metered = Calibration.of(automaticNight(true));
        assertThat(metered.terms().hoses().get("attack-175").value().us()).isCloseTo(Ideal.ATTACK_C, within(0.9));
        assertThat(metered.belief().delivered(line, Pressure.ofPsi(180))).isEmpty();
    }

    @Test
    void onlyShutReadingsGiveNoNumbersHolds() {
        Row shut = Ideal.attack("1", 150, 100).pump(100).flow(-1).closed();
        Calibration night = Calibration.of(Ideal.gear().rows(shut).night());
        assertThat(night.withheld()).hasSize(1);
        assertThat(night.withheld().get(0).why()).contains("no reading with the nozzle open");
        assertThat(night.belief().neededPump(level(150), AT)).isEmpty();
        assertThat(Calibration.of(Ideal.gear().night()).withheld()).hasSize(1);
    }

    @Test
    void aNightThatContradictsItselfGivesNoNumbersHolds() {
        double[] off = {1.3, 0.75, 0.7, 1.4, 0.75, 1.3};
        Row[] rows = Ideal.attacks(new double[] {150, 350, 550}, 40, 50);
        for (int i = 0; i < rows.length; i++) {
            rows[i] = rows[i].pump(rows[i].pump() * off[i]);
        }
        Calibration night = Calibration.of(Ideal.gear().rows(rows).night());
        assertThat(night.terms().hoses()).isEmpty();
        assertThat(night.withheld().get(0).what()).isEqualTo("every number of this night");
        assertThat(night.readings()).noneMatch(Judged::used);
        assertThat(night.nextReading()).isEmpty();
    }

    @Test
    void safety17SectionsCountedAsFeetGiveNoNumbers() {
        List<Row> rows = new ArrayList<>();
        for (Row row : Ideal.attacks(new double[] {150, 350, 550}, 40, 50)) {
            double sections = row.hose().get(0).length().feet() / 50;
            rows.add(row.hose(List.of(new Stretch("attack-175", Length.ofFeet(sections)))));
        }
        Calibration night =
                Calibration.of(Ideal.gear().rows(rows.toArray(new Row[0])).night());
        assertThat(night.terms().hoses()).isEmpty();
        assertThat(night.withheld().get(0).why()).contains("far more loss of attack-175");
    }
}
