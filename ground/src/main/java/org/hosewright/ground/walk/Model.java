package org.hosewright.ground.walk;

import java.util.ArrayList;
import java.util.List;

/** How a person walks and how a receiver wanders, on each of two axes: the state is position, velocity and wandering.
 *
 * <p>The velocity is a Gauss-Markov process that forgets its direction within some time; so is the receiver's
 * wandering, whose size is the accuracy that the receiver states. A small part of that is new at every fix.
 *
 * @param speed_ms standard deviation of the velocity on one axis [m/s]; the root mean square speed is the square root
 *     of two times that
 * @param turn_s time after which a direction is forgotten [s]
 * @param wander_s time after which the receiver's error is forgotten [s]
 */
record Model(double speed_ms, double turn_s, double wander_s) {
    /** Share of a receiver's error that is new at every fix [1]; from common practice. */
    static final double WHITE = 0.1;

    /** Per axis, in parts of the radius that holds two positions in three. @source Rayleigh distribution, 68.3 % */
    static final double AXIS_OF_RADIUS = 1 / 1.5156;

    private static final double[] SPEEDS_ms = {0.5, 0.7, 0.9, 1.1};
    private static final double[] TURNS_s = {30};
    private static final double[] WANDERS_s = {25, 60, 150, 400};

    /** The models that a walk is weighed against: how long a receiver's error lasts is told by the track itself. */
    static List<Model> listAll() {
        List<Model> models = new ArrayList<>();
        for (double speed_ms : SPEEDS_ms) {
            for (double turn_s : TURNS_s) {
                for (double wander_s : WANDERS_s) {
                    models.add(new Model(speed_ms, turn_s, wander_s));
                }
            }
        }
        return models;
    }

    /** From one step to the next, walking or standing still.
     *
     * @param dt_s time between the two [s]
     */
    Transition over(double dt_s, boolean standing) {
        double e = Math.exp(-dt_s / wander_s);
        double q22 = 1 - e * e;
        double variance = speed_ms * speed_ms;
        if (standing) {
            return new Transition(0, 0, e, Transition.STILL_m2, 0, variance, q22);
        }
        double a = Math.exp(-dt_s / turn_s);
        double t = turn_s;
        double q00 = 2 * variance * t * (dt_s - 2 * t * (1 - a) + t / 2 * (1 - a * a));
        double q01 = variance * t * (1 - a) * (1 - a);
        return new Transition(t * (1 - a), a, e, q00, q01, variance * (1 - a * a), q22);
    }
}
