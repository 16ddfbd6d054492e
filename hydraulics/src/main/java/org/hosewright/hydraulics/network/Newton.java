package org.hosewright.hydraulics.network;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Full Newton steps on heads and flows together; one-way links open and shut by what their ends stand at.
 *
 * <p>A link is made straight at the flow that the last step gave it, or at the first kink of its law on the way there.
 * A one-way link about to open is made straight at the flow that its drop drives, for from no flow it would overshoot.
 *
 * @source E. Todini and S. Pilati, A gradient algorithm for the analysis of pipe networks, 1988
 */
final class Newton {
    /** Least slope, as a share of pressure over flow [1]: it rules the rate near no flow, not the answer. */
    static final double LEAST = 1e-8;

    /** Slope of a shut link, as a share of pressure over flow [1]: it leaks less than rounding. */
    private static final double SHUT = 1e14;

    /** A flow below this share of the largest is rounding [1]. */
    private static final double ROUNDING = 1e-13;

    /** Drop of a typical link, as a share of the pressure scale [1]: the first straight lines are drawn for it. */
    static final double START = 0.05;

    /** The same of a one-way link at a fixed head: a tip takes most of what there is. */
    static final double START_AT_END = 0.5;

    /** The core is held closer than the whole network, for its pieces lose more than their parts [1]. */
    static final double CLOSE = 0.2;

    /** Networks of no more links than this are taken one step further. */
    private static final int POLISHED = 150;

    /** A misfit that another step would not better [1]. */
    private static final double POLISH = 1e-15;

    private final Iterate at;
    private final int polished;
    private final double[] drawn;

    /** Links with a kink or one way. */
    private final int[] special;

    private boolean settled;
    private int worst;
    private double misfit;

    Newton(Iterate at) {
        this(at, POLISHED);
    }

    /** Steps on an iterate, of which one of no more than some links is taken one step further. */
    Newton(Iterate at, int polished) {
        this.polished = polished;
        this.at = at;
        drawn = new double[at.flow.length];
        special = IntStream.range(0, at.flow.length)
                .filter(k -> !at.pieces.isSmooth(k) || at.pieces.isOneWay(k))
                .toArray();
    }

    /** Sets out from resistors: each link straight from no flow to what a typical drop drives; gives the solves taken. */
    int start() {
        settled = false;
        if (at.shape.free() == 0) {
            return apart();
        }
        Arrays.fill(at.head, 0, at.shape.free(), 0);
        Arrays.fill(at.flow, 0);
        Arrays.fill(at.loss, 0);
        at.hold();
        at.scale();
        double capacity = 0;
        for (int k = 0; k < at.flow.length; k++) {
            boolean end = at.pieces.isOneWay(k) && at.shape.isAtFixed(k);
            double typical_Pa = (end ? START_AT_END : START) * at.pressure_Pa();
            double still = at.pieces.still_Pa(k);
            double typical = at.pieces.flow_m3s(k, still + typical_Pa);
            capacity = Math.max(capacity, typical);
            at.conductance[k] = typical / typical_Pa;
            at.next[k] = (at.drop_Pa(k) - still) * at.conductance[k];
        }
        at.capacity(capacity);
        at.balance();
        drive();
        System.arraycopy(at.flow, 0, drawn, 0, drawn.length);
        return 1;
    }

    /** Puts each smooth link at the flow that its drop drives: resistors give better drops than flows. */
    private void drive() {
        at.drops();
        double span = 0;
        double largest = 0;
        for (int k = 0; k < at.flow.length; k++) {
            boolean shut = at.flow[k] <= 0 && at.pieces.isOneWay(k);
            double driven = shut || !at.pieces.isSmooth(k) ? 0 : at.pieces.flow_m3s(k, at.drop[k]);
            if (driven != 0) {
                at.flow[k] = driven;
                at.loss[k] = at.drop[k];
            } else {
                at.loss[k] = shut ? at.pieces.still_Pa(k) : at.pieces.loss_Pa(k, at.flow[k]);
            }
            span = Math.abs(at.loss[k]) > span ? Math.abs(at.loss[k]) : span;
            largest = Math.abs(at.flow[k]) > largest ? Math.abs(at.flow[k]) : largest;
        }
        at.scale(span, largest);
    }

    /** Every link between fixed heads: each flow from its own drop. */
    private int apart() {
        at.hold();
        for (int k = 0; k < at.flow.length; k++) {
            double drop = at.drop_Pa(k);
            boolean shut = at.pieces.isOneWay(k) && drop <= at.pieces.still_Pa(k);
            at.flow[k] = shut ? 0 : at.pieces.flow_m3s(k, drop);
            drawn[k] = at.flow[k];
        }
        measure();
        settled = misfit <= CLOSE * NetworkSolver.ENERGY;
        return 0;
    }

