package org.hosewright.hydraulics.network.sparse;

/** Where each product of a small factor goes, column by column: what a column gives to those after it, looked up once. */
final class Targets {
    private final int[] slots;

    /** Where the products of each column begin. */
    private final int[] start;

    private Targets(int[] slots, int[] start) {
        this.slots = slots;
        this.start = start;
    }

    /** How many products a factor takes. */
    static long count(Pattern pattern) {
        long products = 0;
        for (int j = 0; j < pattern.size(); j++) {
            int below = pattern.start()[j + 1] - pattern.start()[j];
            products += (long) below * (below - 1) / 2;
        }
        return products;
    }

    static Targets of(Pattern pattern) {
        int size = pattern.size();
        int[] columnStart = pattern.start();
        int[] start = new int[size];
        int[] next = new int[pattern.entries()];
        int count = 0;
        for (int j = 0; j < size; j++) {
            start[j] = count;
            for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
                next[p] = count;
                count += columnStart[j + 1] - 1 - p;
            }
        }
        int[] slots = new int[count];
        int[] slotOf = new int[size];
        for (int i = 0; i < size; i++) {
            send(pattern, i, next, slotOf, slots);
        }
        return new Targets(slots, start);
    }

    /** Notes where one column takes what comes to it.
     *
     * @param next where the products of each slot begin
     * @param slotOf room for the column's slots by row
     */
    private static void send(Pattern pattern, int column, int[] next, int[] slotOf, int[] slots) {
        int[] row = pattern.row();
        for (int p = pattern.start()[column]; p < pattern.start()[column + 1]; p++) {
            slotOf[row[p]] = p;
        }
        for (int t = pattern.rowStart()[column]; t < pattern.rowStart()[column + 1]; t++) {
            int from = pattern.rowAt()[t];
            int end = pattern.start()[pattern.rowColumn()[t] + 1];
            int at = next[from] - from - 1;
            for (int q = from + 1; q < end; q++) {
                slots[at + q] = slotOf[row[q]];
            }
        }
    }

    int[] slots() {
        return slots;
    }

    int start(int column) {
        return start[column];
    }
}
