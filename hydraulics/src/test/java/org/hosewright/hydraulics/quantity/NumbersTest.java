package org.hosewright.hydraulics.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class NumbersTest {
    private static final int CASES = 100_000;
    private static final long SEED = 20260512;

    @Test
    void fixedAndDecimalArithmeticOnNumbersAsWrittenAgree() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            int decimals = random.nextInt(7);
            int scale = random.nextInt(8);
            BigDecimal written = BigDecimal.valueOf(random.nextInt(2_000_001) - 1_000_000L, scale);
            String expected = zero(written.setScale(decimals, RoundingMode.HALF_UP));
            assertThat(Numbers.fixed(written.doubleValue(), decimals))
                    .as("seed %d case %d: %s to %d", SEED, i, written, decimals)
                    .isEqualTo(expected);
        }
    }

    @Test
    void fixedWithinHalfAUnitForAnyDoubleHolds() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            int decimals = random.nextInt(7);
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8));
            BigDecimal off = new BigDecimal(Numbers.fixed(value, decimals))
                    .subtract(new BigDecimal(value))
                    .abs();
            BigDecimal half = BigDecimal.valueOf(5, decimals + 1);
            BigDecimal slack = new BigDecimal(Math.abs(value)).multiply(new BigDecimal("2e-15"));
            assertThat(off).as("seed %d case %d: %s", SEED, i, value).isLessThanOrEqualTo(half.add(slack));
        }
    }

    @Test
    void toNearestAndDecimalArithmeticAgree() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            BigDecimal written = BigDecimal.valueOf(random.nextInt(200_001) - 100_000L, 1);
            BigDecimal expected = written.divide(BigDecimal.valueOf(5), 0, RoundingMode.HALF_UP)
                    .multiply(BigDecimal.valueOf(5));
            assertThat(Numbers.toNearest(written.doubleValue(), 5)).isEqualTo(expected.doubleValue() + 0.0);
        }
    }

    private static String zero(BigDecimal rounded) {
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }
}
