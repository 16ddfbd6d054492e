package org.hosewright.ledger.drill;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.night.Night;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.Kit;

/** All that a test night shows: the one source of its page, its report and its result file.
 *
 * @param name the night's name
 * @param date its date, where known
 * @param kit the kit it was analysed with
 * @param night the readings and rulings
 * @param calibration what the readings in use tell
 * @param lines the lines flown
 * @param needed needed pump pressures, by line and length
 * @param rule what the present rule delivers; empty where there is no rule or flows are withheld
 * @param book what the kit's numbers before the night would have delivered; empty where flows are withheld
 * @param steadiness how the numbers stand when single readings are left out
 * @param differing what differs from what was held before the night
 * @param workings hand calculations of the headline numbers
 * @param cautions what people must keep in mind
 * @param assumed each default that a result rests on
 */
public record DrillReport(
        String name,
        Optional<LocalDate> date,
        Kit kit,
        Night night,
        Calibration calibration,
        List<TestedLine> lines,
        List<NeededRow> needed,
        List<RuleRow> rule,
        List<RuleRow> book,
        Steadiness steadiness,
        List<Differing> differing,
        List<Working> workings,
        List<String> cautions,
        List<String> assumed) {
    public DrillReport {
        lines = List.copyOf(lines);
        needed = List.copyOf(needed);
        rule = List.copyOf(rule);
        book = List.copyOf(book);
        differing = List.copyOf(differing);
        workings = List.copyOf(workings);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }

    /** The same under another name. */
    public DrillReport named(String other) {
        return with(other, workings);
    }

    DrillReport withWorkings(List<Working> shown) {
        return with(name, shown);
    }

    private DrillReport with(String called, List<Working> shown) {
        return new DrillReport(
                called,
                date,
                kit,
                night,
                calibration,
                lines,
                needed,
                rule,
                book,
                steadiness,
                differing,
                shown,
                cautions,
                assumed);
    }
}
