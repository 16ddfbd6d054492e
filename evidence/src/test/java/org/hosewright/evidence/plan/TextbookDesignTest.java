package org.hosewright.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** Designs that textbooks know, over x from -1 to 1 in steps of a quarter, found by the exchange from bad beginnings. */
class TextbookDesignTest {
    /** What is known beforehand: hardly anything, so that the design is the readings' own. */
    private static final double HARDLY = 1e-4;

    private static double[] line(double x) {
        return new double[] {1, x, 0};
    }

    private static double[] quadratic(double x) {
        return new double[] {1, x, x * x, 0};
    }

    private static Offers offers(int unknowns, DoubleFunction<double[]> model) {
        List<Offer> list = new ArrayList<>();
        for (int i = -4; i <= 4; i++) {
            list.add(new Offer(new double[][] {model.apply(i / 4.0)}, 0, false, 1, 0));
        }
        double[][] beforehand = new double[unknowns][unknowns + 1];
        for (int i = 0; i < unknowns; i++) {
            beforehand[i][i] = HARDLY;
        }
        return new Offers(unknowns, beforehand, list, List.of(0.0), List.of(0.0));
    }

    private static Map<Double, Integer> counts(Selection found) {
        TreeMap<Double, Integer> counts = new TreeMap<>();
        found.picks().forEach(pick -> counts.merge((pick - 4) / 4.0, 1, Integer::sum));
        return counts;
    }

    private static Selection exchanged(Offers offers, Criterion criterion, int readings, int beginAt) {
        Selection start = new Selection(offers, Collections.nCopies(readings, beginAt));
        return new Exchange(criterion, any -> true).improved(start);
    }

    /** Source: A. C. Atkinson, A. N. Donev, Optimum Experimental Designs, 1992: half the trials at each end */
    @Test
    void dOptimalForALineMatchesPublished() {
        Selection found = exchanged(offers(2, TextbookDesignTest::line), Criterion.ofDeterminant(), 6, 5);
        assertThat(counts(found)).isEqualTo(Map.of(-1.0, 3, 1.0, 3));
    }

    /** Source: A. C. Atkinson, A. N. Donev, Optimum Experimental Designs, 1992: a third at the ends and in the middle */
    @Test
    void dOptimalForAQuadraticMatchesPublished() {
        Selection found = exchanged(offers(3, TextbookDesignTest::quadratic), Criterion.ofDeterminant(), 9, 3);
        assertThat(counts(found)).isEqualTo(Map.of(-1.0, 3, 0.0, 3, 1.0, 3));
    }

    /** Source: W. J. Studden, Optimal designs for integrated variance in polynomial regression, 1977: a quarter at each end and
     *     half in the middle (the mean variance over -1 to 1 is 8/15 / (a (1 - a)), a the share at the ends) */
    @Test
    void iOptimalForAQuadraticMatchesPublished() {
        List<double[]> foretold = new ArrayList<>();
        for (int i = -50; i <= 50; i++) {
            double x = i / 50.0;
            foretold.add(new double[] {1, x, x * x});
        }
        Selection found = exchanged(offers(3, TextbookDesignTest::quadratic), Criterion.ofVariances(foretold), 8, 3);
        assertThat(counts(found)).isEqualTo(Map.of(-1.0, 2, 0.0, 4, 1.0, 2));
    }

    @Test
    void theExchangeNeverWorsensHolds() {
        Offers offers = offers(3, TextbookDesignTest::quadratic);
        for (long seed = 1; seed <= 50; seed++) {
            Random random = new Random(seed);
            List<Integer> picks = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                picks.add(random.nextInt(offers.size()));
            }
            Selection start = new Selection(offers, picks);
            Criterion criterion = Criterion.ofDeterminant();
            Selection end = new Exchange(criterion, any -> true).improved(start);
            assertThat(end.size()).as("seed " + seed).isEqualTo(start.size());
            assertThat(criterion.of(end.information()))
                    .as("seed " + seed)
                    .isLessThanOrEqualTo(criterion.of(start.information()));
        }
    }

    /** The fast search against trying all 495 choices of four of the nine places, with repeats. */
    @Test
    void theExchangeFindsTheBestOfAllAgrees() {
        Offers offers = offers(3, TextbookDesignTest::quadratic);
        Criterion criterion = Criterion.ofDeterminant();
        double least = least(criterion, Selection.none(offers), 0, 4);
        double found = criterion.of(exchanged(offers, criterion, 4, 2).information());
        assertThat(found).isLessThanOrEqualTo(least + ROUNDING);
    }

    /** Of a logarithm of a determinant [1]. */
    private static final double ROUNDING = 1e-9;

    private static double least(Criterion criterion, Selection begun, int from, int left) {
        if (left == 0) {
            return criterion.of(begun.information());
        }
        double least = Double.POSITIVE_INFINITY;
        for (int offer = from; offer < begun.offers().size(); offer++) {
            least = Math.min(least, least(criterion, begun.with(offer), offer, left - 1));
        }
        return least;
    }
}
