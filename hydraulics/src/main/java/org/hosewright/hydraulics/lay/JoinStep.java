package org.hosewright.hydraulics.lay;

import java.util.List;
import java.util.function.ToDoubleBiFunction;

/** Newton's step on the pressures in several joins.
 *
 * @param names the joins
 * @param over what goes out of a join more than comes in [m3/s]
 */
record JoinStep(List<String> names, ToDoubleBiFunction<String, Meeting> over) {
    /** The difference that slopes are taken over, as a share of a pressure [1]. */
    private static final double SHARE = 1e-6;

    /** A pivot below this leaves the step undone [m3/s per Pa]. */
    private static final double NOTHING = 1e-300;

    Meeting from(Meeting meeting) {
        int n = names.size();
        double[][] rows = new double[n][n + 1];
        for (int j = 0; j < n; j++) {
            String name = names.get(j);
            double at = meeting.pressure_Pa(name);
            double h = Math.max(1, Math.abs(at) * SHARE);
            Meeting up = meeting.with(name, at + h);
            Meeting down = meeting.with(name, at - h);
            for (int i = 0; i < n; i++) {
                String row = names.get(i);
                rows[i][j] = (over.applyAsDouble(row, up) - over.applyAsDouble(row, down)) / (2 * h);
            }
            rows[j][n] = -over.applyAsDouble(name, meeting);
        }
        return eliminated(rows) ? moved(meeting, rows) : meeting;
    }

    /** Gauss and Jordan; the slopes' matrix has its largest values on its diagonal. */
    private static boolean eliminated(double[][] rows) {
        for (int k = 0; k < rows.length; k++) {
            double pivot = rows[k][k];
            if (!(Math.abs(pivot) > NOTHING)) {
                return false;
            }
            for (int j = k; j <= rows.length; j++) {
                rows[k][j] /= pivot;
            }
            for (int i = 0; i < rows.length; i++) {
                double times = i == k ? 0 : rows[i][k];
                for (int j = k; j <= rows.length; j++) {
                    rows[i][j] -= times * rows[k][j];
                }
            }
        }
        return true;
    }

    private Meeting moved(Meeting meeting, double[][] rows) {
        Meeting moved = meeting;
        for (int i = 0; i < names.size(); i++) {
            double to = meeting.pressure_Pa(names.get(i)) + rows[i][rows.length];
            if (Double.isNaN(to) || Double.isInfinite(to)) {
                return meeting;
            }
            moved = moved.with(names.get(i), to);
        }
        return moved;
    }
}
