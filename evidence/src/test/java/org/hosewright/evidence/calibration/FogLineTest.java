package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hosewright.evidence.calibration.NightWriter.row;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** A fog line as companies measure them: unpublished readings, common practice without source. */
class FogLineTest {
    private static final double AT_psi = 75;

    /** What the company went by: 20 psi per 100 ft, at the 150 gpm of its tip. */
    private static final double RULE_C = 20 / 2.25;

    private static NightWriter gear() {
        Map<String, Tip> settings = new LinkedHashMap<>();
        settings.put("fog", new Fog(Flow.ofGpm(150), Pressure.ofPsi(AT_psi)));
        settings.put("slug", new SmoothBore(Length.ofInches(15.0 / 16), Pressure.ofPsi(50)));
        return new NightWriter()
                .hose("attack-175", RULE_C)
                .discharge("crosslay-1")
                .nozzle(new Nozzle("slug-fog", settings, Optional.empty(), Optional.empty()), false)
                .gauge("gauge-a", 400, 0.005, new Tap.BeforePiping())
                .gauge("gauge-b", 200, 0.005, new Tap.Side(Optional.of(Length.ofInches(1.5))))
                .meter("meter-1", 0.05);
    }

    private static Row fog(String id, double length, double pump, double tip, double flow) {
        return row(id, "attack-175", length, 0, "slug-fog", pump, tip, flow).setting("fog");
    }

    private static NightWriter night() {
        return gear().rows(
                        fog("1", 200, 120, 75, 152),
                        fog("2", 400, 160, 75, 155),
                        fog("3", 700, 210, 80, 150),
                        fog("4", 800, 240, 80, 161));
    }

    private static Row slug() {
        return fog("5", 800, 240, 80, 182).setting("slug");
    }

    private static Course line(double length_ft) {
        List<Stretch> hose = List.of(new Stretch("attack-175", Length.ofFeet(length_ft)));
        return new Course(hose, "crosslay-1", new Length(0), "slug-fog", "fog");
    }

    @Test
    void hoseAndPipingPartMatchesPractice() {
        Calibration night = Calibration.of(night().night());
        Belief belief = night.belief();
        Pressure at = Pressure.ofPsi(AT_psi);
        double atDischarge =
                belief.neededAtDischarge(line(100), at).orElseThrow().value().psi();
        double before = belief.neededPump(line(100), at).orElseThrow().value().psi();
        assertThat(atDischarge - AT_psi).isBetween(14.5, 18.5);
        assertThat(before - atDischarge).isBetween(6.0, 21.0);
        assertThat(night.terms().hoses()).containsKey("attack-175");
        assertThat(night.terms().discharges()).containsKey("crosslay-1");
        assertThat(night.assumed()).anyMatch(text -> text.contains("rest on the tip's rating and the meter"));
    }

    @Test
    void sevenHundredFeetMatchesPractice() {
        Belief belief = Calibration.of(night().night()).belief();
        Pressure tip = Pressure.ofPsi(80);
        assertThat(belief.neededPump(line(700), tip).orElseThrow().value().psi())
                .isCloseTo(210, within(9.0));
    }

    @Test
    void aPairThatCannotBothBeSteadyIsCalledOutMatchesPractice() {
        Calibration night = Calibration.of(night().rows(slug()).night());
        Finding fourth = night.readings().get(3).finding();
        Finding fifth = night.readings().get(4).finding();
        assertThat(fourth.says()).contains("readings 4 and 5 contradict each other", "both cannot be steady");
        assertThat(fifth.says()).contains("readings 4 and 5 contradict each other", "both cannot be steady");
        assertThat(fifth.kind()).isNotEqualTo(FindingKind.NONE);
        assertThat(night.readings().get(4).used()).isFalse();
    }

    @Test
    void aPairAloneCannotBeToldMatchesPractice() {
        Calibration night =
                Calibration.of(gear().rows(fog("4", 800, 240, 80, 161), slug()).night());
        assertThat(night.readings()).allMatch(judged -> judged.finding().kind() == FindingKind.CANNOT_TELL);
        assertThat(night.terms().hoses()).isEmpty();
    }
}
