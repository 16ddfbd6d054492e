package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hosewright.evidence.fit.LevenbergMarquardt;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Cloud;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Line;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Says;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknowns;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The advice which reading to take next: the one that narrows most what will be decided, and that the line can bear.
 *
 * <p>Decided are the pump pressure needed at the longest stretch flown, the flow that it delivers, and each loss that the night
 * cannot tell yet.
 */
final class Advice {
    /** Tip pressures tried, as shares of what the tip is meant for. */
    private static final double[] SHARES = {0.8, 1, 1.2};

    /** Below this share of variance, a reading changes nothing that one decides. */
    private static final double WORTH = 0.1;

    /** With fewer readings in use a bad one could hide among them, however well they agree. */
    private static final int ENOUGH = 6;

    /** So many readings more are looked ahead. */
    private static final int MORE = 2;

    private final Survey survey;
    private final Posterior posterior;
    private final Unknowns unknowns;
    private final Reading longest;
    private final Line line;
    private final double section_m;

    private Advice(Survey survey, Posterior posterior, int place) {
        this.survey = survey;
        this.posterior = posterior;
        this.unknowns = survey.joint().unknowns();
        this.longest = survey.night().readings().get(place);
        this.line = survey.joint().lines().get(place);
        this.section_m = lastHose().section().metres();
    }

    /** The advice after a night; absent where no reading would change what one decides. */
    static Optional<NextReading> find(Survey survey, Posterior posterior, List<Integer> active) {
        return findLongest(survey, active).flatMap(i -> new Advice(survey, posterior, i).best(active));
    }

    /** That two more readings of any kind would change nothing that one decides; absent while they would. */
    static Optional<String> findStop(Survey survey, Posterior posterior, List<Integer> active) {
        return findLongest(survey, active).flatMap(i -> new Advice(survey, posterior, i).stop(active));
    }

    private static Optional<Integer> findLongest(Survey survey, List<Integer> active) {
        return active.stream()
                .filter(i -> !survey.night().readings().get(i).laid().shut())
                .filter(i -> !survey.isBlind(survey.night().readings().get(i)))
                .max(Comparator.<Integer>comparingDouble(i ->
                                survey.night().readings().get(i).laid().length().metres())
                        .thenComparing(Comparator.reverseOrder()));
    }

    private Optional<String> stop(List<Integer> active) {
        List<Form> decided = decided();
        if (!untold().isEmpty() || decided.size() < 2 || active.size() < ENOUGH) {
            return Optional.empty();
        }
        List<Line> more = List.of();
        for (int i = 0; i < MORE; i++) {
            more = withBest(more, decided, active);
        }
        double[][] covariance = covariance(more);
        double pump_Pa = shift(decided.get(0), covariance);
        double flow_m3s = shift(decided.get(1), covariance);
        Says says = new Says(survey.night().units());
        Steps steps = Steps.of(survey.night().units());
        boolean nothing =
                pump_Pa < steps.pump().pascals() && flow_m3s < steps.flow().cubicMetresPerSecond();
        String text = "two more readings change nothing you decide: the pump pressure needed at "
                + says.text(longest.laid().length()) + " would move by about " + says.pressure(pump_Pa)
                + ", where orders go in steps of " + says.text(steps.pump()) + ", and the flow by about "
                + says.flow(flow_m3s);
        return nothing ? Optional.of(text) : Optional.empty();
    }

    /** By how much more readings would move an answer, one standard deviation. */
    private double shift(Form form, double[][] covariance) {
        return Math.sqrt(Math.max(0, form.variance(posterior.readingsAlone()) - form.variance(covariance)));
    }

    private List<Line> withBest(List<Line> begun, List<Form> decided, List<Integer> active) {
        List<Line> best = begun;
        double most = Double.NEGATIVE_INFINITY;
        for (double length_m : lengths(active)) {
            for (double share : SHARES) {
                double tip_Pa = share * survey.tip(longest).at().pascals();
                if (isBearable(length_m, tip_Pa, active)) {
                    List<Line> more = new ArrayList<>(begun);
                    more.add(candidate(length_m, tip_Pa));
                    double gain = gain(decided, more);
                    best = gain > most ? more : best;
                    most = Math.max(most, gain);
                }
            }
        }
        return best;
    }

    private Hose lastHose() {
        List<Stretch> chain = longest.laid().hose();
        return survey.hose(chain.get(chain.size() - 1).hose());
    }

    private Optional<NextReading> best(List<Integer> active) {
        List<Form> decided = decided();
        double bestGain = WORTH;
        double bestLength_m = 0;
        double bestTip_Pa = 0;
        for (double length_m : lengths(active)) {
            for (double share : SHARES) {
                double tip_Pa = share * survey.tip(longest).at().pascals();
                double gain =
                        isBearable(length_m, tip_Pa, active) ? gain(decided, List.of(candidate(length_m, tip_Pa))) : 0;
                if (gain > bestGain * (1 + 1e-6)) {
                    bestGain = gain;
                    bestLength_m = length_m;
                    bestTip_Pa = tip_Pa;
                }
            }
        }
        return bestGain > WORTH ? Optional.of(said(bestLength_m, bestTip_Pa)) : Optional.empty();
    }

