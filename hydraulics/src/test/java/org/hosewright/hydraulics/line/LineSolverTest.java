package org.hosewright.hydraulics.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineSolverTest {
    /** The examples' expected numbers are given to 1 psi. */
    private static final double PSI = 1;

    /** The examples' expected numbers in SI are given to 1 %. */
    private static final double SI_SHARE = 0.01;

    private static final Pressure FIFTY = Pressure.ofPsi(50);
    private static final Pressure KPA_350 = Pressure.ofKPa(350);

    @Test
    void gardenCourtExpectedNumbersHold() {
        assertThat(LineSolver.atTip(ExampleLines.crosslay(600, 20), FIFTY)
                        .pump()
                        .psi())
                .isCloseTo(207, within(PSI));
        assertThat(LineSolver.atTip(ExampleLines.gardenCourt(), FIFTY).pump().psi())
                .isCloseTo(117, within(PSI));
    }

    @Test
    void openLegAtTheTwoLegPressureExpectedNumbersHold() {
        LineState state = LineSolver.atPump(ExampleLines.gardenCourt(), Pressure.ofPsi(145));
        assertThat(state.flow().gpm()).isCloseTo(180, within(1.0));
        assertThat(state.tip().psi()).isCloseTo(62.9, within(PSI));
        assertThat(state.reaction().lbf()).isCloseTo(75.6, within(1.0));
    }

    @Test
    void valeExpectedNumbersHold() {
        assertThat(LineSolver.atTip(ExampleLines.delivery(75, 8), KPA_350)
                        .pump()
                        .kPa())
                .isCloseTo(663, within(663 * SI_SHARE));
        assertThat(LineSolver.atTip(ExampleLines.delivery(225, 8), KPA_350)
                        .pump()
                        .kPa())
                .isCloseTo(1103, within(1103 * SI_SHARE));
        Run feed = new Run(ExampleLines.DELIVERY_70, Length.ofMetres(150), Length.ofMetres(0));
        Run branch = new Run(ExampleLines.DELIVERY_45, Length.ofMetres(75), Length.ofMetres(8));
        Line line = new Line(ExampleLines.LEFT, List.of(feed, branch), ExampleLines.TIP_19, "");
        assertThat(LineSolver.atTip(line, KPA_350).pump().kPa()).isCloseTo(711, within(711 * SI_SHARE));
    }

    /** Source: City of Rohnert Park, driver/operator deck 3-8, "Calculating Friction Loss in Hose Lays". */
    @ParameterizedTest
    @CsvSource({
        "2,200,100,8,0.001",
        "2,100,300,6,0.001",
        "2,200,400,32,0.001",
        "2,300,200,36,0.001",
        "10,150,150,34,0.5"
    })
    void hoseLossMatchesPublished(double c, double flow_gpm, double length_ft, double loss_psi, double tolerance_psi) {
        Hose hose =
                new Hose("hose", Length.ofInches(2.5), Length.ofFeet(50), Known.of(HoseLoss.ofUs(c)), Optional.empty());
        Line line = ExampleLines.crosslay(hose, ExampleLines.CROSSLAY, ExampleLines.FOG, length_ft, 0);
        LineState state = LineSolver.atFlow(line, Flow.ofGpm(flow_gpm));
        assertThat(state.hoseLoss().psi()).isCloseTo(loss_psi, within(tolerance_psi));
    }

    /** Source: Fire Apparatus Magazine, September 2018: 200 ft of 1 3/4, 7/8 tip at 50 psi, 161 gpm, 49 psi, C 9.5. */
    @Test
    void measuredCoefficientMatchesPublished() {
        HoseLoss loss = HoseLoss.of(Pressure.ofPsi(49), Length.ofFeet(200), Flow.ofGpm(161));
        assertThat(loss.us()).isCloseTo(9.5, within(0.05));
        Hose hose = new Hose("hose", Length.ofInches(1.75), Length.ofFeet(50), Known.of(loss), Optional.empty());
        Discharge bare = new Discharge("out", Optional.empty(), Optional.empty());
        Line line = ExampleLines.crosslay(hose, bare, ExampleLines.SEVEN_EIGHTHS, 200, 0);
        LineState state = LineSolver.atTip(line, FIFTY);
        assertThat(state.flow().gpm()).isCloseTo(161, within(0.5));
        assertThat(state.pump().psi()).isCloseTo(99, within(0.5));
    }

    /** Source: Honolulu Community College, fire hydraulics notes: a 100 ft column stands at 43.4 psi. */
    @Test
    void safety14RiseUpCostsAndDownGivesPressure() {
        double level =
                LineSolver.atTip(ExampleLines.crosslay(200, 0), FIFTY).pump().psi();
        double up =
                LineSolver.atTip(ExampleLines.crosslay(200, 100), FIFTY).pump().psi();
        double down =
                LineSolver.atTip(ExampleLines.crosslay(200, -100), FIFTY).pump().psi();
        assertThat(up - level).isCloseTo(43.4, within(1e-9));
        assertThat(down - level).isCloseTo(-43.4, within(1e-9));
    }

    @Test
    void safety17SignOfTheRiseIsThatOfTheGround() {
        // 200 ft at 50 psi and 20 ft: 50 + 47.5 + 5.3 + 8.7 up, - 8.7 down
        assertThat(LineSolver.atTip(ExampleLines.crosslay(200, 20), FIFTY)
                        .pump()
                        .psi())
                .isCloseTo(111.5, within(0.1));
        assertThat(LineSolver.atTip(ExampleLines.crosslay(200, -20), FIFTY)
                        .pump()
                        .psi())
                .isCloseTo(94.2, within(0.1));
        assertThat(LineSolver.atPump(ExampleLines.crosslay(200, -20), Pressure.ofPsi(105))
                        .flow()
                        .gpm())
                .isGreaterThan(LineSolver.atPump(ExampleLines.crosslay(200, 20), Pressure.ofPsi(105))
                        .flow()
                        .gpm());
    }

    @Test
    void safety17MixedUnitsGiveTheSameLineAgrees() {
        // The same line written in metres, kPa and L/min: 1 ft = 0.3048 m, 1 psi = 6.894757 kPa, 1 gal = 3.785412 L.
        Hose hose = new Hose(
                "attack-175",
                Length.ofMillimetres(44.45),
                Length.ofMetres(15.24),
                Known.of(HoseLoss.of(
                        Pressure.ofKPa(9.19 * 6.894757), Length.ofMetres(30.48), Flow.ofLitresPerMinute(378.5412))),
                Optional.empty());
        Run run = new Run(hose, Length.ofMetres(600 * 0.3048), Length.ofMetres(20 * 0.3048));
        Nozzle tip = Nozzle.of("tip", new SmoothBore(Length.ofMillimetres(22.225), Pressure.ofBar(0.5 * 6.894757)));
        Line metric = new Line(ExampleLines.CROSSLAY, List.of(run), tip, "");
        double metric_kPa =
                LineSolver.atTip(metric, Pressure.ofKPa(50 * 6.894757)).pump().kPa();
        double us_psi =
                LineSolver.atTip(ExampleLines.crosslay(600, 20), FIFTY).pump().psi();
        // The factors above are rounded to seven digits.
        assertThat(metric_kPa / 6.894757).isCloseTo(us_psi, within(us_psi * 1e-6));
    }

    @Test
    void safety17SectionsAreNotFeet() {
        Line line = ExampleLines.crosslay(200, 0);
        assertThat(line.sections()).isEqualTo(4);
        assertThat(line.length().feet()).isCloseTo(200, within(1e-9));
        assertThat(ExampleLines.crosslay(201, 0).sections()).isEqualTo(5);
        // 4 x 50 ft lose what 200 ft lose, not what 4 ft lose: 9.19 x 2.585 x 2
        assertThat(LineSolver.atTip(line, FIFTY).hoseLoss().psi()).isCloseTo(47.5, within(0.1));
    }

    @Test
    void safety10ReactionIsExactWhereRulesOfThumbAreLow() {
        LineState state = LineSolver.atTip(ExampleLines.crosslay(200, 0), FIFTY);
        // 1.57 x 0.875^2 x 50
        assertThat(state.reaction().lbf()).isCloseTo(60.1, within(0.05));
        assertThat(state.flow().gpm() / 3 / state.reaction().lbf()).isCloseTo(0.89, within(0.005));
        assertThat(0.35 * state.flow().gpm() / state.reaction().lbf()).isCloseTo(0.94, within(0.005));
        LineState fog = LineSolver.atTip(
                ExampleLines.crosslay(ExampleLines.ATTACK, ExampleLines.CROSSLAY, ExampleLines.FOG, 200, 0),
                Pressure.ofPsi(75));
        // 0.0505 x 150 x sqrt 75
        assertThat(fog.reaction().lbf()).isCloseTo(65.6, within(0.05));
    }

    @Test
    void safety11PressureInAnAutomaticTipsBandSaysNothingAboutFlow() {
        Line line = ExampleLines.crosslay(ExampleLines.ATTACK, ExampleLines.CROSSLAY, ExampleLines.AUTOMATIC, 200, 0);
        assertThatThrownBy(() -> LineSolver.atTip(line, Pressure.ofPsi(100)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("says nothing about the flow");
        LineState low = LineSolver.atPump(line, Pressure.ofPsi(110));
        LineState high = LineSolver.atPump(line, Pressure.ofPsi(170));
        assertThat(low.tip().psi()).isCloseTo(100, within(1e-9));
        assertThat(high.tip().psi()).isCloseTo(100, within(1e-9));
        // 100 sqrt(10 / (18.38 + 2.06)) and 100 sqrt(70 / 20.44)
        assertThat(low.flow().gpm()).isCloseTo(69.9, within(0.1));
        assertThat(high.flow().gpm()).isCloseTo(185.1, within(0.1));
    }

    @Test
    void automaticTipBeyondItsBandActsAsAFixedOpeningHolds() {
        Line line = ExampleLines.crosslay(ExampleLines.ATTACK, ExampleLines.CROSSLAY, ExampleLines.AUTOMATIC, 200, 0);
        LineState below = LineSolver.atPump(line, Pressure.ofPsi(50));
        assertThat(below.flow().gpm()).isLessThan(60);
        assertThat(below.tip().psi()).isCloseTo(100 * Math.pow(below.flow().gpm() / 60, 2), within(1e-9));
        LineState above = LineSolver.atPump(line, Pressure.ofPsi(240));
        assertThat(above.flow().gpm()).isGreaterThan(200);
        assertThat(above.tip().psi()).isCloseTo(100 * Math.pow(above.flow().gpm() / 200, 2), within(1e-9));
        assertThat(LineSolver.atTip(line, above.tip()).pump().psi()).isCloseTo(240, within(1e-6));
    }

    @Test
    void flowStandsStillWhileAnAllowanceIsPaidHolds() {
        ApplianceLoss rule = new ApplianceLoss.Rule(Pressure.ofPsi(10), Flow.ofGpm(350));
        Appliance wye = new Appliance("wye", rule, Appliance.Per.TOTAL, Optional.empty());
        Run run = new Run(ExampleLines.LEADER, Length.ofFeet(200), Length.ofFeet(0), Optional.of(wye));
        Nozzle tip = Nozzle.of("master", new Fog(Flow.ofGpm(500), Pressure.ofPsi(100)));
        Line line = new Line(ExampleLines.REAR, List.of(run), tip, "");
        double before = LineSolver.atFlow(line, Flow.ofGpm(349.999)).pump().psi();
        double after = LineSolver.atFlow(line, Flow.ofGpm(350)).pump().psi();
        assertThat(after - before).isCloseTo(10, within(0.01));
        LineState paying = LineSolver.atPump(line, Pressure.ofPsi(before + 4));
        assertThat(paying.flow().gpm()).isCloseTo(350, within(1e-9));
        assertThat(paying.applianceLoss().psi()).isCloseTo(4, within(0.01));
    }

    @Test
    void waterThatDoesNotReachTheTipFlowsNotAtAllHolds() {
        LineState state = LineSolver.atPump(ExampleLines.crosslay(200, 100), Pressure.ofPsi(40));
        assertThat(state.flow().gpm()).isZero();
        assertThat(state.tip().psi()).isCloseTo(-3.4, within(1e-9));
        assertThat(state.reaction().lbf()).isZero();
    }

    @Test
    void safety02DischargeGaugeReadsLessByThePiping() {
        LineState state = LineSolver.atTip(ExampleLines.crosslay(200, 0), FIFTY);
        assertThat(state.pump().psi() - state.atDischargeGauge().psi())
                .isCloseTo(state.pipingLoss().psi(), within(1e-9));
        // 2.06 x 1.608^2
        assertThat(state.pipingLoss().psi()).isCloseTo(5.33, within(0.01));
    }

    @Test
    void impossibleInputIsRefused() {
        Line line = ExampleLines.crosslay(200, 0);
        assertThatThrownBy(() -> LineSolver.atTip(line, Pressure.ofPsi(0))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> LineSolver.atFlow(line, Flow.ofGpm(-1))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> LineSolver.atPump(line, Pressure.ofPsi(-1))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Line(ExampleLines.CROSSLAY, List.of(), ExampleLines.FOG, ""))
                .isInstanceOf(InvalidInput.class);
    }
}
