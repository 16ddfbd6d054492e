package org.hosewright.evidence.pool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A night whose hose losses differ from what earlier nights left, by more than the errors of both explain.
 *
 * <p>Three causes are weighed, each with its size free: the night (its instruments or its nozzle: all hoses are off alike), one
 * hose (changed, or another one), a drift over the years between. What is likeliest is named where it is five times as likely as
 * any other; otherwise the readings cannot tell.
 *
 * @param cause the likeliest
 * @param told whether it is favoured by enough to be named
 * @param also other causes that are not excluded
 * @param hose the hose that differs most
 */
public record Disagreement(Cause cause, boolean told, List<Cause> also, Seen hose) {
    /** What may be behind it, with how often one meets it and how large it may be: of the logarithm of the loss; judgement. */
    public enum Cause {
        NIGHT(0.05, 0.15),
        HOSE(0.05, 0.25),
        DRIFT(0.2, PoolPriors.DRIFT);

        private final double odds;
        private final double size;

        Cause(double odds, double size) {
            this.odds = odds;
            this.size = size;
        }
    }

    /** A hose that was measured before, and again.
     *
     * @param hose its id
     * @param change logarithm of the loss tonight over the loss held
     * @param deviation of that, from the errors of both
     * @param years from the earlier night to this one
     */
    public record Seen(String hose, double change, double deviation, double years) {
        /** With what the same hose differs from night to night anyway. */
        double variance() {
            return deviation * deviation + PoolPriors.NIGHTS * PoolPriors.NIGHTS;
        }
    }

    private static final double FAVOUR = Math.log(5);

    /** What the likelihood does not exclude. */
    private static final double NEAR = 2;

    public Disagreement {
        also = List.copyOf(also);
    }

    private record Heard(Cause cause, Seen hose, double odds, double likelihood) {}

    /** The disagreement of a night with what was known of its hoses; empty where there is none worth the name. */
    public static Optional<Disagreement> find(List<Seen> seen) {
        List<Heard> heard = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            heard.add(heard(Cause.HOSE, seen, i));
        }
        if (!seen.isEmpty()) {
            heard.add(heard(Cause.NIGHT, seen, -1));
            heard.add(heard(Cause.DRIFT, seen, -1));
        }
        return heard.stream()
                .max(Comparator.comparingDouble(Heard::odds))
                .filter(best -> best.odds > FAVOUR)
                .map(best -> among(best, heard, seen));
    }

    private static Disagreement among(Heard best, List<Heard> all, List<Seen> seen) {
        List<Heard> rivals =
                all.stream().filter(other -> other.cause != best.cause).toList();
        boolean told = rivals.stream().allMatch(other -> best.odds - other.odds > FAVOUR);
        List<Cause> also = rivals.stream()
                .filter(other -> other.likelihood > best.likelihood - NEAR)
                .map(Heard::cause)
                .distinct()
                .toList();
        Seen most = seen.stream()
                .max(Comparator.comparingDouble(one -> one.change * one.change / one.variance()))
                .orElseThrow();
        return new Disagreement(best.cause, told, also, best.cause == Cause.HOSE ? best.hose : most);
    }

    /** A cause against none: a shift of free size along its own direction. */
    private static Heard heard(Cause cause, List<Seen> seen, int only) {
        double along = 0;
        double squares = 0;
        for (int i = 0; i < seen.size(); i++) {
            Seen one = seen.get(i);
            double part = cause == Cause.DRIFT ? one.years : only < 0 || only == i ? 1 : 0;
            along += part * one.change / one.variance();
            squares += part * part / one.variance();
        }
        double free = 1 + cause.size * cause.size * squares;
        double likelihood = (cause.size * cause.size * along * along / free - Math.log(free)) / 2;
        double odds = Math.log(cause.odds) + likelihood - (only < 0 ? 0 : Math.log(seen.size()));
        return new Heard(cause, seen.get(Math.max(0, only)), odds, likelihood);
    }
}
