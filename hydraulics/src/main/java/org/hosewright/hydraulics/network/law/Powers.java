package org.hosewright.hydraulics.network.law;

/** One power of any number, x^n for a fixed n, looked up and mended by a short series: as good as {@link Math#pow} to a
 * few roundings, in a fraction of its time.
 *
 * <p>A number is 2^e times one from 1 to 2; the nearest of 256 between is looked up, and what is left, no more than a
 * 512th of it, is raised by the binomial series.
 *
 * @validFor 2^-120 to 2^40 by the table; any other number by {@link Math#pow}
 * @accuracy 8e-16 of the power
 */
public final class Powers {
    private static final int PART = 8;
    private static final int PARTS = 1 << PART;

    /** Bits of a number's fraction, the bits themselves, and those of 1. */
    private static final int FRACTION = 52;

    private static final long FRACTION_BITS = (1L << FRACTION) - 1;
    private static final long ONE_BITS = 1023L << FRACTION;
    private static final int LEAST = -120;
    private static final int MOST = 40;
    private static final int LEAST_BITS = 1023 + LEAST;
    private static final int TERMS = 6;
    private static final double[] CENTRE = new double[PARTS];
    private static final double[] INVERSE = new double[PARTS];

    static {
        for (int i = 0; i < PARTS; i++) {
            CENTRE[i] = 1 + (i + 0.5) / PARTS;
            INVERSE[i] = 1 / CENTRE[i];
        }
    }

    private final double n;
    private final double[] ofCentre = new double[PARTS];
    private final double[] ofTwo = new double[MOST - LEAST + 1];
    private final double c1;
    private final double c2;
    private final double c3;
    private final double c4;
    private final double c5;

    /** Makes the table of one exponent, from 0 to 4 [1]. */
    public Powers(double n) {
        this.n = n;
        for (int i = 0; i < PARTS; i++) {
            ofCentre[i] = Math.pow(CENTRE[i], n);
        }
        for (int e = LEAST; e <= MOST; e++) {
            ofTwo[e - LEAST] = Math.pow(Math.pow(2, e), n);
        }
        double[] c = new double[TERMS];
        c[0] = 1;
        for (int k = 1; k < TERMS; k++) {
            c[k] = c[k - 1] * (n - k + 1) / k;
        }
        c1 = c[1];
        c2 = c[2];
        c3 = c[3];
        c4 = c[4];
        c5 = c[5];
    }

    /** The power of a number of 0 or more. */
    public double of(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int e = (int) (bits >>> FRACTION) - LEAST_BITS;
        if (e < 0 || e > MOST - LEAST) {
            return Math.pow(x, n);
        }
        int i = (int) (bits >>> (FRACTION - PART)) & (PARTS - 1);
        double y = Double.longBitsToDouble((bits & FRACTION_BITS) | ONE_BITS);
        double r = (y - CENTRE[i]) * INVERSE[i];
        double centre = ofCentre[i] * ofTwo[e];
        return centre + centre * (r * (c1 + r * c2 + r * r * (c3 + r * c4 + r * r * c5)));
    }
}
