package org.hosewright.evidence.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Spreads between groups and within them, against published estimates by restricted maximum likelihood. */
class PublishedSpreadsTest {
    private static final double STILL = 1e-9;

    /** The likelihood is flat at its top: published places of it differ by so much of themselves. */
    private static final double FLAT = 1e-4;

    /** Thirteen trials of the BCG vaccine: ill and well of the vaccinated, ill and well of the others.
     *
     * Source: G. Colditz and others, Efficacy of BCG vaccine in the prevention of tuberculosis, JAMA 271, 1994 (counts from memory,
     *     borne out by the agreement of three published numbers)
     */
    private static final int[][] BCG = {
        {4, 119, 11, 128},
        {6, 300, 29, 274},
        {3, 228, 11, 209},
        {62, 13536, 248, 12619},
        {33, 5036, 47, 5761},
        {180, 1361, 372, 1079},
        {8, 2537, 10, 619},
        {505, 87886, 499, 87892},
        {29, 7470, 45, 7232},
        {17, 1699, 65, 1600},
        {186, 50448, 141, 27197},
        {5, 2493, 3, 2338},
        {27, 16886, 29, 17825}
    };

    /** Yield of dyestuff from six batches, five preparations each [g].
     *
     * Source: O. Davies, Statistical Methods in Research and Production, 1947; G. Box and G. Tiao, Bayesian Inference in
     *     Statistical Analysis, 1973, table 5.1.1 (from memory)
     */
    private static final double[][] DYESTUFF = {
        {1545, 1440, 1440, 1520, 1580},
        {1540, 1555, 1490, 1560, 1495},
        {1595, 1550, 1605, 1510, 1560},
        {1445, 1440, 1595, 1465, 1545},
        {1595, 1630, 1515, 1635, 1625},
        {1520, 1455, 1450, 1480, 1445}
    };

    /** Yearly flow of the Nile at Aswan, 1871 to 1970 [10^8 m3].
     *
     * Source: G. Cobb, The problem of the Nile, Biometrika 65, 1978 (from memory, borne out by the published estimates)
     */
    private static final int[] NILE = {
        1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180, 799, 958, 1140,
        1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833, 701, 916, 692, 1020, 1050, 969,
        831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845, 864, 862, 698, 845, 744, 796, 1040, 759, 781, 865,
        845, 944, 984, 897, 822, 1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874, 848, 890, 744, 749, 838, 1050,
        918, 986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740
    };

    private final List<Equation> equations = new ArrayList<>();

    /** Spread between trials and pooled logarithm of the risk ratio, as the author of the R package metafor prints them.
     *
     * Source: W. Viechtbauer, Conducting meta-analyses in R with the metafor package, J. Stat. Software 36(3), 2010, section 3
     *     (from memory): tau^2 = 0.3132, estimate -0.7145, standard error 0.1798
     */
    @Test
    void vaccineTrialsMatchesPublished() {
        int pooled = BCG.length;
        for (int i = 0; i < BCG.length; i++) {
            double ill = BCG[i][0];
            double all = ill + BCG[i][1];
            double illOther = BCG[i][2];
            double allOther = illOther + BCG[i][3];
            double deviation = Math.sqrt(1 / ill - 1 / all + 1 / illOther - 1 / allOther);
            double ratio = Math.log(ill / all / (illOther / allOther));
            add(Equation.KNOWN, -ratio / deviation, new int[] {i}, 1 / deviation);
            add(0, 0, new int[] {i, pooled}, 1, -1);
        }
        Mixed mixed = new Mixed(pooled + 1, 1, equations);
        double[] likeliest = Ascent.top(logs -> mixed.at(logs).likelihood(), new double[] {-1}, 0.5, STILL);
        Solved solved = mixed.at(likeliest);
        assertThat(Math.exp(2 * likeliest[0])).isCloseTo(0.3132, within(5e-5));
        assertThat(solved.mean(pooled)).isCloseTo(-0.7145, within(5e-5));
        assertThat(Math.sqrt(solved.variances()[pooled])).isCloseTo(0.1798, within(5e-5));
    }

    /** Batches, and preparations within them.
     *
     * Source: D. Bates and others, Fitting linear mixed-effects models using lme4, 2015, and the package's example Dyestuff (from
     *     memory): variances 1764 and 2451, mean 1527.50 with standard error 19.38
     */
    @Test
    void dyestuffBatchesMatchesPublished() {
        int mean = DYESTUFF.length;
        for (int batch = 0; batch < DYESTUFF.length; batch++) {
            add(0, 0, new int[] {batch, mean}, 1, -1);
            for (double grams : DYESTUFF[batch]) {
                add(1, -grams, new int[] {batch}, 1);
            }
        }
        Mixed mixed = new Mixed(mean + 1, 2, equations);
        double[] likeliest = Ascent.top(logs -> mixed.at(logs).likelihood(), new double[] {3, 3}, 0.5, STILL);
        Solved solved = mixed.at(likeliest);
        assertThat(Math.exp(2 * likeliest[0])).isCloseTo(1764.05, within(0.05));
        assertThat(Math.exp(2 * likeliest[1])).isCloseTo(2451.25, within(0.05));
        assertThat(solved.mean(mean)).isCloseTo(1527.5, within(1e-6));
        assertThat(Math.sqrt(solved.variances()[mean])).isCloseTo(19.38, within(5e-3));
    }

    /** A level that walks from year to year, seen with scatter.
     *
     * Source: J. Durbin and S. Koopman, Time Series Analysis by State Space Methods, section 2.10: 15099 and 1469.1
     */
    @Test
    void nileLevelMatchesPublished() {
        for (int year = 0; year < NILE.length; year++) {
            add(0, -NILE[year], new int[] {year}, 1);
            if (year > 0) {
                add(1, 0, new int[] {year - 1, year}, -1, 1);
            }
        }
        Mixed mixed = new Mixed(NILE.length, 2, equations);
        double[] likeliest = Ascent.top(logs -> mixed.at(logs).likelihood(), new double[] {4, 4}, 0.5, STILL);
        assertThat(Math.exp(2 * likeliest[0])).isCloseTo(15099, within(FLAT * 15099));
        assertThat(Math.exp(2 * likeliest[1])).isCloseTo(1469.1, within(FLAT * 1469.1));
    }

    private void add(int spread, double constant, int[] at, double... slopes) {
        equations.add(new Equation(Owner.BELIEF, spread, constant, at, slopes));
    }
}
