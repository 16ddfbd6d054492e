package org.hosewright.ledger.lay;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.Trail;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.working.FlowWorking;
import org.hosewright.hydraulics.working.PumpWorking;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.Kit;

/** A lay worked by hand: the answer of a single line, and the way from the pump to each open tip. */
final class LayWorkings {
    private LayWorkings() {}

    static List<Working> list(Kit kit, Laid laid, LayState state) {
        List<Working> workings = new ArrayList<>();
        laid.findOnlyTip(state).ifPresent(tip -> workings.add(answer(tip.path(), laid.ask(), kit.units())));
        workings.addAll(Trail.listOf(state, kit.units()));
        return workings;
    }

    private static Working answer(Line line, Ask ask, UnitSystem units) {
        return ask instanceof Ask.AtPump pump
                ? FlowWorking.of(line, pump.pressure(), units)
                : PumpWorking.of(line, ask, units);
    }
}
