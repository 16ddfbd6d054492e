package org.hosewright.evidence.plan;

import java.util.List;

/** The rule that ends a list of readings: every number sought is known to the step that one decides in, or two more readings of
 * any kind, time and water aside, would hardly narrow it.
 *
 * @param sought the numbers
 */
record Enough(List<Sought> sought) {
    /** Two more readings that narrow a number by less than this share are not worth their time. */
    static final double HARDLY = 0.1;

    private static final int MORE = 2;

    Enough {
        sought = List.copyOf(sought);
    }

    boolean test(Selection selection) {
        double[][] covariance = selection.information().covariance();
        for (Sought each : sought) {
            if (!each.isAnswered(covariance) && isWorthMore(selection, each)) {
                return false;
            }
        }
        return true;
    }

    private boolean isWorthMore(Selection selection, Sought each) {
        double now = each.deviation(selection.information().covariance());
        Criterion criterion = Criterion.ofVariances(List.of(each.form()));
        Selection more = selection;
        for (int i = 0; i < MORE; i++) {
            more = best(more, criterion);
        }
        return each.deviation(more.information().covariance()) < (1 - HARDLY) * now;
    }

    /** The selection with the one reading more that tells most. */
    private Selection best(Selection selection, Criterion criterion) {
        Selection best = selection;
        double least = Double.POSITIVE_INFINITY;
        for (int offer = 0; offer < selection.offers().size(); offer++) {
            Selection more = selection.with(offer);
            if (more.isSensible()) {
                double value = criterion.of(more.information());
                if (value < least) {
                    least = value;
                    best = more;
                }
            }
        }
        return best;
    }
}
