package org.hosewright.hydraulics.network;

/** Small dense systems. */
final class Dense {
    private Dense() {}

    /** Solves rows that carry their right-hand side at their end; not-a-number where the rows do not tell. */
    static double[] solve(double[][] rows) {
        int size = rows.length;
        for (int k = 0; k < size; k++) {
            int best = k;
            for (int i = k + 1; i < size; i++) {
                best = Math.abs(rows[i][k]) > Math.abs(rows[best][k]) ? i : best;
            }
            double[] pivot = rows[best];
            rows[best] = rows[k];
            rows[k] = pivot;
            for (int i = k + 1; i < size; i++) {
                double share = pivot[k] == 0 ? 0 : rows[i][k] / pivot[k];
                for (int j = k; j <= size; j++) {
                    rows[i][j] -= share * pivot[j];
                }
            }
        }
        double[] x = new double[size];
        for (int k = size - 1; k >= 0; k--) {
            double sum = rows[k][size];
            for (int j = k + 1; j < size; j++) {
                sum -= rows[k][j] * x[j];
            }
            x[k] = rows[k][k] == 0 ? Double.NaN : sum / rows[k][k];
        }
        return x;
    }
}
