package org.hosewright.hydraulics.network;

import java.util.Arrays;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.hydraulics.network.sparse.LaplacianFactor;

/** Heads and flows under way to an answer, with the linear solve that brings the flows to balance at every node.
 *
 * <p>Each link stands for a straight line, its flow when its drop is kept and its slope; the heads' rises follow from
 * mass balance, whatever the lines are. Only rises are solved for, so their rounding shrinks with them.
 *
 * @source E. Todini and S. Pilati, A gradient algorithm for the analysis of pipe networks, 1988
 */
final class Iterate {
    /** A flow that is none, as a share of what the pieces could pass [1]. */
    private static final double NO_FLOW = 1e-9;

    private static final double LITTLE = 1e-3;

    /** The pressure that misfits are measured by where all is nearly still [Pa]. */
    private static final double STILL_PA = 1;

    final Shape shape;
    final Pieces pieces;
    final double[] head;
    final double[] demand;
    final double[] flow;
    final double[] loss;

    /** Head at each link's first end less that at its second, as last measured. */
    final double[] drop;

    final double[] next;

    /** One over the slope of each link's line. */
    final double[] conductance;

    private final double[] rise;
    private final LaplacianFactor factor;
    private double held_Pa;
    private double taken_m3s;
    private double pressure_Pa;
    private double largest_m3s;
    private double least_m3s;
    private double little_m3s;

    Iterate(Shape shape, Pieces pieces) {
        this.shape = shape;
        this.pieces = pieces;
        head = new double[shape.nodes()];
        rise = new double[shape.nodes()];
        demand = new double[shape.nodes()];
        flow = new double[shape.links()];
        loss = new double[shape.links()];
        drop = new double[shape.links()];
        next = new double[shape.links()];
        conductance = new double[shape.links()];
        factor = new LaplacianFactor(shape.pattern());
    }

    double drop_Pa(int link) {
        return head[shape.from()[link]] - head[shape.to()[link]];
    }

    /** Measures every drop. */
    void drops() {
        int[] from = shape.from();
        int[] to = shape.to();
        for (int k = 0; k < drop.length; k++) {
            drop[k] = head[from[k]] - head[to[k]];
        }
    }

    /** The pressure that misfits are measured by: what the fixed heads, pumps and losses span [Pa]; above 0. */
    double pressure_Pa() {
        return pressure_Pa;
    }

    /** The flow that misfits are measured by: the largest of a link or a demand [m3/s]; above 0. */
    double largest_m3s() {
        return largest_m3s;
    }

    /** Says what flow the pieces could pass [m3/s]; where hardly any flows, misfits are measured by a trifle of it. */
    void capacity(double flow_m3s) {
        least_m3s = NO_FLOW * flow_m3s;
        little_m3s = LITTLE * flow_m3s;
    }

    /** The slope that floors of slopes are shares of [Pa s/m3]; it does not grow where the flows die away. */
    double unit() {
        return pressure_Pa / Math.max(largest_m3s, little_m3s);
    }

    /** Brings the flows to balance along the lines {@link #next} and {@link #conductance}.
     *
     * @throws NotConverged a node hangs on nothing
     */
    void balance() {
        solveRises();
        move();
    }

    /** The same, with numbers left open that move along. */
    void balance(Border border) {
        solveRises();
        border.bend(rise);
        move();
    }

    /** Solves in place, by places, with the factor of the last balance. */
    void solveAgain(double[] right) {
        factor.solve(right);
    }

    private void solveRises() {
        fill();
        Arrays.fill(rise, shape.free(), rise.length, 0);
        if (factor.factor(rise) >= 0) {
            throw new NotConverged("A part of the network hangs on no fixed head.", "one of its free nodes");
        }
    }

    /** Puts the lines' conductances into the matrix, and what the lines bring to each node on its right-hand side. */
    private void fill() {
        factor.clear();
        double[] off = factor.entries();
        double[] down = factor.ground();
        int[] from = shape.from();
        int[] to = shape.to();
        int[] slot = shape.slot();
        int[] ground = shape.ground();
        for (int i = 0; i < rise.length; i++) {
            rise[i] = -demand[i];
        }
        for (int k = 0; k < conductance.length; k++) {
            double by = conductance[k];
            double brings = next[k];
            off[slot[k]] += by;
            down[ground[k]] += by;
            rise[from[k]] -= brings;
            rise[to[k]] += brings;
        }
    }

    /** Takes up the fixed heads and the demands, by which scales are set; again whenever they move. */
    void hold() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = shape.free(); i < head.length; i++) {
            low = head[i] < low ? head[i] : low;
            high = head[i] > high ? head[i] : high;
        }
        held_Pa = Math.max(STILL_PA, high - low);
        for (int k = 0; k < flow.length; k++) {
            held_Pa = -pieces.still_Pa(k) > held_Pa ? -pieces.still_Pa(k) : held_Pa;
        }
        taken_m3s = 0;
        for (int i = 0; i < shape.free(); i++) {
            taken_m3s = Math.abs(demand[i]) > taken_m3s ? Math.abs(demand[i]) : taken_m3s;
        }
    }

    /** Sets the scales of pressure and flow from what is known so far. */
    void scale() {
        double span = 0;
        double largest = 0;
        for (int k = 0; k < flow.length; k++) {
            span = Math.max(span, Math.abs(loss[k]));
            largest = Math.max(largest, Math.abs(flow[k]));
        }
        scale(span, largest);
    }

    /** Sets the scales of pressure and flow from the largest loss and flow of a link [Pa, m3/s]. */
    void scale(double loss_Pa, double flow_m3s) {
        pressure_Pa = Math.max(held_Pa, loss_Pa);
        largest_m3s = scale_m3s(flow_m3s);
    }

    /** The flow that misfits are measured by where the largest of a link is known [m3/s]. */
    double scale_m3s(double flow_m3s) {
        double largest = Math.max(flow_m3s, Math.max(least_m3s, taken_m3s));
        return largest > 0 ? largest : 1;
    }

    /** What the fixed heads and pumps span [Pa], once held. */
    double held_Pa() {
        return held_Pa;
    }

    /** Below this, flows no longer steepen the floors of slopes [m3/s]. */
    double little_m3s() {
        return little_m3s;
    }

    /** Largest imbalance of a free node, as a share of the largest flow [1]. */
    double massMisfit() {
        imbalance(flow);
        double misfit = 0;
        for (int i = 0; i < shape.free(); i++) {
            misfit = Math.max(misfit, Math.abs(rise[i]));
        }
        return misfit / largest_m3s;
    }

    /** What comes to each node by some flows less what is taken at it. */
    private void imbalance(double[] flows) {
        int[] from = shape.from();
        int[] to = shape.to();
        for (int i = 0; i < rise.length; i++) {
            rise[i] = -demand[i];
        }
        for (int k = 0; k < flows.length; k++) {
            double at = flows[k];
            rise[from[k]] -= at;
            rise[to[k]] += at;
        }
    }

    private void move() {
        for (int i = 0; i < head.length; i++) {
            head[i] += rise[i];
        }
        int[] from = shape.from();
        int[] to = shape.to();
        for (int k = 0; k < flow.length; k++) {
            flow[k] = next[k] + (rise[from[k]] - rise[to[k]]) * conductance[k];
        }
    }
}
