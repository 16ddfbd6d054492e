package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.fit.Triangle;

/** What a night's readings say of its unknowns, what was believed of them beforehand taken out again: the sufficient statistics
 * of the night, as rows of a least-squares problem.
 *
 * <p>A row says: its residual plus the sum of its slopes times the unknowns, in counts of prior deviations, is 0 with deviation 1.
 */
public final class Worth {
    private final Unknowns unknowns;
    private final List<double[]> rows;

    private Worth(Unknowns unknowns, List<double[]> rows) {
        this.unknowns = unknowns;
        this.rows = rows;
    }

    /** The worth of a fit, seen from its most likely point.
     *
     * <p>A scatter that is known from few readings has heavy tails: the readings count for as much less as makes the
     * deviations right, (f - 2) / f where the scatter is known from f readings' worth.
     */
    public static Worth of(Fit fit) {
        Minimum minimum = fit.minimum();
        Unknowns unknowns = fit.joint().unknowns();
        List<double[][]> pieces = new ArrayList<>();
        for (int reading = 0; reading < fit.joint().lines().size(); reading++) {
            pieces.add(minimum.rows(reading + 1));
        }
        Triangle triangle = Triangle.of(unknowns.size(), pieces);
        double weight = Math.sqrt(share(fit));
        double[] from = minimum.point().unknowns();
        List<double[]> rows = new ArrayList<>();
        for (int k = 0; k < triangle.size(); k++) {
            rows.add(row(triangle, k, weight, from));
        }
        return new Worth(unknowns, rows);
    }

    /** A night that tells one unknown's count of deviations, so well. */
    public static Worth of(Unknown unknown, double u, double deviation) {
        return new Worth(new Unknowns(List.of(unknown)), List.of(new double[] {1 / deviation, -u / deviation}));
    }

    private static double share(Fit fit) {
        double least = fit.freedom().pump();
        for (Channel channel : List.of(Channel.TIP, Channel.FLOW)) {
            if (fit.joint().lines().stream().anyMatch(line -> line.has(channel))) {
                least = Math.min(least, fit.freedom().of(channel));
            }
        }
        return (least - 2) / least;
    }

    private static double[] row(Triangle triangle, int k, double weight, double[] from) {
        int n = triangle.size();
        double[] row = new double[n + 1];
        row[n] = weight * triangle.at(k, n);
        for (int j = k; j < n; j++) {
            row[j] = weight * triangle.at(k, j);
            row[n] -= row[j] * from[j];
        }
        return row;
    }

    public Unknowns unknowns() {
        return unknowns;
    }

    /** How many rows it has. */
    public int size() {
        return rows.size();
    }

    /** The slope of a row by an unknown. */
    public double slope(int row, int unknown) {
        return rows.get(row)[unknown];
    }

    /** The residual of a row with every unknown at its prior centre. */
    public double residual(int row) {
        return rows.get(row)[unknowns.size()];
    }
}
