package org.hosewright.hydraulics.network;

/** The slow, sure way: flows of ever less content, one balanced set after another, backward flow dear but not barred.
 *
 * <p>With backward flow at a finite price the content is one smooth convex function of the balanced flows; each line
 * through them leads downhill and is searched for its lowest point, so the search ends at the answer. A dearer price
 * follows, until the full steps of {@link Newton} finish what is left.
 *
 * @source E. Todini and S. Pilati, 1988; J. Nocedal and S. Wright, Numerical Optimization, 2nd edition, 2006, chapter 3
 */
final class Descent {
    /** Floor of slopes, as a share of pressure over flow [1]; it shrinks with the steps. */
    private static final double FLOOR = 1e-2;

    private static final double LEAST = 1e-8;

    /** Content that a step may still gain, as a share of pressure times flow, where a price has done its work [1]. */
    private static final double DONE = 1e-15;

    private static final int SEARCHES = 50;

    private final Iterate at;
    private final double[] last;
    private final double[] move;
    private double price;

    Descent(Iterate at) {
        this.at = at;
        last = new double[at.flow.length];
        move = new double[at.flow.length];
    }

    /** Goes downhill from balanced flows.
     *
     * @param share price of backward flow, as a share of pressure over flow [1]
     * @param steps most linear solves to take
     * @return linear solves taken
     */
    int run(double share, int steps) {
        price = share * at.pressure_Pa() / at.largest_m3s();
        double floor = FLOOR;
        for (int count = 1; count <= steps; count++) {
            straighten(floor * at.unit());
            at.balance();
            double largest = aim();
            boolean done = Math.abs(uphill(0)) <= DONE * at.pressure_Pa() * at.largest_m3s();
            double taken = step();
            at.hold();
            at.scale();
            floor = Math.max(LEAST, Math.min(FLOOR, taken * largest / at.largest_m3s()));
            if (done) {
                return count;
            }
        }
        return steps;
    }

    /** Reads the line to go along; gives its largest change of a flow [m3/s]. */
    private double aim() {
        double largest = 0;
        for (int k = 0; k < move.length; k++) {
            move[k] = at.flow[k] - last[k];
            largest = Math.max(largest, Math.abs(move[k]));
        }
        return largest;
    }

    private void straighten(double least) {
        for (int k = 0; k < move.length; k++) {
            double flow = at.flow[k];
            double loss = loss_Pa(k, flow);
            boolean back = at.pieces.isOneWay(k) && flow < 0;
            double slope = back ? price : at.pieces.slope(k, flow, loss);
            last[k] = flow;
            at.conductance[k] = 1 / Math.max(least, slope);
            at.next[k] = flow + (at.drop_Pa(k) - loss) * at.conductance[k];
        }
    }

    /** Moves to the lowest content on the line; gives the share of the line taken. */
    private double step() {
        double low = 0;
        double high = 1;
        double share = 1;
        if (uphill(1) > 0) {
            for (int i = 0; i < SEARCHES && high - low > 1e-14 * high; i++) {
                share = (low + high) / 2;
                boolean over = uphill(share) > 0;
                high = over ? share : high;
                low = over ? low : share;
            }
            share = low > 0 ? low : high;
        }
        for (int k = 0; k < move.length; k++) {
            at.flow[k] = last[k] + share * move[k];
            at.loss[k] = loss_Pa(k, at.flow[k]);
        }
        return share;
    }

    /** How the content grows along the line at a share of it [W]. */
    private double uphill(double share) {
        double sum = 0;
        for (int k = 0; k < move.length; k++) {
            sum += (loss_Pa(k, last[k] + share * move[k]) - at.drop_Pa(k)) * move[k];
        }
        return sum;
    }

    private double loss_Pa(int k, double flow) {
        return at.pieces.isOneWay(k) && flow < 0 ? at.pieces.still_Pa(k) + price * flow : at.pieces.loss_Pa(k, flow);
    }
}
