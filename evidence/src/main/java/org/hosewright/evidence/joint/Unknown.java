package org.hosewright.evidence.joint;

import org.hosewright.hydraulics.quantity.Numbers;

/** One unknown of a night, held as the count u of prior standard deviations from its prior centre.
 *
 * @param role what it stands for
 * @param id of the hose, discharge, nozzle (with its setting), meter or gauge
 * @param centre prior centre in SI; above 0 where the role is logarithmic
 * @param deviation prior standard deviation: of the logarithm where the role is logarithmic, else in SI; above 0
 */
public record Unknown(Role role, String id, double centre, double deviation) {
    public Unknown {
        Numbers.requireFinite("prior centre of " + id, centre);
        Numbers.requirePositive("prior deviation of " + id, deviation);
    }

    /** The value in SI. */
    public double value(double u) {
        return role.isLogarithmic() ? centre * Math.exp(deviation * u) : centre + deviation * u;
    }

    /** The derivative of the value by u. */
    public double slope(double u) {
        return role.isLogarithmic() ? deviation * value(u) : deviation;
    }

    /** The logarithm of the value; its derivative by u is the deviation. Only for logarithmic roles and faults of factors. */
    public double logarithm(double u) {
        return role.isLogarithmic() ? Math.log(centre) + deviation * u : centre + deviation * u;
    }
}
