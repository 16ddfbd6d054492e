package org.hosewright.hydraulics.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of the trade, each with who printed it; those from memory stand apart. */
final class ListATest {
    /** As a share of the answer; rounding of a unit conversion, where the printed answer is exact. */
    private static final double ROUNDING = 1e-12;

    static Stream<Example> published() {
        return Example.listAll().stream().filter(example -> !example.fromMemory());
    }

    static Stream<Example> fromMemory() {
        return Example.listAll().stream().filter(Example::fromMemory);
    }

    @ParameterizedTest
    @MethodSource("published")
    void everyExampleMatchesPublished(Example example) {
        assertMatches(example);
    }

    @ParameterizedTest
    @MethodSource("fromMemory")
    void everyExampleMatchesPractice(Example example) {
        assertMatches(example);
    }

    @Test
    void noExampleIsMissingHolds() {
        TreeSet<String> ids = new TreeSet<>();
        Example.listAll().forEach(example -> ids.add(example.id()));
        assertThat(ids)
                .contains(IntStream.rangeClosed(1, 52)
                        .mapToObj(i -> i < 10 ? "A0" + i : "A" + i)
                        .toArray(String[]::new));
        assertThat(ids).contains("AM1", "AM2", "AM3", "AM4");
        assertThat(Example.listAll())
                .allSatisfy(example -> assertThat(example.source()).isNotBlank());
    }

    private static void assertMatches(Example example) {
        Object answer = Rules.work(example);
        if (answer instanceof String text) {
            assertThat(text).as(example.source()).isEqualTo(example.answer());
        } else {
            double printed = Double.parseDouble(example.answer());
            double tolerance = example.tolerance() + ROUNDING * printed;
            assertThat((Double) answer).as(example.source()).isCloseTo(printed, within(tolerance));
        }
    }
}
