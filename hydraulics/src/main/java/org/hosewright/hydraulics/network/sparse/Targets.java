package org.hosewright.hydraulics.network.sparse;

/** Where each product of a small factor goes, column by column: what a column gives to those after it, looked up once. */
final class Targets {
    private Targets() {}

    /** How many products a factor takes. */
    static long count(Pattern pattern) {
        long products = 0;
        for (int j = 0; j < pattern.size(); j++) {
            int below = pattern.start()[j + 1] - pattern.start()[j];
            products += (long) below * (below - 1) / 2;
        }
        return products;
    }

    /** The slot that each product is added to. */
    static int[] of(Pattern pattern) {
        int size = pattern.size();
        int[] columnStart = pattern.start();
        int[] next = new int[pattern.entries()];
        int count = 0;
        for (int j = 0; j < size; j++) {
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
        return slots;
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
}
