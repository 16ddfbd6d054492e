package org.hosewright.evidence.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.hipparchus.stat.inference.TTest;
import org.hosewright.evidence.probability.Student;
import org.junit.jupiter.api.Test;

/** The comparison of two kinds against published numbers and an independent library. */
class WelchTest {
    private static final long SEED = 20_261_125;

    /** Extra hours of sleep under two drugs. @source Student, The probable error of a mean, Biometrika 6, 1908, p. 20 */
    private static final List<Double> ONE = List.of(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0);

    private static final List<Double> OTHER = List.of(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4);

    private static final double AGREE = 1e-9;

    /** The numbers that R prints. @source R Core Team, R reference manual, t.test, example extra ~ group of data set sleep (from memory) */
    @Test
    void studentsSleepDataMatchesPublished() {
        Welch welch = Welch.of(standing("A", ONE), standing("B", OTHER), 0);
        assertThat(welch.difference() / welch.standardError()).isCloseTo(-1.8608, within(5e-5));
        assertThat(welch.freedom()).isCloseTo(17.776, within(5e-4));
        assertThat(welch.chance()).isCloseTo(0.07939, within(5e-6));
        double half = welch.standardError() * new Student(welch.freedom()).quantile(0.975);
        assertThat(welch.difference() - half).isCloseTo(-3.3654832, within(5e-8));
        assertThat(welch.difference() + half).isCloseTo(0.2054832, within(5e-8));
    }

    @Test
    void chanceOfRandomKindsAgrees() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            List<Double> one = draw(random, 2 + random.nextInt(8), 1);
            List<Double> other = draw(random, 2 + random.nextInt(8), 5 * random.nextDouble() + 0.1);
            double reference = new TTest().tTest(plain(one), plain(other));
            Welch welch = Welch.of(standing("A", one), standing("B", other), 0);
            if (welch.freedom() < 1e5) {
                assertThat(welch.chance()).isCloseTo(reference, within(AGREE));
            }
        }
    }

    /** Three kinds, every pair at the level that Sidak's inequality gives: the adjusted chance from a library's own Welch test. */
    @Test
    void adjustedChanceOfThreeKindsAgrees() {
        Random random = new Random(SEED);
        List<Double> a = draw(random, 5, 1);
        List<Double> b = draw(random, 6, 2);
        List<Double> c = draw(random, 4, 0.5);
        List<Relay> relays = new ArrayList<>();
        a.forEach(value -> relays.add(new Relay("A", List.of(value))));
        b.forEach(value -> relays.add(new Relay("B", List.of(value))));
        c.forEach(value -> relays.add(new Relay("C", List.of(value))));
        TrialResult result = TrialResult.of(Trials.stake(0), List.of("A", "B", "C"), relays);
        assertThat(result.pairs()).hasSize(3);
        for (Comparison pair : result.pairs()) {
            double p = new TTest().tTest(plain(of(relays, pair.first())), plain(of(relays, pair.second())));
            assertThat(pair.chance()).isCloseTo(1 - Math.pow(1 - p, 3), within(AGREE));
            assertThat(pair.low() > 0 && pair.chance() >= 0.05).isFalse();
        }
    }

    private static List<Double> of(List<Relay> relays, String label) {
        return relays.stream()
                .filter(relay -> relay.label().equals(label))
                .map(Relay::mean)
                .toList();
    }

    private static List<Double> draw(Random random, int count, double scatter) {
        return DoubleStream.generate(() -> 10 + scatter * random.nextGaussian())
                .limit(count)
                .boxed()
                .toList();
    }

    private static double[] plain(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Standing standing(String label, List<Double> values) {
        return Standing.of(
                label,
                values.stream().map(value -> new Relay(label, List.of(value))).toList());
    }
}
