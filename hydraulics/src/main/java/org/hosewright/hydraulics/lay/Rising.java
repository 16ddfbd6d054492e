package org.hosewright.hydraulics.lay;

import java.util.function.DoubleUnaryOperator;
import org.hosewright.hydraulics.error.NotConverged;

/** The place where a rising function passes zero, steps included.
 *
 * @source Chandrupatla, A new hybrid quadratic/bisection algorithm, Advances in Engineering Software 28, 1997 (from
 *     memory)
 */
final class Rising {
    /** Far more steps than halving any bracket of doubles takes. */
    private static final int MOST_STEPS = 2500;

    /** The width at which a bracket counts as closed [1]: a few last digits. */
    private static final double CLOSED = 2e-16;

    private double a;
    private double fa;
    private double b;
    private double fb;
    private double c;
    private double fc;

    private Rising(double a, double fa, double b, double fb) {
        this.a = a;
        this.fa = fa;
        this.b = b;
        this.fb = fb;
    }

    /** The zero within a bracket; at a step, the place of the step.
     *
     * @param low where the function is not above 0
     * @param high where it is not below 0
     * @param scale size below whose last digits differences mean nothing
     */
    static double zero(DoubleUnaryOperator function, double low, double high, double scale) {
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        if (atLow >= 0) {
            return low;
        }
        return atHigh <= 0 ? high : new Rising(high, atHigh, low, atLow).close(function, scale);
    }

    private double close(DoubleUnaryOperator function, double scale) {
        double part = 0.5;
        for (int step = 0; step < MOST_STEPS; step++) {
            take(function, a + part * (b - a));
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double least = CLOSED * Math.max(scale, Math.abs(best)) / Math.abs(b - a);
            if (!(least < 0.5) || fa == 0) {
                return fa == 0 ? a : best;
            }
            part = Math.min(1 - least, Math.max(least, part()));
        }
        throw new NotConverged("The flows of the lay were not found.", "a wye");
    }

    private void take(DoubleUnaryOperator function, double x) {
        double fx = function.applyAsDouble(x);
        if (fx > 0 == fa > 0) {
            c = a;
            fc = fa;
        } else {
            c = b;
            fc = fb;
            b = a;
            fb = fa;
        }
        a = x;
        fa = fx;
    }

    /** Where to look next, as a share of the bracket: by a parabola where three points allow one, else its middle. */
    private double part() {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        if (phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi) {
            return fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
        }
        return 0.5;
    }
}
