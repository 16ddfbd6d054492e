package org.hosewright.hydraulics.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.line.ExampleLines;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class LineLimitsTest {
    private static final Crew TWO = new Crew(2, Force.ofLbf(75));
    private static final Bounds BOUNDS = Bounds.NONE
            .withPump(Optional.of(Pressure.ofPsi(250)), Optional.of(Flow.ofGpm(1500)))
            .withCrew(Optional.of(TWO))
            .withHoseTests(Map.of("attack-175", TestAge.IN_DATE));

    @Test
    void everyLimitBearsItsShareAndTheMostUsedStandsFirstHolds() {
        Line line = ExampleLines.crosslay(600, 20);
        List<Limit> limits = LineLimits.of(line, LineSolver.atTip(line, Pressure.ofPsi(50)), BOUNDS);
        assertThat(limits)
                .extracting(Limit::kind)
                .containsExactly(LimitKind.CEILING, LimitKind.REACTION, LimitKind.HOSE, LimitKind.PUMP);
        // 206.6 of 250; 60.1 of 75; 206.6 of 270; 160.8 of 1,500 x 68.7 %
        assertThat(limits.get(0).used()).isCloseTo(0.826, within(0.001));
        assertThat(limits.get(1).used()).isCloseTo(0.801, within(0.001));
        assertThat(limits.get(2).used()).isCloseTo(0.765, within(0.001));
        assertThat(limits.get(3).used()).isCloseTo(0.158, within(0.002));
        assertThat(limits).noneMatch(Limit::broken);
    }

    /** The open leg alone at the pressure for two: 75.6 lbf, above the figure for two firefighters. */
    @Test
    void reactionAboveTheCrewFigureIsBrokenHolds() {
        Line line = ExampleLines.gardenCourt();
        List<Limit> limits = LineLimits.of(line, LineSolver.atPump(line, Pressure.ofPsi(145)), BOUNDS);
        assertThat(limits.get(0).kind()).isEqualTo(LimitKind.REACTION);
        assertThat(limits.get(0).broken()).isTrue();
        assertThat(LineLimits.of(line, LineSolver.atPump(line, Pressure.ofPsi(145)), Bounds.NONE))
                .noneMatch(limit -> limit.kind() == LimitKind.REACTION);
    }

    @Test
    void safety01HoseIsHeldToTheShutPressureAtItsOwnLowestPlace() {
        // Down 100 ft, up 60 ft: the first hose sees the pump + 43.4 psi, so does the second at its start.
        Hose weak = hose("weak", 200);
        Hose strong = hose("strong", 400);
        Line line = new Line(
                ExampleLines.CROSSLAY, List.of(run(strong, -100), run(weak, 60)), ExampleLines.SEVEN_EIGHTHS, "");
        LineState state = LineSolver.atPump(line, Pressure.ofPsi(140));
        List<Limit> limits = LineLimits.of(line, state, Bounds.NONE);
        assertThat(limits).hasSize(2);
        assertThat(limits.get(0).what()).isEqualTo("weak, nozzle shut");
        assertThat(((Pressure) limits.get(0).at()).psi()).isCloseTo(183.4, within(1e-9));
        assertThat(((Pressure) limits.get(0).limit()).psi()).isCloseTo(180, within(1e-9));
        assertThat(limits.get(0).broken()).isTrue();
        assertThat(limits.get(1).broken()).isFalse();
    }

    @Test
    void safety01OneHoseInTwoPlacesIsHeldToTheWorseOne() {
        Hose hose = hose("hose", 300);
        Line line = new Line(
                ExampleLines.CROSSLAY, List.of(run(hose, 80), run(hose, -200)), ExampleLines.SEVEN_EIGHTHS, "");
        List<Limit> limits = LineLimits.of(line, LineSolver.atPump(line, Pressure.ofPsi(150)), Bounds.NONE);
        assertThat(limits).hasSize(1);
        // 150 + 0.434 x (200 - 80)
        assertThat(((Pressure) limits.get(0).at()).psi()).isCloseTo(150 + 0.434 * 120, within(1e-9));
    }

    @Test
    void safety01OneHoseInTwoPlacesIsHeldToTheWorseOneWhereItLiesFirst() {
        Hose hose = hose("hose", 300);
        Hose other = hose("other", 400);
        Line line = new Line(
                ExampleLines.CROSSLAY,
                List.of(run(hose, -200), run(other, 150), run(hose, 0)),
                ExampleLines.SEVEN_EIGHTHS,
                "");
        Limit limit = LineLimits.of(line, LineSolver.atPump(line, Pressure.ofPsi(150)), Bounds.NONE).stream()
                .filter(found -> found.what().startsWith("hose"))
                .findFirst()
                .orElseThrow();
        // 150 + 0.434 x 200 at the foot of the slope, not 150 + 0.434 x 50 further up
        assertThat(((Pressure) limit.at()).psi()).isCloseTo(150 + 86.8, within(1e-9));
    }

    @Test
    void safety01EveryHoseIsHeldToTheWholeFallWhereItsPlaceIsNotKnown() {
        Line line = new Line(
                ExampleLines.CROSSLAY,
                List.of(run(hose("first", 300), 0), run(hose("second", 300), 0)),
                ExampleLines.SEVEN_EIGHTHS,
                "");
        List<Limit> down = LineLimits.of(
                line.withRise(Length.ofFeet(-100)), LineSolver.atPump(line, Pressure.ofPsi(150)), Bounds.NONE);
        assertThat(down)
                .hasSize(2)
                .allSatisfy(limit -> assertThat(((Pressure) limit.at()).psi()).isCloseTo(150 + 43.4, within(1e-9)));
        List<Limit> up = LineLimits.of(
                line.withRise(Length.ofFeet(100)), LineSolver.atPump(line, Pressure.ofPsi(150)), Bounds.NONE);
        assertThat(up)
                .hasSize(2)
                .allSatisfy(limit -> assertThat(((Pressure) limit.at()).psi()).isCloseTo(150, within(1e-9)));
    }

    @Test
    void safety01NozzleAndApplianceAreHeldToTheShutPressure() {
        Appliance wye =
                new Appliance("wye", ExampleLines.WYE.loss(), Appliance.Per.LEG, Optional.of(Pressure.ofPsi(150)));
        Run run = new Run(ExampleLines.ATTACK, Length.ofFeet(100), Length.ofFeet(-50), Optional.of(wye));
        Nozzle fog = ExampleLines.nozzle(
                "fog-150", new Fog(Flow.ofGpm(150), Pressure.ofPsi(75)), Optional.of(Pressure.ofPsi(200)));
        Line line = new Line(ExampleLines.CROSSLAY, List.of(run, run(ExampleLines.ATTACK, -50)), fog, "");
        List<Limit> limits = LineLimits.of(line, LineSolver.atPump(line, Pressure.ofPsi(160)), Bounds.NONE);
        Limit appliance = limits.stream()
                .filter(l -> l.kind() == LimitKind.APPLIANCE)
                .findFirst()
                .orElseThrow();
        Limit nozzle = limits.stream()
                .filter(l -> l.kind() == LimitKind.NOZZLE)
                .findFirst()
                .orElseThrow();
        assertThat(((Pressure) appliance.at()).psi()).isCloseTo(160 + 21.7, within(1e-9));
        assertThat(appliance.broken()).isTrue();
        assertThat(((Pressure) nozzle.at()).psi()).isCloseTo(160 + 43.4, within(1e-9));
        assertThat(nozzle.broken()).isTrue();
    }

    @Test
    void safety01RiseOfThePressureControlIsACaution() {
        // 245 + 30 = 275 psi, above 90 % of 300
        assertThat(cautions(ExampleLines.crosslay(200, 0), 245))
                .anyMatch(says -> says.contains("30 psi") && says.contains("275 psi") && says.contains("270 psi"));
        assertThat(cautions(ExampleLines.crosslay(200, 0), 239)).isEmpty();
        // 20 ft downhill adds 8.7 psi
        assertThat(cautions(ExampleLines.crosslay(200, -20), 239)).isNotEmpty();
    }

    @Test
    void safety01UnknownOrOldServiceTestIsSaid() {
        Line line = ExampleLines.crosslay(200, 0);
        assertThat(cautionsFor(line, TestAge.IN_DATE)).isEmpty();
        assertThat(cautionsFor(line, TestAge.OVERDUE))
                .singleElement()
                .asString()
                .contains("older than 12 months");
        assertThat(cautionsFor(line, TestAge.UNDATED))
                .singleElement()
                .asString()
                .contains("is not known");
        assertThat(cautionsFor(line, TestAge.TOO_OLD))
                .singleElement()
                .asString()
                .contains("out of service");
        Hose hose = ExampleLines.ATTACK;
        Hose untested = new Hose(hose.id(), hose.diameter(), hose.section(), hose.loss(), Optional.empty());
        Line bare = ExampleLines.crosslay(untested, ExampleLines.CROSSLAY, ExampleLines.SEVEN_EIGHTHS, 200, 0);
        assertThat(cautionsFor(bare, TestAge.IN_DATE))
                .singleElement()
                .asString()
                .contains("is not checked");
        assertThat(LineLimits.of(bare, LineSolver.atPump(bare, Pressure.ofPsi(100)), Bounds.NONE))
                .isEmpty();
    }

    @Test
    void safety11GoodLookingStreamOfAnAutomaticTipMayBeShort() {
        Line line = ExampleLines.crosslay(ExampleLines.ATTACK, ExampleLines.CROSSLAY, ExampleLines.AUTOMATIC, 200, 0);
        assertThat(cautions(line, 110)).anyMatch(says -> says.contains("may be short") && says.contains("70 gpm"));
        assertThat(cautions(line, 40)).isEmpty();
    }

    @Test
    void safety17WaterThatDoesNotReachTheTipIsSaid() {
        assertThat(cautions(ExampleLines.crosslay(200, 100), 40)).anyMatch(says -> says.contains("3.4 psi"));
    }

    @Test
    void safety17PumpBeyondItsRatingIsSaid() {
        assertThat(cautions(ExampleLines.crosslay(200, 0), 260)).anyMatch(says -> says.contains("250 psi"));
    }

    private static List<String> cautions(Line line, double pump_psi) {
        return Cautions.list(line, LineSolver.atPump(line, Pressure.ofPsi(pump_psi)), BOUNDS, UnitSystem.US);
    }

    private static List<String> cautionsFor(Line line, TestAge age) {
        Bounds bounds = BOUNDS.withHoseTests(Map.of("attack-175", age));
        return Cautions.list(line, LineSolver.atPump(line, Pressure.ofPsi(100)), bounds, UnitSystem.US);
    }

    private static Run run(Hose hose, double rise_ft) {
        return new Run(hose, Length.ofFeet(300), Length.ofFeet(rise_ft));
    }

    private static Hose hose(String id, double test_psi) {
        Hose like = ExampleLines.ATTACK;
        return new Hose(id, like.diameter(), like.section(), like.loss(), Optional.of(Pressure.ofPsi(test_psi)));
    }
}
