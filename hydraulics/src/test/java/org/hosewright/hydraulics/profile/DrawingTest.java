package org.hosewright.hydraulics.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** What holds for every drawing, whatever is in it. */
final class DrawingTest {
    private static final int CASES = 150;
    private static final long SEED = 271828;

    /** In the unit of the sheet; rounding only. */
    private static final double ROUNDING = 1e-6;

    @Test
    void textsApartHold() {
        eachRandom((profile, drawing, label) -> assertApart(drawing, label));
    }

    @Test
    void everythingOnTheSheetHolds() {
        eachRandom((profile, drawing, label) -> assertInside(drawing, label));
    }

    @Test
    void safety06SetAsideReadingsKeepShapeAndName() {
        eachRandom((profile, drawing, label) -> {
            List<String> names =
                    profile.pins().stream().filter(Pin::aside).map(Pin::label).toList();
            assertThat(texts(drawing, Role.PIN_ASIDE)).as(label).containsExactlyInAnyOrderElementsOf(names);
            assertThat(drawing.marks().stream()
                            .filter(mark -> mark instanceof Mark.Dot dot && dot.shape() == Shape.DIAMOND))
                    .as(label)
                    .hasSize(names.size());
        });
    }

    @Test
    void everyLimitNamedHolds() {
        eachRandom((profile, drawing, label) -> assertThat(texts(drawing, Role.LIMIT))
                .as(label)
                .containsExactlyInAnyOrderElementsOf(
                        profile.limits().stream().map(LimitBand::label).toList()));
    }

    @Test
    void reachTextsApartHold() {
        for (int curves = 1; curves <= 6; curves++) {
            List<ReachCurve> floors = new ArrayList<>();
            for (int floor = 0; floor < curves; floor++) {
                floors.add(Lines.curve("floor " + (floor + 1) + ", " + 10 * floor + " ft up", 10 * floor, 18));
            }
            List<LimitBand> limits =
                    List.of(LimitBand.along(Pressure.ofPsi(250), Length.ofFeet(900), "ceiling 250 psi"));
            for (Sheet sheet : Lines.SHEETS) {
                Drawing drawing = new ReachDrawing(UnitSystem.US, Length.ofFeet(50), floors, limits).draw(sheet);
                assertApart(drawing, curves + " curves on " + sheet);
                assertInside(drawing, curves + " curves on " + sheet);
                assertThat(texts(drawing, Role.CURVE)).hasSize(curves);
                assertThat(texts(drawing, Role.LIMIT)).hasSize(1);
            }
        }
    }

    private interface Check {
        void of(LineProfile profile, Drawing drawing, String label);
    }

    private static void eachRandom(Check check) {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            LineProfile profile = Lines.random(random);
            for (Sheet sheet : Lines.SHEETS) {
                check.of(profile, profile.draw(sheet), "seed " + SEED + " case " + i + " on " + sheet);
            }
        }
    }

    private static void assertApart(Drawing drawing, String label) {
        List<Mark.Text> texts = drawing.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(Mark.Text.class::cast)
                .toList();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (Lettering.box(texts.get(i)).meets(Lettering.box(texts.get(j)))) {
                    fail(label + ": '" + texts.get(i) + "' on '" + texts.get(j) + "'");
                }
            }
        }
    }

    private static void assertInside(Drawing drawing, String label) {
        Box sheet = new Box(-ROUNDING, -ROUNDING, drawing.width() + 2 * ROUNDING, drawing.height() + 2 * ROUNDING);
        for (Mark mark : drawing.marks()) {
            if (!boxOf(mark).within(sheet)) {
                fail(label + ": off the sheet: " + mark);
            }
        }
    }

    private static Box boxOf(Mark mark) {
        if (mark instanceof Mark.Text text) {
            return Lettering.box(text);
        }
        if (mark instanceof Mark.Dot dot) {
            return new Box(dot.x() - dot.radius(), dot.y() - dot.radius(), 2 * dot.radius(), 2 * dot.radius());
        }
        List<Point> points = mark instanceof Mark.Area area ? area.points() : ((Mark.Stroke) mark).points();
        double left = points.stream().mapToDouble(Point::x).min().orElseThrow();
        double top = points.stream().mapToDouble(Point::y).min().orElseThrow();
        double right = points.stream().mapToDouble(Point::x).max().orElseThrow();
        double bottom = points.stream().mapToDouble(Point::y).max().orElseThrow();
        return new Box(left, top, right - left, bottom - top);
    }

    private static List<String> texts(Drawing drawing, Role role) {
        return drawing.marks().stream()
                .filter(mark -> mark.role() == role && mark instanceof Mark.Text)
                .map(mark -> ((Mark.Text) mark).text())
                .toList();
    }
}
