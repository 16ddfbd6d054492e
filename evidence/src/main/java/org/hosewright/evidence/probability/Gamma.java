package org.hosewright.evidence.probability;

/** The gamma function and what is built on it. */
final class Gamma {
    private static final int TERMS = 500;
    private static final double TINY = 1e-300;
    private static final double STILL = 1e-15;

    /** Coefficients for g = 607/128. @source P. Godfrey, A note on the computation of the convergent Lanczos complex gamma approximation, 2001 */
    private static final double[] LANCZOS = {
        0.9999999999999971,
        57.15623566586292,
        -59.59796035547549,
        14.136097974741746,
        -0.4919138160976202,
        3.399464998481189e-05,
        4.652362892704858e-05,
        -9.837447530487956e-05,
        0.0001580887032249125,
        -0.00021026444172410488,
        0.00021743961811521265,
        -0.0001643181065367639,
        8.441822398385275e-05,
        -2.6190838401581408e-05,
        3.6899182659531625e-06
    };

    private Gamma() {}

    /** Natural logarithm of the gamma function, for x above 0. */
    static double log(double x) {
        double sum = LANCZOS[0];
        for (int i = 1; i < LANCZOS.length; i++) {
            sum += LANCZOS[i] / (x + i);
        }
        double base = x + 607.0 / 128 + 0.5;
        return (x + 0.5) * Math.log(base) - base + Math.log(Math.sqrt(2 * Math.PI) * sum / x);
    }

    /** Regularised incomplete beta function I_x(a, b), by its continued fraction. @source Abramowitz and Stegun 26.5.8 */
    static double beta(double x, double a, double b) {
        if (x <= 0 || x >= 1) {
            return x <= 0 ? 0 : 1;
        }
        if (x > (a + 1) / (a + b + 2)) {
            return 1 - beta(1 - x, b, a);
        }
        double front = Math.exp(log(a + b) - log(a) - log(b) + a * Math.log(x) + b * Math.log(1 - x)) / a;
        return front * fraction(x, a, b);
    }

    /** The fraction by Lentz's way, from the top downward. */
    private static double fraction(double x, double a, double b) {
        double c = 1;
        double d = 1 / safe(1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m < TERMS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / safe(1 + even * d);
            c = safe(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / safe(1 + odd * d);
            c = safe(1 + odd / c);
            value *= d * c;
            if (Math.abs(d * c - 1) < STILL) {
                break;
            }
        }
        return value;
    }

    private static double safe(double x) {
        return Math.abs(x) < TINY ? TINY : x;
    }
}
