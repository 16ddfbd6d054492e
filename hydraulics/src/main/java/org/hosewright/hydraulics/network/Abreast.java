package org.hosewright.hydraulics.network;

import java.util.Arrays;
import java.util.function.IntConsumer;
import org.hosewright.hydraulics.network.sparse.RowFactor;

/** Scenarios of one core under way to their answers abreast: every number of an {@link Iterate} is a row, and each
 * scenario has its lane of all rows.
 *
 * <p>The steps are those of {@link Newton}, of which only the plain ones are taken: one-way links count as open. A lane
 * where one shuts, or that does not settle, is left to be solved by itself. No lane's numbers touch another's, so an
 * answer does not hang on its neighbours.
 */
final class Abreast {
    /** Enough that a row is worth its loop, few enough that the rows of a lay stay near the processor. */
    static final int LANES = 64;

    private static final int STEPS = 15;

    private final Iterate core;
    private final Shape shape;
    private final RowFactor factor;
    private final double[][] head;
    private final double[][] rise;
    private final Strands strands;
    private final double[] held_Pa = new double[LANES];
    private final double[] pressure_Pa = new double[LANES];
    private final double[] least = new double[LANES];
    private final double[] imbalance = new double[LANES];
    private final boolean[] settled = new boolean[LANES];

    /** Lays a core out that was solved once: its scale of flows is taken over. */
    Abreast(Iterate core) {
        this.core = core;
        shape = core.shape;
        head = new double[shape.nodes()][LANES];
        rise = new double[shape.nodes()][LANES];
        strands = new Strands(core, head, rise);
        factor = new RowFactor(shape.pattern(), LANES);
    }

    /** Whether a core is of the sort that goes abreast: laws without kinks, something to solve for, not too large. */
    static boolean suits(Iterate core) {
        boolean suits = core.shape.free() > 0 && RowFactor.suits(core.shape.pattern());
        for (int k = 0; suits && k < core.flow.length; k++) {
            suits = core.pieces.isSmooth(k);
        }
        return suits;
    }

    /** Takes a scenario from the core into a lane: its fixed heads, the resistances of the links that vary, and what the
     * core's iterate stands at.
     */
    void take(int lane, int[] varied) {
        for (int i = shape.free(); i < head.length; i++) {
            head[i][lane] = core.head[i];
        }
        strands.take(lane, varied);
        core.hold();
        held_Pa[lane] = core.held_Pa();
    }

    /** Takes heads and flows to set out from into a lane too. */
    void takeIterate(int lane) {
        for (int i = 0; i < shape.free(); i++) {
            head[i][lane] = core.head[i];
        }
        for (int k = 0; k < shape.links(); k++) {
            strands.flow(k)[lane] = core.flow[k];
        }
    }

    /** Puts a lane's answer into the core. */
    void give(int lane) {
        for (int i = 0; i < head.length; i++) {
            core.head[i] = head[i][lane];
        }
        for (int k = 0; k < shape.links(); k++) {
            core.flow[k] = strands.flow(k)[lane];
        }
    }

    boolean isSettled(int lane) {
        return settled[lane];
    }

    /** Steps until every lane has settled, or some will not.
     *
     * @param afresh whether to set out from resistors, as {@link Newton#start}, or from what the lanes stand at
     * @param done told the lane of each scenario that settles, as it does
     */
    void run(boolean afresh, IntConsumer done) {
        if (afresh) {
            start();
        } else {
            strands.measure();
        }
        Arrays.fill(settled, false);
        int left = LANES;
        for (int step = 0; left > 0 && step < STEPS; step++) {
            scale();
            strands.straighten(least);
            balance();
            left -= settle(done);
        }
    }

    private void start() {
        for (int i = 0; i < shape.free(); i++) {
            Arrays.fill(head[i], 0);
        }
        strands.resist(held_Pa);
        balance();
        strands.drive();
    }

    private void scale() {
        for (int l = 0; l < LANES; l++) {
            pressure_Pa[l] = Math.max(held_Pa[l], strands.span_Pa[l]);
            least[l] = Newton.LEAST * pressure_Pa[l] / Math.max(strands.largest_m3s[l], core.little_m3s());
        }
    }

    private void balance() {
        factor.clear();
        for (int i = 0; i < shape.nodes(); i++) {
            Arrays.fill(rise[i], i < shape.free() ? -core.demand[i] : 0);
        }
        for (int k = 0; k < shape.links(); k++) {
            fill(k);
        }
        for (int i = shape.free(); i < rise.length; i++) {
            Arrays.fill(rise[i], 0);
        }
        factor.factor(rise);
        for (int i = 0; i < shape.free(); i++) {
            add(head[i], rise[i]);
        }
        strands.move();
        strands.measure();
    }

    private void fill(int k) {
        add(factor.entries()[shape.slot()[k]], strands.conductance(k));
        add(factor.ground()[shape.ground()[k]], strands.conductance(k));
        subtract(rise[shape.from()[k]], strands.next(k));
        add(rise[shape.to()[k]], strands.next(k));
    }

    /** Marks the lanes whose misfits are small; gives their count. */
    private int settle(IntConsumer done) {
        int count = 0;
        boolean weighed = false;
        for (int l = 0; l < LANES; l++) {
            double pressure = Math.max(held_Pa[l], strands.span_Pa[l]);
            boolean close = !settled[l]
                    && strands.off_Pa[l] <= Newton.CLOSE * NetworkSolver.ENERGY * pressure
                    && strands.forward_m3s[l] > 0;
            if (close && !weighed) {
                weigh();
                weighed = true;
            }
            if (close && imbalance[l] <= NetworkSolver.MASS * core.scale_m3s(strands.largest_m3s[l])) {
                settled[l] = true;
                done.accept(l);
                count++;
            }
        }
        return count;
    }

    /** Works the largest imbalance of a node in every lane. */
    private void weigh() {
        for (int i = 0; i < shape.free(); i++) {
            Arrays.fill(rise[i], -core.demand[i]);
        }
        for (int k = 0; k < shape.links(); k++) {
            subtract(rise[shape.from()[k]], strands.flow(k));
            add(rise[shape.to()[k]], strands.flow(k));
        }
        Arrays.fill(imbalance, 0);
        for (int i = 0; i < shape.free(); i++) {
            double[] off = rise[i];
            for (int l = 0; l < off.length; l++) {
                imbalance[l] = Math.max(imbalance[l], Math.abs(off[l]));
            }
        }
    }

    private static void add(double[] to, double[] what) {
        for (int l = 0; l < to.length; l++) {
            to[l] += what[l];
        }
    }

    private static void subtract(double[] from, double[] what) {
        for (int l = 0; l < from.length; l++) {
            from[l] -= what[l];
        }
    }
}
