package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Kits that are refused: one slip each, and the sentence that the person reads. */
class BadKitsTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/org/hosewright/files/bad-kits.csv",
            delimiter = '|',
            quoteCharacter = '`',
            ignoreLeadingAndTrailingWhitespace = false)
    void sentencesHold(String what, String replaced, String by, String says) {
        assertThat(WholeKit.TEXT).as(what).contains(replaced);
        String bad = WholeKit.TEXT.replace(replaced, by == null ? "" : by.replace("%n", "\n"));
        assertThatThrownBy(() -> KitDocument.of(bad, "kit.yaml"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(says);
    }
}
