package org.hosewright.documents.press;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypesettingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7/8 in | ⅞ in",
                "15/16 in | ¹⁵⁄₁₆ in",
                "1 3/4 in attack-175 | 1\u202F¾ in attack-175",
                "psi / 100 ft | psi / 100 ft",
                "2026-05-12 | 2026-05-12",
                "450 L/min | 450 L/min",
                "-4.5 psi | −4.5 psi",
                "gauge-1 -0.9 | gauge-1 −0.9",
                "7c1f-09ae | 7c1f-09ae",
                "page 1/2/3 | page 1/2/3"
            })
    void fractionsAndMinusMatchesPractice(String plain, String set) {
        assertThat(Typesetting.set(plain)).isEqualTo(set);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "needed 234 psi ± 9 at 750 ft | needed 234~psi ± 9 at 750~ft",
                "1 3/4 in hose | 1\u202F¾~in hose",
                "450 L/min each | 450~L/min each",
                "12 mixed | 12 mixed"
            })
    void numberAndUnitTogetherHold(String plain, String set) {
        assertThat(Typesetting.markup(plain)).isEqualTo(set.replace('~', '\u00A0'));
    }

    @ParameterizedTest
    @CsvSource({"<b>, &lt;b&gt;", "a & b, a &amp; b"})
    void wordsNeverMarkupHolds(String plain, String set) {
        assertThat(Typesetting.markup(plain)).isEqualTo(set);
    }

    @ParameterizedTest
    @CsvSource({"¹⁵⁄₁₆ ⅞ − ± × √ ² ³ · ≈ ≤", "ÄÖÜ éàç ß ñ ø"})
    void charactersInTheTypefaceHold(String words) {
        assertThat(Typeface.REGULAR.canSet(words)).isTrue();
        assertThat(Typeface.BOLD.canSet(words)).isTrue();
    }
}
