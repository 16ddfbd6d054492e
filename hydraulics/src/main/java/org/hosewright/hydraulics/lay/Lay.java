package org.hosewright.hydraulics.lay;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.error.InvalidInput;

/** What is laid from one engine.
 *
 * @param lines from each discharge; not empty, each discharge and each nozzle's name once
 */
public record Lay(List<FromDischarge> lines) {
    public Lay {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new InvalidInput("lines of the lay", "", "at least one line", "");
        }
        Set<String> discharges = new LinkedHashSet<>();
        Set<String> outlets = new LinkedHashSet<>();
        for (FromDischarge line : lines) {
            requireNew("discharge with two lines", line.discharge().id(), discharges);
            line.leg().outlets().forEach(outlet -> requireNew("name of two tips", outlet.id(), outlets));
        }
    }

    /** What is laid from a discharge. */
    public record FromDischarge(Discharge discharge, Leg leg) {}

    /** Every nozzle, shut ones too, in laying order. */
    public List<End.Outlet> outlets() {
        return lines.stream().flatMap(line -> line.leg().outlets().stream()).toList();
    }

    /** The same lay with one nozzle opened if it is shut, shut if it is open. */
    public Lay turned(String outlet) {
        return new Lay(lines.stream()
                .map(line -> new FromDischarge(line.discharge(), line.leg().turned(outlet)))
                .toList());
    }

    private static void requireNew(String what, String id, Set<String> seen) {
        if (!seen.add(id)) {
            throw new InvalidInput(what, id, "each of them once", "");
        }
    }
}
