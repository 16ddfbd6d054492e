package org.hosewright.ledger.plan;

import java.util.List;

/** What people on a test night are told, whatever the numbers.
 *
 * @source stand clear and purge: NWCG Water Handling Equipment Guide, hose testing; nozzle secured, slow valves, hydrant, runoff,
 *     ice: common practice of hose tests; roles: common practice
 */
public final class NightWords {
    static final List<String> ROLES = List.of(
            "Lead: runs the list, says the next reading only when nobody is at a coupling, ends the night.",
            "Safety: watches hose and people, has no other task. Anybody may call stop.",
            "Pump operator: raises and lowers slowly, reads the pump gauge, keeps the intake at 20 psi (140 kPa) or more.",
            "Nozzle crew: as many as the package plans, the nozzle secured; hold steady, call the tip.",
            "Tip reader: reads the tip gauge, the pitot centred half a bore off the tip.",
            "Recorder: writes every reading as called, strikes nothing out, notes kinks, gates and doubts.",
            "Hydrant: opens fully, closes slowly, watches the residual and the runoff.");

    public static final List<String> GO = List.of(
            "Go only if: the hose laid is the hose on this list, its service test is within 12 months, none of it was made before"
                    + " July 1987.",
            "Go only if: each gauge was read open to air and its reading written down.",
            "Go only if: the relief valve or pressure control is set and was tried.",
            "Go only if: the utility and the road authority know, and runoff has somewhere to go.",
            "No go: ice or freezing runoff, lightning, a residual below 20 psi (140 kPa), fewer people than roles.",
            "Stop: vibration, a bulge, a coupling that creeps, a lost radio word, anybody's word.");

    public static final List<String> CAUTIONS = List.of(
            "People clear first: never in front of the end, astride the hose, to its right, or within 15 ft (5 m) on its left;"
                    + " those who are not needed leave before the pressure is raised.",
            "Charge slowly, purge all air, the nozzle secured. Open and shut every valve slowly.",
            "No point goes above 90 % of the service test, with the nozzle shut and the fall of the ground counted in. Never pump"
                    + " above the pressure named for a reading, whatever the tip gauge shows.",
            "A reading with the nozzle shut: pump at idle pressure, close the nozzle slowly, tank fill cracked open, at most 30"
                    + " seconds.",
            "Stop the water before anybody touches a coupling.",
            "Training and licensed practice, local codes and makers' ratings rule. Gauges and the nozzle crew's word overrule any"
                    + " sheet or screen.");

    private NightWords() {}
}
