package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** Where the factor of a symmetric matrix has entries; found once for a graph, used for every matrix on it.
 *
 * <p>Rows are renumbered by {@link #place} into the order in which they are eliminated; all else speaks of places.
 *
 * @source T. Davis, Direct Methods for Sparse Linear Systems, SIAM, 2006, chapter 4 (elimination tree, columns)
 */
public final class Pattern {
    private final int size;
    private final int[] place;
    private final int[] start;
    private final int[] row;
    private final int[] rowStart;
    private final int[] rowColumn;
    private final int[] rowAt;
    private final int[] group;

    private Pattern(int[] place, int[] start, int[] unsorted) {
        this.place = place;
        this.start = start;
        size = place.length;
        row = new int[unsorted.length];
        rowStart = new int[size + 1];
        rowColumn = new int[unsorted.length];
        rowAt = new int[unsorted.length];
        group = new int[size];
        sort(unsorted);
        gatherGroups();
    }

    /** Orders a graph and finds the factor's entries.
     *
     * @param size number of rows
     * @param ends pairs of row numbers, two for each entry off the diagonal; a pair may come twice
     */
    public static Pattern of(int size, int[] ends) {
        Graph graph = Graph.of(size, ends);
        int[] order = MinimumDegree.order(graph.copy());
        int[] place = new int[size];
        for (int k = 0; k < size; k++) {
            place[order[k]] = k;
        }
        int[][] columns = columns(graph, order, place);
        int[] start = new int[size + 1];
        for (int k = 0; k < size; k++) {
            start[k + 1] = start[k] + columns[k].length;
        }
        int[] rows = new int[start[size]];
        for (int k = 0; k < size; k++) {
            System.arraycopy(columns[k], 0, rows, start[k], columns[k].length);
        }
        return new Pattern(place, start, rows);
    }

    public int size() {
        return size;
    }

    /** Entries of the factor below its diagonal. */
    public int entries() {
        return row.length;
    }

    /** The place of a row in the order of elimination. */
    public int place(int of) {
        return place[of];
    }

    /** Where the factor keeps the entry of two places that stand beside one another. */
    public int slot(int one, int other) {
        int column = Math.min(one, other);
        return Arrays.binarySearch(row, start[column], start[column + 1], Math.max(one, other));
    }

    int[] start() {
        return start;
    }

    int[] row() {
        return row;
    }

    int[] rowStart() {
        return rowStart;
    }

    int[] rowColumn() {
        return rowColumn;
    }

    int[] rowAt() {
        return rowAt;
    }

    /** The group of each column: neighbouring columns with the same rows below them. */
    int[] group() {
        return group;
    }

    /** Each column's rows below the diagonal: its neighbours to come and what its children leave. */
    private static int[][] columns(Graph graph, int[] order, int[] place) {
        int size = order.length;
        int[][] columns = new int[size][];
        int[] firstChild = new int[size];
        int[] nextChild = new int[size];
        int[] seen = new int[size];
        int[] found = new int[size];
        Arrays.fill(firstChild, -1);
        Arrays.fill(seen, -1);
        for (int k = 0; k < size; k++) {
            int count = 0;
            seen[k] = k;
            for (int at = graph.start()[order[k]]; at < graph.start()[order[k] + 1]; at++) {
                count = add(place[graph.near()[at]], k, seen, found, count);
            }
            for (int child = firstChild[k]; child >= 0; child = nextChild[child]) {
                for (int i : columns[child]) {
                    count = add(i, k, seen, found, count);
                }
            }
            columns[k] = Arrays.copyOf(found, count);
            hang(k, columns[k], firstChild, nextChild);
        }
        return columns;
    }

    private static int add(int i, int k, int[] seen, int[] found, int count) {
        if (i < k || seen[i] == k) {
            return count;
        }
        seen[i] = k;
        found[count] = i;
        return count + 1;
    }

    private static void hang(int k, int[] column, int[] firstChild, int[] nextChild) {
        int parent = Integer.MAX_VALUE;
        for (int i : column) {
            parent = Math.min(parent, i);
        }
        if (column.length > 0) {
            nextChild[k] = firstChild[parent];
            firstChild[parent] = k;
        }
    }

    /** Turns columns into rows and rows into columns again: both come out in order. */
    private void sort(int[] unsorted) {
        for (int i : unsorted) {
            rowStart[i + 1]++;
        }
        for (int i = 0; i < size; i++) {
            rowStart[i + 1] += rowStart[i];
        }
        int[] next = Arrays.copyOf(rowStart, size);
        for (int k = 0; k < size; k++) {
            for (int at = start[k]; at < start[k + 1]; at++) {
                rowColumn[next[unsorted[at]]++] = k;
            }
        }
        next = Arrays.copyOf(start, size);
        for (int i = 0; i < size; i++) {
            for (int at = rowStart[i]; at < rowStart[i + 1]; at++) {
                int slot = next[rowColumn[at]]++;
                row[slot] = i;
                rowAt[at] = slot;
            }
        }
    }

    private void gatherGroups() {
        for (int k = 1; k < size; k++) {
            int before = start[k] - start[k - 1];
            boolean same = before == start[k + 1] - start[k] + 1 && row[start[k - 1]] == k;
            group[k] = same ? group[k - 1] : k;
        }
    }
}