    private NextReading said(double length_m, double tip_Pa) {
        Says says = new Says(survey.night().units());
        String text = "lay " + says.length(length_m) + share(length_m, says) + " and hold " + says.pressure(tip_Pa)
                + " at the tip: of all readings in reach it tells most about "
                + (untold().isEmpty() ? "the pump pressure at the longest stretch" : "what the night cannot tell yet");
        return new NextReading(new Length(length_m), new Pressure(tip_Pa), text);
    }

    private double[] here() {
        return posterior.readingsAlone().mean();
    }

    private String share(double length_m, Says says) {
        List<Stretch> chain = longest.laid().hose();
        Stretch last = chain.get(chain.size() - 1);
        double last_m =
                last.length().metres() + length_m - longest.laid().length().metres();
        return chain.size() == 1 ? "" : " in all, " + says.length(last_m) + " of it " + last.hose() + ",";
    }

    private List<Integer> untold() {
        List<Integer> untold = new ArrayList<>(unknowns.listOf(Role.HOSE));
        untold.addAll(unknowns.listOf(Role.PIPING));
        untold.removeIf(
                place -> Form.unknown(unknowns, posterior.cloud(), place).isTold(posterior, unknowns));
        return untold;
    }

    private List<Form> decided() {
        List<Form> decided = new ArrayList<>();
        Laid laid = longest.laid();
        Course course = new Course(
                laid.hose(), laid.discharge(), laid.rise().orElse(new Length(0)), laid.nozzle(), laid.setting());
        boolean piping = unknowns.find(Role.PIPING, laid.discharge()).isPresent();
        CourseForms.findAt(survey, here(), course, piping).ifPresent(forms -> {
            Form needed = forms.needed(survey.tip(longest).at().pascals());
            decided.add(needed);
            forms.flow(needed.value()).ifPresent(decided::add);
        });
        untold().forEach(place -> decided.add(Form.unknown(unknowns, posterior.cloud(), place)));
        return decided;
    }

    /** Lengths flown, one between the shortest and nothing, and two sections beyond the longest. */
    private Set<Double> lengths(List<Integer> active) {
        Set<Double> lengths = new TreeSet<>();
        for (int place : active) {
            Laid laid = survey.night().readings().get(place).laid();
            if (laid.hose().size() == longest.laid().hose().size() && !laid.shut()) {
                lengths.add(laid.length().metres());
            }
        }
        double full_m = longest.laid().length().metres();
        double last_m = longest.laid()
                .hose()
                .get(longest.laid().hose().size() - 1)
                .length()
                .metres();
        lengths.add(full_m - section_m * Math.floor(last_m / 2 / section_m));
        lengths.add(full_m + 2 * section_m);
        return lengths;
    }

    /** True where the pump pressure stays within what the night has seen, and within the hose's limit. */
    private boolean isBearable(double length_m, double tip_Pa, List<Integer> active) {
        double most_Pa = 0;
        for (int place : active) {
            most_Pa = Math.max(
                    most_Pa, survey.night().readings().get(place).shown().pump().pascals());
        }
        for (Stretch part : longest.laid().hose()) {
            Hose hose = survey.hose(part.hose());
            most_Pa = Math.min(most_Pa, hose.limit().map(Pressure::pascals).orElse(most_Pa));
        }
        Line candidate = candidate(length_m, tip_Pa);
        double[] latents = {candidate.start().get(0)};
        double[] form = new double[1 + unknowns.size()];
        double pump_Pa = candidate.shows(Channel.PUMP, unknowns, here(), latents, form);
        return pump_Pa <= most_Pa;
    }

    private Line candidate(double length_m, double tip_Pa) {
        List<Stretch> chain = longest.laid().hose();
        int hose = unknowns.find(Role.HOSE, chain.get(chain.size() - 1).hose()).orElseThrow();
        return line.longer(hose, length_m - longest.laid().length().metres()).from(Math.log(tip_Pa));
    }

    private double gain(List<Form> decided, List<Line> more) {
        double[][] covariance = covariance(more);
        Cloud now = posterior.readingsAlone();
        double gain = 0;
        for (Form form : decided) {
            gain += 1 - form.variance(covariance) / form.variance(now);
        }
        return gain;
    }

    /** The covariance of the unknowns with more readings. */
    private double[][] covariance(List<Line> more) {
        Joint joint = posterior.fit().joint().doubtingLines();
        List<Line> lines = new ArrayList<>(joint.lines());
        lines.addAll(more);
        Joint with = joint.with(lines);
        return LevenbergMarquardt.at(with.blocks(), with.start(here()))
                .information()
                .covariance();
    }
}
