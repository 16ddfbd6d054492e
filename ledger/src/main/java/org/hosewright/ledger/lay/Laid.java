package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.lay.End;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.Leg;
import org.hosewright.hydraulics.lay.PumpMode;
import org.hosewright.hydraulics.line.Ask;

/** What is laid from one engine, by the company's names, and what is asked of it.
 *
 * @param engine id of the engine
 * @param lay the lines, and what feeds the engine where that is stated
 * @param ask what is asked
 * @param cautions what people should know about its sources, as sentences
 * @param tests days of the flow tests of its hydrants, as far as they are stated
 * @param assumed what was not said and is taken for granted, as sentences
 */
public record Laid(
        String engine, Lay lay, Ask ask, List<String> cautions, List<LocalDate> tests, List<String> assumed) {
    public Laid {
        cautions = List.copyOf(cautions);
        tests = List.copyOf(tests);
        assumed = List.copyOf(assumed);
    }

    /** The tip of a lay that is one plain line: a discharge, hose and a nozzle, nothing between or amiss. */
    Optional<LayState.AtTip> findOnlyTip(LayState state) {
        Leg leg = lay.lines().get(0).leg();
        boolean plain = lay.lines().size() == 1
                && leg.end() instanceof End.Outlet
                && leg.gate().isEmpty()
                && leg.damage().isEmpty()
                && lay.pump() instanceof PumpMode.Governor;
        return plain ? state.tips().stream().findFirst() : Optional.empty();
    }
}
