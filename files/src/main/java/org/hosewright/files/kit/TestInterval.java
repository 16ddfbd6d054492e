package org.hosewright.files.kit;

import java.time.Period;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hosewright.files.yaml.YamlValue;

/** How long a test is relied on, as text: "18 months", "5 years". */
final class TestInterval {
    private static final Pattern TEXT = Pattern.compile("([1-9][0-9]{0,2}) (month|months|year|years)");
    private static final String ALLOWED = "months or years, as in '12 months' or '5 years'";

    private TestInterval() {}

    static Period read(YamlValue value) {
        Matcher found = TEXT.matcher(value.text(ALLOWED));
        if (!found.matches()) {
            throw value.refused("interval of a hydrant's test", ALLOWED);
        }
        int count = Integer.parseInt(found.group(1));
        return found.group(2).startsWith("year") ? Period.ofYears(count) : Period.ofMonths(count);
    }

    static String text(Period interval) {
        int years = interval.getYears();
        int count = years > 0 ? years : interval.getMonths();
        return count + (years > 0 ? " year" : " month") + (count == 1 ? "" : "s");
    }
}
