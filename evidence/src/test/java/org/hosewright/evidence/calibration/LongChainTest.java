package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.fit.LongChain;
import org.hosewright.evidence.fit.Point;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Priors;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Scatter;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The belief of a night, which is kept by mean and covariance, against a long chain over the same readings and priors, scatter included. */
@Tag("long")
class LongChainTest {
    private static final long SEED = 20_261_126;
    private static final int STEPS = 2_000_000;

    /** In the chain's own standard deviations: a tenth of an interval's half-width. A hose of little loss, flown once, comes near it. */
    private static final double MEAN_OFF = 0.2;

    /** Ends of the 95 % interval, in the chain's own standard deviations: an eighth of its half-width. */
    private static final double END_OFF = 0.25;

    /** The same for piping, which is cut off at 0: a mean and a deviation have no room for its lopsided shape. */
    private static final double CUT_END_OFF = 0.4;

    @Test
    void exampleNightAgrees() {
        Survey survey = Survey.of(ExampleNight.tapped(new Tap.Pitot()).night());
        double[][] kept = check(survey.joint().only(List.of(0, 1, 2, 3, 4, 5, 7, 8)));
        Known<Pressure> needed = Calibration.of(survey.night())
                .belief()
                .neededPump(ExampleNight.level(750), Pressure.ofPsi(50))
                .orElseThrow();
        compare(
                "needed at 750 ft [psi]",
                Arrays.stream(kept).mapToDouble(LongChainTest::needed_psi).toArray(),
                needed.value().psi(),
                needed.standardError().orElseThrow().psi());
    }

    @Test
    void nightOfTwoHosesAgrees() {
        List<Row> rows = new ArrayList<>(List.of(Ideal.attacks(new double[] {150, 350, 550}, 40, 50)));
        rows.add(Ideal.chain("7", 400, 150, 40));
        rows.add(Ideal.chain("8", 400, 150, 50));
        double[] off_psi = {1, -1, 0, 2, -1, 0, -2, 1};
        List<Row> read = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            read.add(rows.get(i).pump(rows.get(i).pump() + off_psi[i]));
        }
        check(Survey.of(Ideal.gear().rows(read.toArray(new Row[0])).night()).joint());
    }

    /** Nozzle, hose and piping as the readings meet them; the numbers of the priors stand in the other independent check. */
    private static double needed_psi(double[] u) {
        double hundred = Math.exp(0.015 * u[0]) * 29.7 * 0.875 * 0.875 * Math.sqrt(50) / 100;
        return 50 + (15.5 * Math.exp(0.35 * u[1]) * 7.5 + 6 * u[2]) * hundred * hundred;
    }

    private static double[][] check(Joint joint) {
        System.out.println("seed " + SEED);
        Fit fit = Fit.of(joint, joint.start());
        Posterior posterior = Posterior.of(fit);
        Point start = fit.minimum().point();
        List<Integer> piping = joint.unknowns().listOf(Role.PIPING);
        Scatter middle = fit.joint().scatter();
        LongChain chain = new LongChain(
                logs -> joint.with(scatter(middle, logs)).blocks(),
                3,
                (u, logs) -> piping.stream().anyMatch(place -> u[place] < 0)
                        ? Double.NEGATIVE_INFINITY
                        : beside(joint.with(scatter(middle, logs))),
                start,
                SEED);
        double[][] kept = chain.walk(STEPS);
        for (int i = 0; i < joint.unknowns().size(); i++) {
            int place = i;
            Unknown unknown = joint.unknowns().get(i);
            ToDoubleFunction<double[]> reported = at -> unknown.value(at[place]);
            Form form = Form.unknown(joint.unknowns(), posterior.cloud(), i);
            compare(
                    unknown.role() + " " + unknown.id(),
                    Arrays.stream(kept).mapToDouble(reported).toArray(),
                    form.value(),
                    form.deviation(posterior));
        }
        return kept;
    }

    private static Scatter scatter(Scatter middle, double[] logs) {
        return new Scatter(
                middle.pump() * Math.exp(logs[0]), middle.tip() * Math.exp(logs[1]), middle.flow() * Math.exp(logs[2]));
    }

    private static double beside(Joint joint) {
        Scatter scatter = joint.scatter();
        return prior(scatter.pump()) + prior(scatter.tip()) + prior(scatter.flow()) - joint.logDeviations();
    }

    /** The prior of a scatter by its logarithm: its square is scaled inverse chi-square. */
    private static double prior(double multiple) {
        return -Priors.SCATTER_WORTH * (Math.log(multiple) + 1 / (2 * multiple * multiple));
    }

    private static void compare(String what, double[] chain, double mean, double deviation) {
        double[] sorted = chain.clone();
        Arrays.sort(sorted);
        double middle = Arrays.stream(chain).average().orElseThrow();
        double spread = Math.sqrt(Arrays.stream(chain)
                .map(value -> (value - middle) * (value - middle))
                .average()
                .orElseThrow());
        double low = sorted[(int) (0.025 * sorted.length)];
        double high = sorted[(int) (0.975 * sorted.length)];
        double[] off = {
            (mean - middle) / spread,
            (mean - 1.96 * deviation - low) / spread,
            (mean + 1.96 * deviation - high) / spread
        };
        System.out.println(what + ": chain " + middle + " (" + low + " to " + high + "), off by " + Arrays.toString(off)
                + " deviations");
        assertThat(off[0]).as(what + ", mean").isCloseTo(0, within(MEAN_OFF));
        double room = what.startsWith(Role.PIPING.name()) ? CUT_END_OFF : END_OFF;
        assertThat(off[1]).as(what + ", low end").isCloseTo(0, within(room));
        assertThat(off[2]).as(what + ", high end").isCloseTo(0, within(room));
    }
}
