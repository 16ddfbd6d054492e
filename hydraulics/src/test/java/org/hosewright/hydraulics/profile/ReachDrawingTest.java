package org.hosewright.hydraulics.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

final class ReachDrawingTest {
    /** In the unit of the sheet, or in feet and psi; rounding only. */
    private static final double ROUNDING = 1e-6;

    private static final LimitBand CEILING =
            LimitBand.along(Pressure.ofPsi(250), Length.ofFeet(900), "ceiling 250 psi");

    @Test
    void curvesRiseAndStopAtTheTopHold() {
        for (Sheet sheet : Lines.SHEETS) {
            Drawing drawing = draw(sheet);
            for (Mark mark : drawing.marks()) {
                if (mark instanceof Mark.Stroke line && (line.role() == Role.PRESSURE || line.role() == Role.CURVE)) {
                    for (int i = 1; i < line.points().size(); i++) {
                        assertThat(line.points().get(i).y())
                                .isLessThan(line.points().get(i - 1).y());
                    }
                    double end = line.points().get(line.points().size() - 1).y();
                    assertThat(end).isGreaterThanOrEqualTo(drawing.plot().top() - ROUNDING);
                }
            }
        }
    }

    @Test
    void theSafeStretchStandsOnItsCurveHolds() {
        Drawing drawing = draw(Sheet.LAPTOP);
        Mark.Dot safe = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Dot && mark.role() == Role.SAFE)
                .map(mark -> (Mark.Dot) mark)
                .findFirst()
                .orElseThrow();
        assertThat(safe.shape()).isEqualTo(Shape.SQUARE);
        assertThat(drawing.plot().lengthAt(safe.x()).feet()).isCloseTo(650, within(ROUNDING));
        double needed_psi = Lines.profile(650, 0).pressure().get(0).pressure().psi();
        assertThat(drawing.plot().pressureAt(safe.y()).psi()).isCloseTo(needed_psi, within(ROUNDING));
    }

    @Test
    void namesStandInTheOrderOfTheCurvesHold() {
        List<String> names = draw(Sheet.LAPTOP).marks().stream()
                .filter(mark -> mark instanceof Mark.Text && mark.role() == Role.CURVE)
                .map(mark -> ((Mark.Text) mark).text())
                .toList();
        assertThat(names).containsExactly("floor 3, 20 ft up, safe to 650 ft", "level, safe to 650 ft");
    }

    @Test
    void aPackageThatIsSafeAtNoLengthIsSaidHolds() {
        ReachCurve none = new ReachCurve(
                "level", Lines.curve("level", 0, 6).points(), Optional.empty(), Optional.of(new Length(0)));
        List<String> names = new ReachDrawing(UnitSystem.US, Length.ofFeet(50), List.of(none), List.of(CEILING))
                .draw(Sheet.LAPTOP).marks().stream()
                        .filter(mark -> mark instanceof Mark.Text && mark.role() == Role.CURVE)
                        .map(mark -> ((Mark.Text) mark).text())
                        .toList();
        assertThat(names).containsExactly("level, no length is safe");
    }

    private static Drawing draw(Sheet sheet) {
        List<ReachCurve> curves = List.of(Lines.curve("level", 0, 18), Lines.curve("floor 3, 20 ft up", 20, 18));
        return new ReachDrawing(UnitSystem.US, Length.ofFeet(50), curves, List.of(CEILING)).draw(sheet);
    }
}
