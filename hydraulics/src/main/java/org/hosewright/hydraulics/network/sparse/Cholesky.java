package org.hosewright.hydraulics.network.sparse;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The factor of a symmetric positive matrix whose pattern is a graph: ordered once by least degree, refilled often. */
public final class Cholesky {
    private final int size;
    private final int[] place;
    private final int[] start;
    private final int[] row;
    private final double[] value;
    private final double[] diagonal;
    private final double[] work;
    private final int[] head;
    private final int[] next;
    private final int[] first;

    /** Orders the graph of a matrix.
     *
     * @param size number of rows
     * @param ends pairs of row numbers, two for each entry off the diagonal
     */
    public Cholesky(int size, int[] ends) {
        this.size = size;
        place = new int[size];
        start = new int[size + 1];
        diagonal = new double[size];
        work = new double[size];
        head = new int[size];
        next = new int[size];
        first = new int[size];
        row = columns(eliminate(ends));
        value = new double[row.length];
    }

    public void clear() {
        java.util.Arrays.fill(value, 0);
        java.util.Arrays.fill(diagonal, 0);
    }

    public void addDiagonal(int i, double by) {
        diagonal[place[i]] += by;
    }

    /** Adds to an entry and its mirror. */
    public void addOff(int i, int j, double by) {
        int low = Math.min(place[i], place[j]);
        int high = Math.max(place[i], place[j]);
        int at = java.util.Arrays.binarySearch(row, start[low], start[low + 1], high);
        if (at < 0) {
            throw new IllegalArgumentException("entry outside the pattern");
        }
        value[at] += by;
    }

    /** Turns the filled matrix into its factor, in place, column by column from the left. */
    public void factor() {
        java.util.Arrays.fill(head, -1);
        java.util.Arrays.fill(work, 0);
        for (int j = 0; j < size; j++) {
            for (int k = head[j]; k >= 0; ) {
                int after = next[k];
                takeOff(k, j);
                k = after;
            }
            double root = Math.sqrt(diagonal[j] - work[j]);
            diagonal[j] = root;
            work[j] = 0;
            for (int p = start[j]; p < start[j + 1]; p++) {
                value[p] = (value[p] - work[row[p]]) / root;
                work[row[p]] = 0;
            }
            hang(j, start[j]);
        }
    }

    /** Solves in place with the last factor. */
    public void solve(double[] x) {
        for (int i = 0; i < size; i++) {
            work[place[i]] = x[i];
        }
        for (int j = 0; j < size; j++) {
            work[j] /= diagonal[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                work[row[p]] -= value[p] * work[j];
            }
        }
        for (int j = size - 1; j >= 0; j--) {
            for (int p = start[j]; p < start[j + 1]; p++) {
                work[j] -= value[p] * work[row[p]];
            }
            work[j] /= diagonal[j];
        }
        for (int i = 0; i < size; i++) {
            x[i] = work[place[i]];
        }
    }

    private void takeOff(int k, int j) {
        int p = first[k];
        double factor = value[p];
        for (int q = p; q < start[k + 1]; q++) {
            work[row[q]] += factor * value[q];
        }
        hang(k, p + 1);
    }

    private void hang(int column, int at) {
        if (at < start[column + 1]) {
            first[column] = at;
            next[column] = head[row[at]];
            head[row[at]] = column;
        }
    }

    private List<TreeSet<Integer>> eliminate(int[] ends) {
        List<TreeSet<Integer>> near = new ArrayList<>();
        TreeSet<Long> queue = new TreeSet<>();
        for (int i = 0; i < size; i++) {
            near.add(new TreeSet<>());
        }
        for (int e = 0; e + 1 < ends.length; e += 2) {
            near.get(ends[e]).add(ends[e + 1]);
            near.get(ends[e + 1]).add(ends[e]);
        }
        for (int i = 0; i < size; i++) {
            queue.add(near.get(i).size() * (long) size + i);
        }
        List<TreeSet<Integer>> out = new ArrayList<>();
        while (!queue.isEmpty()) {
            int pick = (int) (queue.pollFirst() % size);
            place[pick] = out.size();
            TreeSet<Integer> clique = near.get(pick);
            for (int i : clique) {
                queue.remove(near.get(i).size() * (long) size + i);
                near.get(i).addAll(clique);
                near.get(i).remove(i);
                near.get(i).remove(pick);
                queue.add(near.get(i).size() * (long) size + i);
            }
            out.add(clique);
        }
        return out;
    }

    private int[] columns(List<TreeSet<Integer>> cliques) {
        for (int j = 0; j < size; j++) {
            start[j + 1] = start[j] + cliques.get(j).size();
        }
        int[] rows = new int[start[size]];
        for (int j = 0; j < size; j++) {
            int at = start[j];
            for (int i : cliques.get(j)) {
                rows[at++] = place[i];
            }
            java.util.Arrays.sort(rows, start[j], start[j + 1]);
        }
        return rows;
    }
}
