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

    private final double[] along_m;
    private final double[] height_m;

    GroundLine(List<WayPoint> way) {
        along_m = way.stream()
                .mapToDouble(point -> point.along().value().metres())
                .toArray();
        height_m = way.stream().mapToDouble(point -> point.height().metres()).toArray();
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
        double least_m = height_m(from_m);
        for (int i = firstAt(from_m); i < along_m.length && along_m[i] < to_m; i++) {
            if (along_m[i] > from_m && height_m[i] < least_m) {
                lowest_m = along_m[i];
                least_m = height_m[i];
            }
        }
        return lowest_m;
    }

    /** The height at a distance, level beyond the end [m]. */
    double height_m(double at_m) {
        int next = firstAt(at_m);
        if (next == along_m.length) {
            return height_m[next - 1];
        }
        int before = Math.max(0, next - 1);
        double run_m = along_m[next] - along_m[before];
        double share = run_m > 0 ? (at_m - along_m[before]) / run_m : 1;
        return height_m[before] + share * (height_m[next] - height_m[before]);
    }

    /** The first point at a distance or beyond it; the count of points where none is. */
    private int firstAt(double at_m) {
        int low = 0;
        int high = along_m.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (along_m[middle] < at_m) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