    /** One step with numbers left open that move along. */
    void stepWith(Border border) {
        straighten();
        at.balance(border);
        at.hold();
        measure();
    }

    private void step() {
        straighten();
        at.balance();
        measure();
    }

    private void straighten() {
        double shut = SHUT * at.pressure_Pa() / at.largest_m3s();
        double least = LEAST * at.unit();
        at.pieces.conductances(at.flow, at.loss, least, at.conductance);
        for (int k = 0; k < at.next.length; k++) {
            at.next[k] = at.flow[k] + (at.drop[k] - at.loss[k]) * at.conductance[k];
        }
        for (int k : special) {
            if (!at.pieces.isSmooth(k) || at.flow[k] <= 0) {
                straighten(k, least, shut);
            }
        }
    }

    boolean isSettled() {
        return settled;
    }

    /** Steps until settled; gives the steps taken. */
    int run(int most) {
        if (settled) {
            return 0;
        }
        for (int count = 1; count <= most; count++) {
            step();
            if (isClose()) {
                boolean done = at.flow.length > polished || misfit <= POLISH;
                settled = done || polish();
                if (settled) {
                    return done ? count : count + 1;
                }
            }
        }
        return most;
    }

    /** One step more, which doubles the digits: flows go with the root of a loss. */
    private boolean polish() {
        step();
        return isClose();
    }

    private boolean isClose() {
        return misfit <= CLOSE * NetworkSolver.ENERGY && at.massMisfit() <= NetworkSolver.MASS;
    }

    /** Steps on from heads and flows that another search left. */
    int resume(int most) {
        settled = false;
        at.hold();
        measure();
        System.arraycopy(at.flow, 0, drawn, 0, drawn.length);
        return run(most);
    }

    /** Largest misfit of a link, as a share of the pressure scale [1]. */
    double misfit() {
        return misfit;
    }

    int worst() {
        return worst;
    }

    private void straighten(int k, double least, double shut) {
        double drop = at.drop[k];
        double still = at.pieces.still_Pa(k);
        double flow = at.flow[k];
        if (at.pieces.isOneWay(k) && flow <= 0 && drop <= still) {
            drawn[k] = 0;
            at.conductance[k] = 1 / shut;
            at.next[k] = (drop - still) / shut;
            return;
        }
        double loss = at.loss[k];
        if (at.pieces.isOneWay(k) && flow <= 0) {
            flow = at.pieces.flow_m3s(k, drop);
            loss = at.pieces.loss_Pa(k, flow);
        } else {
            double pause = at.pieces.pause_m3s(k, drawn[k], flow);
            loss = pause == flow ? loss : at.pieces.loss_Pa(k, pause);
            flow = pause;
        }
        drawn[k] = flow;
        at.conductance[k] = at.pieces.conductance(k, flow, loss, least);
        at.next[k] = flow + (drop - loss) * at.conductance[k];
    }

    private void measure() {
        at.drops();
        at.pieces.losses(at.flow, at.loss);
        compare();
    }

    /** Finds how far losses and drops miss one another at most. */
    private void compare() {
        double span = 0;
        double largest = 0;
        double most = 0;
        double back = 0;
        int backAt = 0;
        for (int k = 0; k < at.flow.length; k++) {
            double flow = at.flow[k];
            boolean shut = flow <= 0 && at.pieces.isOneWay(k);
            double loss = shut ? at.pieces.still_Pa(k) : at.loss[k];
            double drop = at.drop[k];
            double off = !shut ? at.pieces.misfit_Pa(k, flow, drop, loss) : drop > loss ? drop - loss : 0;
            at.loss[k] = loss;
            span = Math.abs(loss) > span ? Math.abs(loss) : span;
            largest = Math.abs(flow) > largest ? Math.abs(flow) : largest;
            if (shut && -flow > back) {
                back = -flow;
                backAt = k;
            }
            if (!(off <= most)) {
                most = off;
                worst = k;
            }
        }
        at.scale(span, largest);
        conclude(most, back, backAt);
    }

    /** Sets the misfit; a flow that goes back where none can is all wrong. */
    private void conclude(double off_Pa, double back_m3s, int backAt) {
        misfit = off_Pa / at.pressure_Pa();
        if (back_m3s > ROUNDING * at.largest_m3s() && !(misfit > 1)) {
            misfit = 1;
            worst = backAt;
        }
    }

    /** Takes what leaks back through shut links as no flow. */
    void shut() {
        for (int k = 0; k < at.flow.length; k++) {
            at.flow[k] = at.pieces.isOneWay(k) ? Math.max(0, at.flow[k]) : at.flow[k];
        }
    }
}
