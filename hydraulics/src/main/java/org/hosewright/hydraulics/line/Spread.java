package org.hosewright.hydraulics.line;

/** How the errors of a line's resistance R and of its nozzle's flow factor f lie: their covariance.
 *
 * @param resistance variance of R [(Pa s2/m6)^2]
 * @param factor variance of f [1]
 * @param joint covariance of the two [Pa s2/m6]
 */
public record Spread(double resistance, double factor, double joint) {

    /** Standard error of a result with these derivatives.
     *
     * @param perResistance derivative with respect to R
     * @param perFactor derivative with respect to f
     */
    public double standardError(double perResistance, double perFactor) {
        double variance = perResistance * perResistance * resistance
                + 2 * perResistance * perFactor * joint
                + perFactor * perFactor * factor;
        return Math.sqrt(Math.max(0, variance));
    }

    /** The likeliest pair of errors that moves a result by so many of its standard errors.
     *
     * @param errors count of standard errors, with the sign of the result's move
     */
    Shift towards(double perResistance, double perFactor, double errors) {
        double error = standardError(perResistance, perFactor);
        if (error == 0) {
            return new Shift(0, 0);
        }
        double ofResistance = perResistance * resistance + perFactor * joint;
        double ofFactor = perResistance * joint + perFactor * factor;
        return new Shift(errors * ofResistance / error, errors * ofFactor / error);
    }

    /** Errors of R [Pa s2/m6] and f [1]. */
    record Shift(double resistance, double factor) {}
}
