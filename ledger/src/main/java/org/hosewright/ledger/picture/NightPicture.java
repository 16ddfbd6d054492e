package org.hosewright.ledger.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.calibration.Belief;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.evidence.night.Gear;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.profile.Answer;
import org.hosewright.hydraulics.profile.GroundAt;
import org.hosewright.hydraulics.profile.HoseRun;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.hydraulics.profile.PressureAt;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.line.KitLines;

/** The profile of a line that a test night flew: what it needs by the night's numbers, with the readings pinned to it. */
public final class NightPicture {
    private final DrillReport report;
    private final Course course;
    private final Gear gear;
    private final Tip tip;
    private final QuantityShown shown;

    private NightPicture(DrillReport report, Course course) {
        this.report = report;
        this.course = course;
        this.gear = report.night().gear();
        this.tip = KitLines.get(gear.nozzles(), course.nozzle(), "nozzle").rated(course.setting());
        this.shown = QuantityShown.of(report.kit().units());
    }

    /** The profile at the tip pressure that the nozzle is meant for.
     *
     * @param course any length and rise of a line that was flown
     * @return empty where the night does not tell what the line needs
     */
    public static Optional<LineProfile> of(DrillReport report, Course course) {
        return new NightPicture(report, course).profile();
    }

    private Optional<LineProfile> profile() {
        Belief belief = report.calibration().belief();
        return belief.neededPump(course, tip.at()).map(needed -> {
            List<PressureAt> pressure = new ArrayList<>();
            pressure.add(point(0, needed));
            pressure.addAll(alongHose(belief, needed));
            pressure.add(new PressureAt(course.length(), tip.at(), new Pressure(0)));
            Answer pump = Answer.of(shown.text(needed.value()), List.of("to pump"));
            var profile = new LineProfile(
                    report.kit().units(),
                    hose(),
                    pressure,
                    ground(),
                    List.of(),
                    List.of(),
                    pump,
                    atTip(belief, needed));
            return profile.withPins(new NightPins(report, course, tip).list())
                    .withLimits(PictureLimits.of(report.kit(), course.discharge(), course.hose()));
        });
    }

    private List<HoseRun> hose() {
        return course.hose().stream()
                .map(part ->
                        new HoseRun(part.length(), hose(part).section(), shown.text(part.length()) + " " + part.hose()))
                .toList();
    }

    private Hose hose(Stretch part) {
        return KitLines.get(gear.hoses(), part.hose(), "hose");
    }

    /** The ground, straight from the pump to the tip: where it rises between them nobody wrote down. */
    private List<GroundAt> ground() {
        return List.of(new GroundAt(new Length(0), new Length(0)), new GroundAt(course.length(), course.rise()));
    }

    /** The pressure behind the piping and at each coupling: what the rest of the line needs there. */
    private List<PressureAt> alongHose(Belief belief, Known<Pressure> needed) {
        List<PressureAt> points = new ArrayList<>();
        double length_m = course.length().metres();
        double at_m = 0;
        while (at_m < length_m * (1 - 1e-9)) {
            double here_m = at_m;
            belief.neededAtDischarge(rest(here_m), tip.at()).ifPresent(known -> points.add(point(here_m, known)));
            at_m = nextCoupling(at_m);
        }
        if (points.isEmpty()) {
            points.add(point(0, needed));
        }
        return points;
    }

    private double nextCoupling(double at_m) {
        double from_m = 0;
        for (Stretch part : course.hose()) {
            double to_m = from_m + part.length().metres();
            if (at_m < to_m * (1 - 1e-9)) {
                double section_m = hose(part).section().metres();
                double couplings = Math.floor((at_m - from_m) / section_m + 1e-9) + 1;
                return Math.min(to_m, from_m + couplings * section_m);
            }
            from_m = to_m;
        }
        return from_m;
    }

    /** The line from a distance on, with its share of the rise. */
    private Course rest(double at_m) {
        List<Stretch> left = new ArrayList<>();
        double from_m = 0;
        for (Stretch part : course.hose()) {
            double to_m = from_m + part.length().metres();
            double kept_m = to_m - Math.max(from_m, at_m);
            if (kept_m > 1e-9) {
                left.add(new Stretch(part.hose(), new Length(kept_m)));
            }
            from_m = to_m;
        }
        Length rise = new Length(course.rise().metres() * (1 - at_m / from_m));
        return new Course(left, course.discharge(), rise, course.nozzle(), course.setting());
    }

    private static PressureAt point(double at_m, Known<Pressure> known) {
        double half_Pa = QuantityShown.HALF_WIDTH * known.standardErrorSi();
        return new PressureAt(new Length(at_m), known.value(), new Pressure(half_Pa));
    }

    private Answer atTip(Belief belief, Known<Pressure> needed) {
        List<String> beside = new ArrayList<>(List.of(shown.text(tip.at())));
        belief.reaction(course, needed.value()).ifPresent(force -> beside.add(shown.text(force.value())));
        if (course.rise().metres() != 0) {
            beside.add(shown.rise(course.rise()));
        }
        String flow = belief.delivered(course, needed.value())
                .map(known -> shown.text(known.value()))
                .orElse(shown.text(tip.flowAt()));
        return Answer.of(flow, beside);
    }
}
