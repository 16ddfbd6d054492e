package org.hosewright.ledger.drill;

import java.util.List;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** One line that a night flew: the same discharge, hoses and nozzle at one or more lengths, with the range flown.
 *
 * @param discharge id of the discharge
 * @param chains the hose of each length flown, shortest first; not empty
 * @param nozzle id of the nozzle
 * @param setting its setting; empty for the only one
 * @param least lowest flow flown, by the tip where it was read, else by the meter
 * @param most highest flow flown
 */
public record TestedLine(
        String discharge, List<List<Stretch>> chains, String nozzle, String setting, Flow least, Flow most) {
    public TestedLine {
        chains = chains.stream().map(List::copyOf).toList();
    }

    /** The name of its tip: the nozzle's id, with the setting where there are several. */
    public String tipName(Kit kit) {
        return KitLines.nozzle(kit, nozzle, setting).tipName(setting);
    }

    /** Ids of its hoses in laying order. */
    public List<String> hoses() {
        return chains.get(0).stream().map(Stretch::hose).toList();
    }

    /** Lengths flown, shortest first. */
    public List<Length> lengths() {
        return chains.stream().map(TestedLines::length).toList();
    }

    /** The longest length flown. */
    public Length longest() {
        return TestedLines.length(chains.get(chains.size() - 1));
    }
}
