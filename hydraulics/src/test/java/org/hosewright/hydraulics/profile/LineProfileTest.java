package org.hosewright.hydraulics.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

final class LineProfileTest {
    /** In the unit of the sheet; rounding only. */
    private static final double ROUNDING = 1e-9;

    /** [Pa]; rounding only. */
    private static final double PRESSURE_ROUNDING = 1e-6;

    @Test
    void pressureFallsFromPumpToTipHolds() {
        for (Sheet sheet : Lines.SHEETS) {
            Drawing drawing = Lines.profile(550, 0).draw(sheet);
            List<Point> line = strokes(drawing, Role.PRESSURE).get(0);
            for (int i = 1; i < line.size(); i++) {
                assertThat(line.get(i).x()).isGreaterThan(line.get(i - 1).x());
                assertThat(line.get(i).y()).isGreaterThan(line.get(i - 1).y());
            }
            assertThat(line.get(0).x()).isEqualTo(drawing.plot().left());
            assertThat(line.get(line.size() - 1).x()).isCloseTo(drawing.plot().right(), within(ROUNDING));
            double tip_Pa =
                    drawing.plot().pressureAt(line.get(line.size() - 1).y()).pascals();
            assertThat(tip_Pa).isCloseTo(Pressure.ofPsi(50).pascals(), within(PRESSURE_ROUNDING));
        }
    }

    @Test
    void theLineAndTheSolverAgree() {
        Line line = Lines.line(List.of(
                new Run(Lines.leader(), Length.ofFeet(400), Length.ofFeet(-10)),
                new Run(Lines.attack(), Length.ofFeet(200), Length.ofFeet(30))));
        LineProfile profile = LineProfile.of(line, LossErrors.UNCORRELATED, Lines.AT_TIP, UnitSystem.US);
        LineState state = LineSolver.solve(line, Lines.AT_TIP);
        List<PressureAt> points = profile.pressure();
        assertThat(points.get(0).pressure()).isEqualTo(state.pump());
        assertThat(points.get(1).pressure()).isEqualTo(state.atDischargeGauge());
        assertThat(points.get(points.size() - 1).pressure().pascals())
                .isCloseTo(state.tip().pascals(), within(PRESSURE_ROUNDING));
    }

    @Test
    void theBandAndTheErrorOfTheNeededPumpAgree() {
        LossErrors errors = new LossErrors(Map.of("attack-175/crosslay-1", -0.8));
        Line line = Lines.attackLine(550, 8);
        LineProfile profile = LineProfile.of(line, errors, Lines.AT_TIP, UnitSystem.US);
        Known<Pressure> needed = LineSolver.neededPump(line, errors, Lines.AT_TIP);
        List<PressureAt> points = profile.pressure();
        assertThat(points.get(0).half().pascals()).isEqualTo(QuantityShown.HALF_WIDTH * needed.standardErrorSi());
        assertThat(points.get(points.size() - 1).half().pascals()).isZero();
        for (int i = 2; i < points.size(); i++) {
            assertThat(points.get(i).half().pascals())
                    .isLessThan(points.get(i - 1).half().pascals());
        }
    }

    @Test
    void withTheGivenPumpTheBandOpensToTheTipAgrees() {
        Line line = Lines.attackLine(200, -40);
        Ask ask = new Ask.AtPump(Pressure.ofPsi(105));
        List<PressureAt> points = LineProfile.of(line, LossErrors.UNCORRELATED, ask, UnitSystem.US)
                .pressure();
        double error_m3s = LineSolver.delivered(line, LossErrors.UNCORRELATED, Pressure.ofPsi(105))
                .standardErrorSi();
        LineState state = LineSolver.solve(line, ask);
        double step = 1e-6 * state.flow().cubicMetresPerSecond();
        double slope = (line.tip().pressure_Pa(state.flow().cubicMetresPerSecond() + step)
                        - line.tip().pressure_Pa(state.flow().cubicMetresPerSecond() - step))
                / (2 * step);
        double half_Pa = points.get(points.size() - 1).half().pascals();
        assertThat(points.get(0).half().pascals()).isZero();
        assertThat(half_Pa).isCloseTo(QuantityShown.HALF_WIDTH * slope * error_m3s, within(1e-6 * half_Pa));
    }

