package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.evidence.calibration.Withheld;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** What is said of lines flown whose needed pressure, or whose flow under the rule, the night cannot tell. */
final class Undelivered {
    private final Kit kit;
    private final Calibration night;
    private final QuantityShown shown;

    Undelivered(Kit kit, Calibration night) {
        this.kit = kit;
        this.night = night;
        this.shown = QuantityShown.of(kit.units());
    }

    /** The night with a line of its own for each line flown that has no figure.
     *
     * @param lines the lines flown
     * @param needed the needed pressures that are told
     * @param rule what the rule delivers where that is told
     */
    Calibration said(List<TestedLine> lines, List<NeededRow> needed, List<RuleRow> rule) {
        List<Withheld> withheld = new ArrayList<>(night.withheld());
        for (TestedLine line : night.terms().hoses().isEmpty() && needed.isEmpty() ? List.<TestedLine>of() : lines) {
            if (needed.stream().noneMatch(row -> row.line().equals(line))) {
                withheld.add(needed(line));
            } else if (kit.rule().isPresent()
                    && rule.stream().noneMatch(row -> row.line().equals(line))) {
                withheld.add(rule(line));
            }
        }
        return night.withholding(withheld);
    }

    private Withheld needed(TestedLine line) {
        String what = "needed pump pressure of " + words(line);
        if (tip(line) instanceof Automatic) {
            return new Withheld(
                    what,
                    "an automatic tip takes whatever flow comes at its pressure, so that no one flow goes with it",
                    "the flow that the line is meant for, held on a flow meter");
        }
        String atOutlet = atOutlet(line);
        return atOutlet.isEmpty()
                ? new Withheld(
                        what,
                        "hose, piping and flow are not known well enough together",
                        "what settles the numbers above")
                : new Withheld(
                        what,
                        "the piping of " + line.discharge() + " is not known; at the outlet, level, it needs "
                                + atOutlet,
                        "the panel gauge, which taps before the piping, read at the same time");
    }

    private String atOutlet(TestedLine line) {
        List<String> each = new ArrayList<>();
        for (List<Stretch> chain : line.chains()) {
            Course course = new Course(chain, line.discharge(), new Length(0), line.nozzle(), line.setting());
            Optional<Known<Pressure>> known =
                    night.belief().neededAtDischarge(course, tip(line).at());
            known.ifPresent(pump -> each.add(shown.withBand(pump) + " at " + shown.text(TestedLines.length(chain))));
        }
        return String.join(", ", each);
    }

    private Withheld rule(TestedLine line) {
        return new Withheld(
                "what the rule delivers on " + words(line),
                "the pressure needed is known, but not the flow that goes with it: nothing fixes the flow's scale",
                "a smooth bore of gauged diameter with a pitot on the same line, a tank filled against the clock, or a"
                        + " calibrated meter");
    }

    private Tip tip(TestedLine line) {
        return KitLines.nozzle(kit, line.nozzle(), line.setting()).rated(line.setting());
    }

    private String words(TestedLine line) {
        return String.join(", then ", line.hoses()) + " from " + line.discharge() + " with " + line.tipName(kit);
    }
}
