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
        MinimumDegree found = new MinimumDegree(Graph.of(size, ends));
        int[] order = found.order();
        int[] place = new int[size];
        for (int k = 0; k < size; k++) {
            place[order[k]] = k;
        }
        int[] columns = found.columns();
        int[] rows = new int[found.columnStart()[size]];
        for (int at = 0; at < rows.length; at++) {
            rows[at] = place[columns[at]];
        }
        return new Pattern(place, found.columnStart(), rows);
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

    /** The slots of many pairs of places; {@link #entries} where one of a pair is beyond the matrix.
     *
     * @param slots takes the answers
     */
    public void slots(int[] ones, int[] others, int[] slots) {
        int[] first = new int[size + 1];
        int[] next = new int[ones.length];
        for (int k = ones.length - 1; k >= 0; k--) {
            boolean inside = Math.max(ones[k], others[k]) < size;
            int column = inside ? Math.min(ones[k], others[k]) : size;
            next[k] = first[column];
            first[column] = k + 1;
            slots[k] = row.length;
        }
        int[] at = new int[size];
        for (int j = 0; j < size; j++) {
            for (int p = start[j]; first[j] > 0 && p < start[j + 1]; p++) {
                at[row[p]] = p;
            }
            for (int k = first[j]; k > 0; k = next[k - 1]) {
                slots[k - 1] = at[Math.max(ones[k - 1], others[k - 1])];
            }
        }
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
