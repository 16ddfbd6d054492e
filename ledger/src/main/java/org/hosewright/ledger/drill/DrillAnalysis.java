package org.hosewright.ledger.drill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.night.Gear;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.NightEngines;
import org.hosewright.ledger.line.NightGear;

/** The analysis of a test night from the company's side: calibration, verdict on the rule, working. */
public final class DrillAnalysis {
    private DrillAnalysis() {}

    /** The report of a night.
     *
     * @param name the night's name; a short id as the kit will remember it
     * @param date its date, where known
     * @param kit the kit as it stood before the night
     * @param readings in the order taken
     * @param rulings what people ruled, by reading id
     * @throws org.hosewright.hydraulics.error.InvalidInput a reading is impossible
     */
    public static DrillReport of(
            String name, Optional<LocalDate> date, Kit kit, List<Reading> readings, Map<String, Ruling> rulings) {
        NightEngines engines = NightEngines.of(readings);
        Gear gear = NightGear.of(kit, date, engines, hose -> Beforehand.isOwn(hose, name, date));
        return report(name, date, kit, new Night(readings, gear, rulings, kit.units()));
    }

    private static DrillReport report(String name, Optional<LocalDate> date, Kit kit, Night night) {
        Calibration calibration = Calibration.of(night);
        List<TestedLine> lines = TestedLines.of(night, calibration);
        Deliveries deliveries = new Deliveries(kit, NightEngines.of(night.readings()), calibration);
        List<NeededRow> needed = deliveries.needed(lines);
        List<RuleRow> rule = deliveries.rule(lines);
        List<Differing> differing =
                new Beforehand(name, date, kit, calibration.terms().hoses()).list();
        DrillReport report = new DrillReport(
                name,
                date,
                kit,
                night,
                new Undelivered(kit, calibration).said(lines, needed, rule),
                lines,
                needed,
                rule,
                deliveries.book(lines),
                Swings.of(kit, calibration, lines, deliveries),
                differing,
                List.of(),
                cautions(calibration, differing),
                assumed(calibration, deliveries));
        return report.withWorkings(NightWorkings.of(report));
    }

    private static List<String> cautions(Calibration calibration, List<Differing> differing) {
        List<String> cautions = new ArrayList<>();
        differing.forEach(one -> cautions.add(one.says() + ". " + one.check()));
        List<String> aside = calibration.readings().stream()
                .filter(judged -> !judged.used())
                .map(Judged::reading)
                .toList();
        if (!aside.isEmpty() && aside.size() < calibration.readings().size()) {
            cautions.add(
                    "Set aside: reading " + String.join(", ", aside)
                            + ". Leaving out a reading that lost more makes the line look better than it may be: lay it again.");
        }
        cautions.addAll(Cautioned.NIGHT);
        return cautions;
    }

    private static List<String> assumed(Calibration calibration, Deliveries deliveries) {
        Set<String> assumed = new LinkedHashSet<>(calibration.assumed());
        assumed.addAll(deliveries.assumed());
        return List.copyOf(assumed);
    }
}
