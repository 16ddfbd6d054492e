package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.Powers;
import org.junit.jupiter.api.Test;

/** Powers by table against the machine's own. */
class PowersTest {
    /** Three roundings of a power, its own and the machine's [1]. */
    private static final double ROUNDINGS = 8e-16;

    private static final long SEED = 1852L;
    private static final int NUMBERS = 200_000;

    @Test
    void powersAgree() {
        for (double n : new double[] {Power.HAZEN_WILLIAMS, 1 / Power.HAZEN_WILLIAMS, 1, 2, 2.5, 4}) {
            Powers powers = new Powers(n);
            Random random = new Random(SEED);
            for (int i = 0; i < NUMBERS; i++) {
                double x = Math.pow(2, 110 * (random.nextDouble() - 0.7)) * (1 + random.nextDouble());
                double expected = Math.pow(x, n);
                assertThat(powers.of(x))
                        .as("%s to the %s, seed %s", x, n, SEED)
                        .isEqualTo(expected, within(ROUNDINGS * expected));
            }
        }
    }

    @Test
    void powersBeyondTheTableAgree() {
        Powers powers = new Powers(Power.HAZEN_WILLIAMS);
        for (double x : new double[] {0, Double.MIN_VALUE, 1e-60, 1e-300, 1e20, 1e100, Double.POSITIVE_INFINITY}) {
            assertThat(powers.of(x)).isEqualTo(Math.pow(x, Power.HAZEN_WILLIAMS));
        }
        assertThat(powers.of(1)).isEqualTo(1, within(ROUNDINGS));
        assertThat(powers.of(Math.nextDown(2.0))).isEqualTo(Math.pow(2, Power.HAZEN_WILLIAMS), within(4 * ROUNDINGS));
        assertThat(powers.of(Double.NaN)).isNaN();
    }
}
