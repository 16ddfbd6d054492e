package org.hosewright.evidence.calibration;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Says;
import org.hosewright.evidence.joint.Scatter;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Shown;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;

/** Pairs of readings that contradict each other by themselves: what one line loses fixes how its flows compare, whatever the
 * hose and whatever the tip.
 */
final class Pairs {
    /** So many combined standard deviations apart, both cannot have been steady. */
    private static final double SURELY = 4;

    private final Map<Integer, Pair> found = new LinkedHashMap<>();
    private final Survey survey;
    private final Scatter scatter;
    private final Says says;

    private Pairs(Survey survey, Scatter scatter) {
        this.scatter = scatter;
        this.survey = survey;
        this.says = new Says(survey.night().units());
    }

    static Pairs of(Survey survey, Scatter scatter) {
        Pairs pairs = new Pairs(survey, scatter);
        int count = survey.night().readings().size();
        for (int first = 0; first < count; first++) {
            for (int second = first + 1; second < count; second++) {
                pairs.compare(first, second);
            }
        }
        return pairs;
    }

    /** The first pair that a reading stands in. */
    Optional<Pair> find(int place) {
        return Optional.ofNullable(found.get(place));
    }

    /** The pair that a reading stands in, where the night has that one alone. */
    Optional<Pair> findLone(int place) {
        boolean lone = found.values().stream().distinct().count() == 1;
        return lone ? find(place) : Optional.empty();
    }

    /** Two readings that contradict each other.
     *
     * @param first place of the one
     * @param second place of the other
     * @param says the sentence about both
     */
    record Pair(int first, int second, String says) {
        int other(int place) {
            return place == first ? second : first;
        }
    }

    private void compare(int first, int second) {
        Reading one = reading(first);
        Reading other = reading(second);
        if (!sameLine(one, other)) {
            return;
        }
        Loss a = Loss.of(survey, first, scatter);
        Loss b = Loss.of(survey, second, scatter);
        double byLoss = Math.log(a.loss_Pa / b.loss_Pa) / 2;
        double byMeter = Math.log(a.flow_m3s / b.flow_m3s);
        double deviation = Math.sqrt(a.variance + b.variance);
        if (Math.abs(byLoss - byMeter) > SURELY * deviation) {
            say(first, second, a, b);
        }
    }

    private void say(int first, int second, Loss a, Loss b) {
        String text = "readings " + reading(first).id() + " and "
                + reading(second).id() + " contradict each other: one line that"
                + " loses " + says.pressure(a.loss_Pa) + " and then " + says.pressure(b.loss_Pa) + " cannot pass "
                + says.flow(a.flow_m3s) + " and then " + says.flow(b.flow_m3s) + "; both cannot be steady";
        found.putIfAbsent(first, new Pair(first, second, text));
        found.putIfAbsent(second, new Pair(first, second, text));
    }

    private Reading reading(int place) {
        return survey.night().readings().get(place);
    }

    private static boolean sameLine(Reading one, Reading other) {
        Laid a = one.laid();
        Laid b = other.laid();
        return isWhole(one)
                && isWhole(other)
                && a.discharge().equals(b.discharge())
                && a.hose().equals(b.hose())
                && a.rise().equals(b.rise())
                && one.with().equals(other.with());
    }

    private static boolean isWhole(Reading reading) {
        Shown shown = reading.shown();
        return !reading.laid().shut() && shown.tip().isPresent() && shown.flow().isPresent();
    }

    /** What a line lost at what flow, by one reading's own needles, and the variance of the flow's logarithm from both. */
    private record Loss(double loss_Pa, double flow_m3s, double variance) {
        static Loss of(Survey survey, int place, Scatter scatter) {
            Reading reading = survey.night().readings().get(place);
            double head_Pa = Constants.WATER_PA_PER_M
                    * reading.laid().rise().map(Length::metres).orElse(0.0);
            List<Double> start = survey.joint().lines().get(place).start();
            double loss_Pa =
                    Math.max(Constants.PSI_PA, reading.shown().pump().pascals() - Math.exp(start.get(0)) - head_Pa);
            double pump = deviation(survey, place, Channel.PUMP, scatter) / (2 * loss_Pa);
            double tip = deviation(survey, place, Channel.TIP, scatter) / (2 * loss_Pa);
            double meter = deviation(survey, place, Channel.FLOW, scatter);
            double flow_m3s = reading.shown().flow().orElseThrow().cubicMetresPerSecond();
            return new Loss(loss_Pa, flow_m3s, pump * pump + tip * tip + meter * meter);
        }

        private static double deviation(Survey survey, int place, Channel channel, Scatter scatter) {
            return survey.joint().lines().get(place).deviation(channel) * Math.max(1, scatter.of(channel));
        }
    }
}
