package org.hosewright.evidence.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hosewright.hydraulics.network.sparse.Pattern;
import org.hosewright.hydraulics.network.sparse.SymmetricFactor;
import org.hosewright.hydraulics.network.sparse.SymmetricInverse;
import org.junit.jupiter.api.Test;

/** The sparse factor against a library's dense one. */
class SparseFactorTest {
    private static final long SEED = 20_261_125;
    private static final int SIZE = 60;

    /** Shares of the largest number; both sides round. */
    private static final double AGREE = 1e-10;

    @Test
    void randomMatricesAgree() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        for (int round = 0; round < 20; round++) {
            check(random, 40 + random.nextInt(120));
        }
    }

    /** A matrix that is not positive definite is told by its first bad pivot. */
    @Test
    void indefiniteMatrixRefused() {
        Pattern pattern = Pattern.of(2, new int[] {0, 1});
        SymmetricFactor factor = new SymmetricFactor(pattern);
        factor.addDiagonal(0, 1);
        factor.addDiagonal(1, 1);
        factor.add(pattern.slot(0, 1), 2);
        assertThat(factor.factor()).isEqualTo(1);
    }

    private static void check(Random random, int pairs) {
        int[] ends = new int[2 * pairs];
        for (int e = 0; e < ends.length; e += 2) {
            ends[e] = random.nextInt(SIZE);
            ends[e + 1] = (ends[e] + 1 + random.nextInt(SIZE - 1)) % SIZE;
        }
        Pattern pattern = Pattern.of(SIZE, ends);
        SymmetricFactor factor = new SymmetricFactor(pattern);
        RealMatrix dense = new Array2DRowRealMatrix(SIZE, SIZE);
        for (int i = 0; i < SIZE; i++) {
            add(factor, pattern, dense, new int[] {i, i}, 0.1 + random.nextDouble());
        }
        for (int e = 0; e < ends.length; e += 2) {
            add(factor, pattern, dense, new int[] {ends[e], ends[e + 1]}, random.nextGaussian());
        }
        assertThat(factor.factor()).isEqualTo(-1);
        compare(factor, pattern, dense, ends);
    }

    /** Adds a pair's square, which leaves the matrix positive. */
    private static void add(SymmetricFactor factor, Pattern pattern, RealMatrix dense, int[] pair, double slope) {
        for (int i : pair) {
            factor.addDiagonal(pattern.place(i), slope * slope);
            dense.addToEntry(i, i, slope * slope);
        }
        if (pair[0] != pair[1]) {
            factor.add(pattern.slot(pattern.place(pair[0]), pattern.place(pair[1])), slope * slope / 2);
            dense.addToEntry(pair[0], pair[1], slope * slope / 2);
            dense.addToEntry(pair[1], pair[0], slope * slope / 2);
        }
    }

    private static void compare(SymmetricFactor factor, Pattern pattern, RealMatrix dense, int[] ends) {
        LUDecomposition library = new LUDecomposition(dense);
        RealMatrix inverse = library.getSolver().getInverse();
        SymmetricInverse sparse = factor.inverse();
        double[] right = new Random(SEED).doubles(SIZE).toArray();
        double[] expected = inverse.operate(right);
        double[] solved = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            solved[pattern.place(i)] = right[i];
        }
        factor.solve(solved);
        double largest = inverse.getNorm1();
        for (int i = 0; i < SIZE; i++) {
            int place = pattern.place(i);
            assertThat(sparse.at(place, place)).isCloseTo(inverse.getEntry(i, i), within(AGREE * largest));
            assertThat(solved[place]).isCloseTo(expected[i], within(AGREE * largest));
        }
        for (int e = 0; e < ends.length; e += 2) {
            double entry = sparse.at(pattern.place(ends[e]), pattern.place(ends[e + 1]));
            assertThat(entry).isCloseTo(inverse.getEntry(ends[e], ends[e + 1]), within(AGREE * largest));
        }
        assertThat(factor.logDeterminant()).isCloseTo(Math.log(library.getDeterminant()), within(1e-9 * SIZE));
    }
}
