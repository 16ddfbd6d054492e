package org.hosewright.ledger.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.profile.LimitBand;
import org.hosewright.hydraulics.profile.PressureAt;
import org.hosewright.hydraulics.profile.ReachCurve;
import org.hosewright.hydraulics.profile.ReachDrawing;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.reach.Floors;
import org.hosewright.hydraulics.reach.PressureByLength;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.reach.PackageReach;
import org.hosewright.ledger.reach.ReachReport;

/** Pump pressure against length for one package, at the rise asked about and on floors above it, under its limits. */
public final class ReachPicture {
    /** Sections drawn beyond the longest stretch, so that what stops it is seen. */
    private static final int BEYOND = 3;

    private static final int LEAST_SECTIONS = 6;

    /** Floors drawn beside the rise asked about. */
    private static final List<Integer> FLOORS_UP = List.of(2, 4);

    private final ReachReport report;
    private final PackageReach reach;
    private final Kit kit;
    private final Bounds bounds;
    private final LossErrors errors;
    private final Line line;
    private final QuantityShown shown;

    private ReachPicture(ReachReport report, PackageReach reach) {
        this.report = report;
        this.reach = reach;
        this.kit = report.kit();
        Bounds set = KitBounds.of(kit, reach.hosePackage(), Optional.empty());
        this.bounds = report.ceiling().map(set::withCeiling).orElse(set);
        this.errors = KitErrors.of(kit);
        this.line = KitLines.of(kit, reach.hosePackage(), new Length(0));
        this.shown = QuantityShown.of(kit.units());
    }

    public static ReachDrawing of(ReachReport report, PackageReach reach) {
        return new ReachPicture(report, reach).drawing();
    }

    private ReachDrawing drawing() {
        List<ReachCurve> curves = new ArrayList<>();
        curves.add(curve(shown.rise(report.rise()), report.rise(), true));
        for (int up : FLOORS_UP) {
            Length rise = floors().rise(floors().counting().street() + up);
            if (Math.abs(rise.metres() - report.rise().metres()) > 0.1) {
                curves.add(curve(floor(up, rise), rise, false));
            }
        }
        return new ReachDrawing(kit.units(), line.last().hose().section(), curves, limits());
    }

    /** A floor in words, always with its height and how it is counted. */
    private String floor(int up, Length rise) {
        return "floor " + (floors().counting().street() + up) + ", " + shown.rise(rise);
    }

    /** Storeys as cards count them. @source common practice: 10 ft; 3 m where metres are used */
    private Floors floors() {
        return kit.units() == UnitSystem.US
                ? Floors.of(Floors.Counting.FROM_ONE, Length.ofFeet(10))
                : Floors.of(Floors.Counting.FROM_GROUND, Length.ofMetres(3));
    }

    private ReachCurve curve(String label, Length rise, boolean main) {
        List<PressureAt> points = PressureByLength.of(line.withRise(rise), errors, bounds, sections()).points().stream()
                .map(point -> new PressureAt(
                        point.length(),
                        point.needed().value(),
                        new Pressure(QuantityShown.HALF_WIDTH * point.needed().standardErrorSi())))
                .toList();
        Optional<Length> longest = Optional.of(reach.result().longest()).filter(any -> main);
        Optional<Length> safe = Optional.of(reach.result().longestSafe()).filter(any -> main);
        return new ReachCurve(label, points, longest, safe);
    }

    /** Sections of the last hose that are drawn. */
    private int sections() {
        int own = line.sections() - line.last().sections();
        return Math.max(LEAST_SECTIONS, reach.result().sections() - own + BEYOND);
    }

    private List<LimitBand> limits() {
        Optional<Pressure> ceiling = bounds.ceiling();
        String last = line.last().hose().id();
        double length_m = line.withLastLength(
                        new Length(sections() * line.last().hose().section().metres()))
                .length()
                .metres();
        return PictureLimits.of(kit, ceiling, List.of(new Stretch(last, new Length(length_m))));
    }
}
