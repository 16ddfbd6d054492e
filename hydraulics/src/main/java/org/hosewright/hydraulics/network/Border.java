package org.hosewright.hydraulics.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.Law;

/** The numbers left open beside an iterate's heads, and how a step moves them so that what is wanted comes about. */
final class Border {
    /** Most that a step may move a head, in pressure scales, and the least share of a law's number it may leave [1]. */
    private static final double MOST_HEAD = 4;

    private static final double LEAST_SHARE = 0.1;
    private static final double MOST_SHARE = 10;

    private final Iterate at;
    private final Compiled compiled;
    private final List<Wanted> wanted;
    private final boolean[] isHead;
    private final int[] place;
    private final int[] number;
    private final Law[] laws;
    private final double[] values;
    private final double[][] columns;

    Border(Compiled compiled, List<Freed> freed, List<Wanted> wanted) {
        this.compiled = compiled;
        at = compiled.iterate();
        this.wanted = List.copyOf(wanted);
        int count = freed.size();
        isHead = new boolean[count];
        place = new int[count];
        number = new int[count];
        laws = new Law[count];
        values = new double[count];
        columns = new double[count][at.head.length];
        for (int i = 0; i < count; i++) {
            open(i, freed.get(i), compiled.network());
        }
        wanted.forEach(this::require);
    }

    List<Double> listValues() {
        List<Double> found = new ArrayList<>();
        for (double value : values) {
            found.add(value);
        }
        return found;
    }

    /** How far what is wanted is missed, as a share of the scale of its kind [1]. */
    double misfit() {
        double misfit = 0;
        for (int j = 0; j < values.length; j++) {
            double scale = wanted.get(j).isFlow() ? at.largest_m3s() : at.pressure_Pa();
            misfit = Math.max(misfit, Math.abs(missing(j)) / scale);
        }
        return misfit;
    }

    /** Bends the rises that a step found so that its answers become what is wanted. */
    void bend(double[] rise) {
        int count = values.length;
        double[][] system = new double[count][count + 1];
        for (int i = 0; i < count; i++) {
            column(i);
        }
        for (int j = 0; j < count; j++) {
            for (int i = 0; i < count; i++) {
                system[j][i] = answer(j, columns[i]) - ownLoss(j, i);
            }
            system[j][count] = missing(j) - steps(j, rise);
        }
        double[] moves = Dense.solve(system);
        for (int i = 0; i < count; i++) {
            take(i, moves[i], rise);
        }
    }

    private void take(int i, double move, double[] rise) {
        double most = isHead[i] ? MOST_HEAD * at.pressure_Pa() : (MOST_SHARE - 1) * Math.abs(values[i]);
        double least = isHead[i] ? -most : -(1 - LEAST_SHARE) * Math.abs(values[i]);
        double taken = Math.max(least, Math.min(most, Double.isNaN(move) ? most : move));
        for (int p = 0; p < rise.length; p++) {
            rise[p] += taken * columns[i][p];
        }
        values[i] += taken;
        if (!isHead[i]) {
            int k = place[i];
            at.next[k] -= taken * laws[i].lossByCoefficient(number[i], at.flow[k]) * at.conductance[k];
            laws[i] = laws[i].withCoefficient(number[i], values[i]);
            at.pieces.set(k, laws[i]);
        }
    }

    /** How heads rise with a number left open, the pieces' lines held. */
    private void column(int i) {
        double[] column = columns[i];
        Arrays.fill(column, 0);
        if (isHead[i]) {
            for (int k = 0; k < at.flow.length; k++) {
                int from = at.shape.from()[k];
                int to = at.shape.to()[k];
                column[from] += to == place[i] ? at.conductance[k] : 0;
                column[to] += from == place[i] ? at.conductance[k] : 0;
            }
        } else {
            double less = laws[i].lossByCoefficient(number[i], at.flow[place[i]]) * at.conductance[place[i]];
            column[at.shape.from()[place[i]]] += less;
            column[at.shape.to()[place[i]]] -= less;
        }
        Arrays.fill(column, at.shape.free(), column.length, 0);
        at.solveAgain(column);
        if (isHead[i]) {
            column[place[i]] = 1;
        }
    }

    private double answer(int j, double[] rise) {
        Wanted want = wanted.get(j);
        int of = of(want);
        return want.isFlow() ? (rise[at.shape.from()[of]] - rise[at.shape.to()[of]]) * at.conductance[of] : rise[of];
    }

    private double ownLoss(int j, int i) {
        Wanted want = wanted.get(j);
        boolean own = want.isFlow() && !isHead[i] && of(want) == place[i];
        return own ? laws[i].lossByCoefficient(number[i], at.flow[place[i]]) * at.conductance[place[i]] : 0;
    }

    /** What the step alone adds to an answer. */
    private double steps(int j, double[] rise) {
        Wanted want = wanted.get(j);
        return answer(j, rise) + (want.isFlow() ? at.next[of(want)] - at.flow[of(want)] : 0);
    }

    private double missing(int j) {
        Wanted want = wanted.get(j);
        int of = of(want);
        return want.value() - (want.isFlow() ? at.flow[of] : at.head[of] + compiled.datum_Pa());
    }

    private int of(Wanted want) {
        Network network = compiled.network();
        return want.isFlow() ? network.linkAt(want.at()) : at.shape.placeOf(network.nodeAt(want.at(), "wanted"));
    }

    private void open(int i, Freed freed, Network network) {
        isHead[i] = freed.isHead();
        number[i] = freed.coefficient();
        if (freed.isHead()) {
            int node = network.nodeAt(freed.of(), "left open");
            if (!network.isFixed(node)) {
                throw new InvalidInput("node left open", freed.of(), "a node of fixed head", "network");
            }
            place[i] = at.shape.placeOf(node);
            values[i] = network.head_Pa(node);
        } else {
            place[i] = network.linkAt(freed.of());
            laws[i] = network.law(place[i]);
            values[i] = laws[i].coefficient(number[i]);
        }
    }

    private void require(Wanted want) {
        boolean fixed = !want.isFlow() && of(want) >= at.shape.free();
        if (fixed) {
            throw new InvalidInput("head wanted at", want.at(), "a node whose head is found", "network");
        }
    }
}
