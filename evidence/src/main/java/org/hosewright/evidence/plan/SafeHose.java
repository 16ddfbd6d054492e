package org.hosewright.evidence.plan;

import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;

/** The rule which hose may be flown on a test night at all.
 *
 * @source NFPA 1962, 2013/2018: service test within 12 months, hose made before July 1987 out of service
 */
final class SafeHose {
    private SafeHose() {}

    /** Refuses a line with hose that must not be pumped for a test.
     *
     * @throws InvalidInput hose made before July 1987, or not service tested within 12 months before the night, or with no
     *     service test on record
     */
    static void require(Line line, Bounds bounds) {
        for (Run run : line.runs()) {
            Hose hose = run.hose();
            TestAge age = bounds.testAge(hose.id());
            if (age == TestAge.TOO_OLD) {
                throw new InvalidInput(
                        "hose of a test night", hose.id() + ", made before July 1987", "hose made since", "");
            }
            if (hose.serviceTest().isEmpty()) {
                throw new InvalidInput(
                        "hose of a test night",
                        hose.id() + ", no service test on record",
                        "hose with its " + IN_DATE,
                        "");
            }
            if (age != TestAge.IN_DATE) {
                String why = age == TestAge.OVERDUE
                        ? ", service test older than 12 months that night"
                        : ", day of its service test not known";
                throw new InvalidInput("hose of a test night", hose.id() + why, "hose with a " + IN_DATE, "");
            }
        }
    }

    private static final String IN_DATE = "service test within the 12 months before the night";
}
