package org.hosewright.acceptance.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every test says by its name what kind of proof it is, and none is skipped. */
final class TestNamesTest {
    /** A published source, common practice, a property, two ways, frozen output, a refusal; or a safety requirement. */
    private static final Pattern KIND =
            Pattern.compile("safety\\d\\d\\w*|\\w*(MatchesPublished|MatchesPractice|Holds?|Agrees?|Unchanged|Refused)");

    private static final Set<String> TESTS = Set.of("Test", "ParameterizedTest", "RepeatedTest", "TestFactory");

    private static final Pattern SKIPPED = Pattern.compile(
            "@Disabled|@Enabled(On|If|For)\\w*|\\bAssumptions?\\b|\\bassum(eTrue|eFalse|eThat|ingThat)\\(");

    @Test
    void testNamesTellTheirKindHolds() {
        var tests = Methods.listIn(Sources.listTests()).stream()
                .filter(method -> method.annotations().stream().anyMatch(TESTS::contains))
                .toList();
        assertThat(tests).isNotEmpty();
        assertThat(tests.stream().filter(test -> !KIND.matcher(test.name()).matches()))
                .as("tests whose name does not tell their kind")
                .isEmpty();
    }

    @Test
    void noTestSkippedHolds() {
        assertThat(Sources.listTests().stream()
                        .filter(file -> !file.endsWith("TestNamesTest.java"))
                        .filter(file -> SKIPPED.matcher(Sources.textOf(file)).find())
                        .map(Sources::nameOf))
                .as("tests that may be skipped")
                .isEmpty();
    }
}
