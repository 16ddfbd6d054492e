package org.hosewright.evidence.trial;

import java.util.OptionalInt;
import org.hosewright.evidence.probability.Student;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** How many re-lays of each kind a trial needs.
 *
 * @param kinds how many kinds are compared, every one with every other
 * @param difference the difference that is to be found, in SI; above 0
 * @param scatter deviation between re-lays of one kind, in SI; above 0
 * @param power probability of finding it
 */
public record SampleSize(int kinds, double difference, double scatter, double power) {
    /** The usual power. @source J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, 1988, p. 56 */
    public static final double POWER = 0.8;

    /** More than anybody lays. */
    private static final int MOST = 10_000;

    public SampleSize {
        Numbers.requireWithin("kinds to compare", kinds, 2, 12, "");
        Numbers.requirePositive("difference to find", difference);
        Numbers.requirePositive("scatter between re-lays", scatter);
        if (!(power > 0.5 && power < 1)) {
            throw new InvalidInput("power", Numbers.plain(power), "between 0.5 and 1", "");
        }
    }

    /** Re-lays of each kind, two or more; empty where even ten thousand would not do.
     *
     * <p>The scatters are not taken to be alike, as in the verdict afterwards, so each kind must show its own.
     */
    public OptionalInt find() {
        return Least.find(2, MOST, relays -> reached(relays, relays - 1) >= power);
    }

    /** The same where all kinds are known to scatter alike: one or two fewer. */
    OptionalInt findForAlikeScatter() {
        return Least.find(2, MOST, relays -> reached(relays, 2 * (relays - 1)) >= power);
    }

    private double reached(int relays, int freedom) {
        Student student = new Student(freedom);
        double bound = student.quantile(1 - Family.of(kinds).level() / 2);
        double off = difference / scatter * Math.sqrt(relays / 2.0);
        return student.passes(bound, off) + student.passes(bound, -off);
    }
}
