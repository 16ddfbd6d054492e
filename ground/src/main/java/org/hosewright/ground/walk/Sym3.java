package org.hosewright.ground.walk;

/** A symmetric matrix of three rows, written over in place where a walk is worked through. */
final class Sym3 {
    double p00;
    double p01;
    double p02;
    double p11;
    double p12;
    double p22;

    static final int SIZE = 6;

    Sym3() {}

    void load(double[] from, int at) {
        p00 = from[at];
        p01 = from[at + 1];
        p02 = from[at + 2];
        p11 = from[at + 3];
        p12 = from[at + 4];
        p22 = from[at + 5];
    }

    void store(double[] into, int at) {
        into[at] = p00;
        into[at + 1] = p01;
        into[at + 2] = p02;
        into[at + 3] = p11;
        into[at + 4] = p12;
        into[at + 5] = p22;
    }

    /** Makes this the inverse of a positive definite matrix, by its cofactors. */
    void invert(Sym3 m) {
        double c00 = m.p11 * m.p22 - m.p12 * m.p12;
        double c01 = m.p02 * m.p12 - m.p01 * m.p22;
        double c02 = m.p01 * m.p12 - m.p02 * m.p11;
        double one = 1 / (m.p00 * c00 + m.p01 * c01 + m.p02 * c02);
        p00 = c00 * one;
        p01 = c01 * one;
        p02 = c02 * one;
        p11 = (m.p00 * m.p22 - m.p02 * m.p02) * one;
        p12 = (m.p01 * m.p02 - m.p00 * m.p12) * one;
        p22 = (m.p00 * m.p11 - m.p01 * m.p01) * one;
    }

    /** Makes this P - G P' G^T, what is left unknown of a state when the next one is known. */
    void leftAfter(Sym3 p, Sym3 next, double[] g) {
        p00 = p.p00 - next.form(g, 0, 0);
        p01 = p.p01 - next.form(g, 0, 3);
        p02 = p.p02 - next.form(g, 0, 6);
        p11 = p.p11 - next.form(g, 3, 3);
        p12 = p.p12 - next.form(g, 3, 6);
        p22 = p.p22 - next.form(g, 6, 6);
    }

    private double form(double[] g, int i, int j) {
        double x = p00 * g[j] + p01 * g[j + 1] + p02 * g[j + 2];
        double y = p01 * g[j] + p11 * g[j + 1] + p12 * g[j + 2];
        double z = p02 * g[j] + p12 * g[j + 1] + p22 * g[j + 2];
        return g[i] * x + g[i + 1] * y + g[i + 2] * z;
    }

    /** Makes this its own lower Cholesky factor; what rounding has made negative counts as nothing. */
    void root() {
        p00 = Math.sqrt(Math.max(p00, 0));
        p01 = p00 > 0 ? p01 / p00 : 0;
        p02 = p00 > 0 ? p02 / p00 : 0;
        p11 = Math.sqrt(Math.max(p11 - p01 * p01, 0));
        p12 = p11 > 0 ? (p12 - p01 * p02) / p11 : 0;
        p22 = Math.sqrt(Math.max(p22 - p02 * p02 - p12 * p12, 0));
    }
}
