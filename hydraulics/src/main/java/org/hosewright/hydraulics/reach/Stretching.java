package org.hosewright.hydraulics.reach;

import java.util.Comparator;
import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** One line at any count of sections of its last hose, its needed pump pressure taken some errors high.
 *
 * @param line the line
 * @param errors how its losses' errors hang together
 * @param bounds what the company has set
 * @param duty what the line must do at every length
 * @param high standard errors that the pump pressure is taken above the estimate
 */
record Stretching(Line line, LossErrors errors, Bounds bounds, Duty duty, double high) {
    /** More hose than there is; a line that goes further has no limit that stops it. */
    private static final int MOST_SECTIONS = 1_000_000;

    Line lineOf(int sections) {
        return line.withLastLength(
                new Length(sections * line.last().hose().section().metres()));
    }

    LineState stateOf(int sections) {
        Line longer = lineOf(sections);
        LineState state = LineSolver.solve(longer, duty.ask());
        Known<Pressure> needed = LineSolver.neededPump(longer, errors, duty.ask());
        Pressure pump = new Pressure(needed.value().pascals() + high * needed.standardErrorSi());
        return state.withPump(pump);
    }

    List<Limit> brokenAt(int sections) {
        return LineLimits.of(lineOf(sections), stateOf(sections), bounds).stream()
                .filter(Limit::broken)
                .toList();
    }

    /** The most sections that break nothing; 0 where one already does. */
    int most() {
        int holds = 0;
        int breaks = MOST_SECTIONS;
        if (brokenAt(breaks).isEmpty()) {
            throw new InvalidInput(
                    "limit of the line on " + line.discharge().id(),
                    "",
                    "a ceiling or a rated flow for the pump, or a service test for "
                            + line.last().hose().id(),
                    "");
        }
        while (breaks - holds > 1) {
            int middle = (holds + breaks) / 2;
            if (brokenAt(middle).isEmpty()) {
                holds = middle;
            } else {
                breaks = middle;
            }
        }
        return holds;
    }

    /** Of the limits broken at a count of sections, the one that the line meets first. */
    Limit stopAt(int sections) {
        LineState state = stateOf(sections);
        return brokenAt(sections).stream()
                .min(Comparator.comparingDouble(limit -> LineLimits.findMostPump(limit, state, bounds)
                        .map(Pressure::pascals)
                        .orElse(Double.NEGATIVE_INFINITY)))
                .orElseThrow();
    }
}
