package org.hosewright.files.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Readings that are refused: one slip each, and the sentence that the person reads. */
class BadReadingsTest {
    private static final String GOOD = """
            reading,discharge,hose,length [ft],rise [ft],nozzle,setting,pump [psi],tip [psi],flow [gpm],mid [psi],mid at [ft],pump gauge,tip gauge,meter,lay,time,doubt,note
            1,crosslay-1,attack-175,150,0,seven-eighths,,72,40,152,,,gauge-a,gauge-b,meter-1,a,2026-05-12T19:40,,
            2,crosslay-1,attack-175,150,0,seven-eighths,,90,50,170,70,100,gauge-a,gauge-b,meter-1,a,19:52,yes,steady
            3,crosslay-1,7 x attack-175,,-4,seven-eighths,,110,40,153,,,gauge-a,gauge-b,meter-1,b,,no,
            4,crosslay-1,attack-175,350,-4,seven-eighths,shut,60,61,0,,,gauge-a,gauge-b,meter-1,,,,
            """;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/org/hosewright/files/bad-readings.csv",
            delimiter = '|',
            quoteCharacter = '`',
            ignoreLeadingAndTrailingWhitespace = false)
    void sentencesHold(String what, String replaced, String by, String says) {
        KitDocument kit = Examples.kit("drill-night.kit.yaml");
        assertThat(ReadingParser.parse(ReadingsFile.read(GOOD, "good"), kit.kit(), "good"))
                .hasSize(4);
        assertThat(GOOD).as(what).contains(replaced.replace("%n", "\n"));
        String bad = GOOD.replace(replaced.replace("%n", "\n"), by == null ? "" : by.replace("%n", "\n"));
        assertThatThrownBy(() -> ReadingParser.parse(ReadingsFile.read(bad, "night.csv"), kit.kit(), "night.csv"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(says);
    }
}
