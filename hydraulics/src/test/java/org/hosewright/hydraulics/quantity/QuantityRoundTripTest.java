package org.hosewright.hydraulics.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class QuantityRoundTripTest {
    private static final int CASES = 5_000;
    private static final long SEED = 16180339;

    /** Relative; a handful of roundings of a double. */
    private static final double US_TO_SI = 1e-12;

    /** [K]; the last bit near 300 K is 5.7e-14. */
    private static final double LAST_BIT_K = 1e-13;

    @ParameterizedTest
    @EnumSource(Unit.class)
    void whatIsWrittenReadsBackExactlyHolds(Unit unit) {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            Quantity value = random(random, unit.kind());
            String text = QuantityShown.us().file(value, unit);
            double off = unit.kind() == Kind.TEMPERATURE ? LAST_BIT_K : 0;
            assertThat(QuantityText.parse(unit.kind(), text).si())
                    .as("seed %d case %d: %s", SEED, i, text)
                    .isCloseTo(value.si(), within(off));
        }
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void aShortNumberIsWrittenShortHolds(Unit unit) {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            int tenths = random.nextInt(900);
            String text = Numbers.plain(tenths / 10.0) + " " + unit.symbol();
            Quantity value = QuantityText.parse(unit.kind(), text);
            String again = QuantityShown.us().file(value, unit);
            boolean fraction = unit == Unit.IN && again.contains("/");
            assertThat(fraction ? text : again).as("seed %d case %d", SEED, i).isEqualTo(text);
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void lossesReadBackExactlyHolds(UnitSystem system) {
        Random random = new Random(SEED);
        QuantityShown shown = QuantityShown.of(system);
        for (int i = 0; i < CASES; i++) {
            Known<HoseLoss> hose =
                    Known.of(HoseLoss.ofUs(20 * random.nextDouble()), HoseLoss.ofUs(random.nextDouble()));
            assertThat(QuantityText.hoseLoss(shown.fileText(hose)))
                    .as("seed %d", SEED)
                    .isEqualTo(hose);
            Known<PointLoss> point = Known.of(PointLoss.ofUs(9 * random.nextDouble()));
            assertThat(QuantityText.pointLoss(shown.fileText(point)))
                    .as("seed %d", SEED)
                    .isEqualTo(point);
        }
    }

    @Test
    void bothSystemsSayTheSameHolds() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            for (Kind kind : List.of(Kind.PRESSURE, Kind.FLOW, Kind.LENGTH, Kind.FORCE, Kind.VOLUME)) {
                Quantity value = random(random, kind);
                Unit us = UnitSystem.US.unit(value);
                Unit si = UnitSystem.SI.unit(value);
                double back = us.toSi(us.ofSi(si.toSi(si.ofSi(value.si()))));
                assertThat(back).as("seed %d", SEED).isCloseTo(value.si(), within(US_TO_SI * Math.abs(value.si())));
            }
            double c = 20 * random.nextDouble();
            assertThat(HoseLoss.ofSi(HoseLoss.ofUs(c).metric()).us()).isCloseTo(c, within(US_TO_SI * c));
            assertThat(PointLoss.ofSi(PointLoss.ofUs(c).metric()).us()).isCloseTo(c, within(US_TO_SI * c));
        }
    }

    private static Quantity random(Random random, Kind kind) {
        double share = random.nextDouble();
        return switch (kind) {
            case PRESSURE -> Pressure.ofPsi(400 * share - 10);
            case FLOW -> Flow.ofGpm(2000 * share);
            case LENGTH -> Length.ofFeet(3000 * share - 500);
            case FORCE -> kind.ofSi(2000 * share);
            case VOLUME -> Volume.ofGallons(5000 * share);
            case TIME -> kind.ofSi(600 * share);
            case TEMPERATURE -> kind.ofSi(270 + 40 * share);
            case RATIO -> kind.ofSi(2 * share);
        };
    }
}