    @Test
    void couplingsAtWholeSectionsHold() {
        Line line = Lines.line(List.of(
                new Run(Lines.leader(), Length.ofFeet(125), Length.ofFeet(0)),
                new Run(Lines.attack(), Length.ofFeet(150), Length.ofFeet(0))));
        for (Sheet sheet : Lines.SHEETS) {
            Drawing drawing = LineProfile.of(line, LossErrors.UNCORRELATED, Lines.AT_TIP, UnitSystem.US)
                    .draw(sheet);
            TreeSet<Long> drawn_ft = new TreeSet<>();
            for (List<Point> tick : strokes(drawing, Role.COUPLING)) {
                double feet = drawing.plot().lengthAt(tick.get(0).x()).feet();
                assertThat(feet).isCloseTo(Math.rint(feet), within(ROUNDING * 1000));
                drawn_ft.add(Math.round(feet));
            }
            assertThat(drawn_ft).containsExactly(0L, 50L, 100L, 125L, 175L, 225L, 275L);
        }
    }

    @Test
    void readingsStandWhereTheyWereReadHolds() {
        LineProfile profile = Lines.profile(550, 8);
        Pin used = new Pin(new Length(0), Pressure.ofPsi(189), Pressure.ofPsi(4), "reading 6", false);
        Pin aside = new Pin(profile.length(), Pressure.ofPsi(40), Pressure.ofPsi(0), "reading 7", true);
        for (Sheet sheet : Lines.SHEETS) {
            Drawing drawing = profile.withPins(List.of(used, aside)).draw(sheet);
            Plot plot = drawing.plot();
            Mark.Dot circle = dots(drawing, Role.PIN).get(0);
            Mark.Dot diamond = dots(drawing, Role.PIN_ASIDE).get(0);
            assertThat(circle.shape()).isEqualTo(Shape.CIRCLE);
            assertThat(diamond.shape()).isEqualTo(Shape.DIAMOND);
            assertThat(plot.pressureAt(circle.y()).psi()).isCloseTo(189, within(ROUNDING * 1000));
            assertThat(plot.pressureAt(diamond.y()).psi()).isCloseTo(40, within(ROUNDING * 1000));
            assertThat(diamond.x()).isCloseTo(plot.right(), within(ROUNDING));
            List<Point> bar = strokes(drawing, Role.PIN).get(0);
            assertThat(plot.pressureAt(bar.get(0).y()).psi()).isCloseTo(193, within(ROUNDING * 1000));
            assertThat(plot.pressureAt(bar.get(1).y()).psi()).isCloseTo(185, within(ROUNDING * 1000));
            assertThat(strokes(drawing, Role.PIN_ASIDE)).isEmpty();
        }
    }

    @Test
    void groundRisesWithTheHoseHolds() {
        Drawing drawing = Lines.profile(550, 30).draw(Sheet.LAPTOP);
        List<Point> outline = ((Mark.Area) drawing.marks().stream()
                        .filter(mark -> mark.role() == Role.GROUND)
                        .findFirst()
                        .orElseThrow())
                .points();
        assertThat(outline.get(1).y()).isLessThan(outline.get(0).y());
        assertThat(outline.get(1).x()).isCloseTo(drawing.plot().right(), within(ROUNDING));
        assertThat(strokes(drawing, Role.LEAD)).hasSize(1);
    }

    @Test
    void roundNumbersAtTheirPlacesHold() {
        Drawing drawing = Lines.profile(550, 8).draw(Sheet.LAPTOP);
        List<String> numbers = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Text text && text.role() == Role.AXIS) {
                numbers.add(text.text());
            }
        }
        assertThat(numbers).contains("0", "50", "100", "150", "200 psi", "200", "400", "500 ft");
    }

    @Test
    void answersAtBothEndsHold() {
        for (Sheet sheet : Lines.SHEETS) {
            List<String> numbers = Lines.profile(550, 8).draw(sheet).marks().stream()
                    .filter(mark -> mark.role() == Role.ANSWER)
                    .map(mark -> ((Mark.Text) mark).text())
                    .toList();
            assertThat(numbers).containsExactly("189", "161");
        }
    }

    @Test
    void aReadingBeyondTheLineIsRefused() {
        Pin beyond = new Pin(Length.ofFeet(600), Pressure.ofPsi(50), Pressure.ofPsi(0), "reading 3", false);
        assertThatThrownBy(() -> Lines.profile(550, 0).withPins(List.of(beyond)).draw(Sheet.LAPTOP))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("reading 3");
    }

    private static List<List<Point>> strokes(Drawing drawing, Role role) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke && mark.role() == role)
                .map(mark -> ((Mark.Stroke) mark).points())
                .toList();
    }

    private static List<Mark.Dot> dots(Drawing drawing, Role role) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Dot && mark.role() == role)
                .map(mark -> (Mark.Dot) mark)
                .toList();
    }
}
