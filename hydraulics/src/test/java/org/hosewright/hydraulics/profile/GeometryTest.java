package org.hosewright.hydraulics.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

final class GeometryTest {
    private static final long SEED = 314159;
    private static final int CASES = 2_000;

    /** Relative; rounding only. */
    private static final double ROUNDING = 1e-9;

    @Test
    void ticksAreRoundAndFewHold() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            double low = -50 * random.nextDouble();
            double high = low + Math.pow(10, 4 * random.nextDouble() - 1);
            int most = 1 + random.nextInt(12);
            Ticks ticks = Ticks.of(low, high, most);
            double power = Math.pow(10, Math.floor(Math.log10(ticks.step() * (1 + ROUNDING))));
            assertThat(ticks.step() / power)
                    .as("seed %d", SEED)
                    .satisfiesAnyOf(
                            lead -> assertThat(lead).isCloseTo(1, within(ROUNDING)),
                            lead -> assertThat(lead).isCloseTo(2, within(ROUNDING)),
                            lead -> assertThat(lead).isCloseTo(5, within(ROUNDING)));
            assertThat(ticks.values().size()).as("seed %d", SEED).isLessThanOrEqualTo(most + 1);
            for (double value : ticks.values()) {
                assertThat(value).isBetween(low - ROUNDING * high, high + ROUNDING * Math.abs(high));
            }
        }
    }

    @Test
    void aLineThroughABoxAndSteppingAlongItAgree() {
        Random random = new Random(SEED);
        Box box = new Box(2, 3, 4, 2);
        for (int i = 0; i < CASES; i++) {
            Point from = new Point(10 * random.nextDouble(), 10 * random.nextDouble());
            Point to = new Point(10 * random.nextDouble(), 10 * random.nextDouble());
            boolean stepped = false;
            for (int step = 0; step <= 2_000; step++) {
                double x = from.x() + (to.x() - from.x()) * step / 2_000;
                double y = from.y() + (to.y() - from.y()) * step / 2_000;
                stepped |= x >= 2 && x <= 6 && y >= 3 && y <= 5;
            }
            boolean cutsACornerByLessThanAStep = box.meets(from, to) && !stepped;
            if (!cutsACornerByLessThanAStep) {
                assertThat(box.meets(from, to)).as("seed %d case %d", SEED, i).isEqualTo(stepped);
            }
        }
    }

    @Test
    void placesReadBackToLengthsAndPressuresHold() {
        Plot plot = new Plot(40, 640, 20, 220, Length.ofFeet(550), Pressure.ofPsi(-10), Pressure.ofPsi(250));
        for (int feet = 0; feet <= 550; feet += 10) {
            assertThat(plot.lengthAt(plot.x(Length.ofFeet(feet))).feet()).isCloseTo(feet, within(1e-9));
        }
        for (int psi = -10; psi <= 250; psi += 10) {
            assertThat(plot.pressureAt(plot.y(Pressure.ofPsi(psi))).psi()).isCloseTo(psi, within(1e-9));
        }
        assertThat(plot.x(Length.ofFeet(275))).isCloseTo(340, within(1e-9));
    }
}
