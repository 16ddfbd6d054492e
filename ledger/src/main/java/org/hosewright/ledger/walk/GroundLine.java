package org.hosewright.ledger.walk;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.ground.walk.WayPoint;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;

/** A line laid along a way: every hose rises as the ground under it does, and is parted at the lowest point. */
final class GroundLine {
    /** A dip less deep than this is not looked at [m]. */
    private static final double DIP_m = 0.5;

    private final List<WayPoint> way;

    GroundLine(List<WayPoint> way) {
        this.way = way;
    }

    /** The line with its hoses on the ground, the tip at its end. */
    Line along(Line level) {
        List<Run> runs = new ArrayList<>();
        double at_m = 0;
        for (Run run : level.runs()) {
            double end_m = at_m + run.length().metres();
            double low_m = lowest_m(at_m, end_m);
            double height_m = height_m(at_m);
            double left_m = end_m - low_m;
            boolean dips = height_m(low_m) < Math.min(height_m, height_m(end_m)) - DIP_m;
            if (dips) {
                runs.add(new Run(run.hose(), new Length(low_m - at_m), new Length(height_m(low_m) - height_m)));
                runs.add(new Run(
                        run.hose(), new Length(left_m), new Length(height_m(end_m) - height_m(low_m)), run.end()));
            } else {
                runs.add(run.withRise(new Length(height_m(end_m) - height_m)));
            }
            at_m = end_m;
        }
        return new Line(level.discharge(), runs, level.nozzle(), level.setting());
    }

    /** Where the way is lowest between two distances; the first one where it is nowhere lower [m]. */
    private double lowest_m(double from_m, double to_m) {
        double lowest_m = from_m;
        double height_m = height_m(from_m);
        for (WayPoint point : way) {
            double at_m = point.along().value().metres();
            if (at_m > from_m && at_m < to_m && point.height().metres() < height_m) {
                lowest_m = at_m;
                height_m = point.height().metres();
            }
        }
        return lowest_m;
    }

    /** The height at a distance, level beyond the end [m]. */
    double height_m(double at_m) {
        WayPoint before = way.get(0);
        for (WayPoint point : way) {
            double here_m = point.along().value().metres();
            if (here_m >= at_m) {
                double back_m = before.along().value().metres();
                double share = here_m > back_m ? (at_m - back_m) / (here_m - back_m) : 1;
                double climb_m = point.height().metres() - before.height().metres();
                return before.height().metres() + share * climb_m;
            }
            before = point;
        }
        return before.height().metres();
    }
}
