package org.hosewright.ground.walk;

/** One step of the state (position, velocity, wandering): position' = position + c velocity, velocity' = a velocity,
 * wandering' = e wandering, each with new noise.
 *
 * @param c [s]
 * @param a [1]
 * @param e [1]
 * @param q00 new variance of the position [m2]
 * @param q01 covariance of the new parts of position and velocity [m2/s]
 * @param q11 new variance of the velocity [m2/s2]
 * @param q22 new variance of the wandering, in squares of the accuracy [1]
 */
record Transition(double c, double a, double e, double q00, double q01, double q11, double q22) {
    /** What a person who stands still moves in one step [m2]. */
    static final double STILL_m2 = 1e-4;

    /** The covariance one step on: P' = F P F^T + Q. */
    void predict(Sym3 p, Sym3 into) {
        into.p00 = p.p00 + 2 * c * p.p01 + c * c * p.p11 + q00;
        into.p01 = a * (p.p01 + c * p.p11) + q01;
        into.p02 = e * (p.p02 + c * p.p12);
        into.p11 = a * a * p.p11 + q11;
        into.p12 = a * e * p.p12;
        into.p22 = e * e * p.p22 + q22;
    }

    /** The smoother's gain G = P F^T (P')^-1, row by row. */
    void gain(Sym3 p, Sym3 inverse, double[] gain) {
        gain[0] = p.p00 + c * p.p01;
        gain[1] = a * p.p01;
        gain[2] = e * p.p02;
        gain[3] = p.p01 + c * p.p11;
        gain[4] = a * p.p11;
        gain[5] = e * p.p12;
        gain[6] = p.p02 + c * p.p12;
        gain[7] = a * p.p12;
        gain[8] = e * p.p22;
        for (int at = 0; at < gain.length; at += 3) {
            times(inverse, gain, at);
        }
    }

    /** A row of three times a matrix, in place. */
    private static void times(Sym3 m, double[] into, int at) {
        double x = into[at];
        double y = into[at + 1];
        double z = into[at + 2];
        into[at] = x * m.p00 + y * m.p01 + z * m.p02;
        into[at + 1] = x * m.p01 + y * m.p11 + z * m.p12;
        into[at + 2] = x * m.p02 + y * m.p12 + z * m.p22;
    }
}
