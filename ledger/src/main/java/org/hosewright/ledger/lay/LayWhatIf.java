package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.lay.Intake;
import org.hosewright.hydraulics.lay.LayCautions;
import org.hosewright.hydraulics.lay.LayLimits;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.WhatIf;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** A lay with one thing changed and nobody touching the pump, beside the lay as it was asked for.
 *
 * @param whatIf what changed, and the lay before and then
 * @param now what the panel shows before
 * @param then what it shows then, gauge by gauge in the same order
 * @param broken limits that are passed then, the worst first
 * @param radio what is said by radio before anything else is done, as sentences
 * @param cautions what people must keep in mind then and need not before, as sentences
 */
public record LayWhatIf(
        WhatIf whatIf,
        List<PanelReading> now,
        List<PanelReading> then,
        List<Limit> broken,
        List<String> radio,
        List<String> cautions) {
    public LayWhatIf {
        now = List.copyOf(now);
        then = List.copyOf(then);
        broken = List.copyOf(broken);
        radio = List.copyOf(radio);
        cautions = List.copyOf(cautions);
    }

    /** What a change does to a lay.
     *
     * @param normal the lay solved as it is asked for
     * @param today the day that ages of tests are taken at; absent where they are not judged
     */
    public static LayWhatIf of(LayReport normal, LayChange change, Optional<LocalDate> today) {
        Kit kit = normal.kit();
        WhatIf found = change.of(kit, normal.laid().lay(), normal.state());
        EngineRecord engine = KitLines.get(kit.engines(), normal.laid().engine(), "engine of the lay");
        List<String> cautions = new ArrayList<>(cautions(normal, found.then(), today));
        change.findEstimate().ifPresent(cautions::add);
        return new LayWhatIf(
                found,
                PanelReading.listOf(kit, engine, found.before()),
                PanelReading.listOf(kit, engine, found.then()),
                LayLimits.of(found.then(), bounds(normal, found.then(), today)).stream()
                        .filter(Limit::broken)
                        .toList(),
                LayCautions.listBursts(found.then(), kit.units()),
                cautions);
    }

    private static Bounds bounds(LayReport normal, LayState state, Optional<LocalDate> today) {
        Optional<Flow> most = state.intake().map(Intake::most).filter(flow -> flow.cubicMetresPerSecond() > 0);
        return LayBounds.of(normal.kit(), normal.laid(), state, today).withSupply(most);
    }

    private static List<String> cautions(LayReport normal, LayState state, Optional<LocalDate> today) {
        List<String> says =
                new ArrayList<>(LayCautions.listMissing(state, normal.kit().units()));
        says.addAll(new OutsideRange(normal.kit()).list(state, normal.laid().engine()));
        List<String> more = new ArrayList<>(LayCautions.list(
                state,
                new Ask.AtPump(state.pump()),
                bounds(normal, state, today),
                normal.kit().units()));
        more.removeAll(normal.cautions());
        says.addAll(more);
        says.removeAll(normal.outside());
        says.removeAll(LayCautions.listBursts(state, normal.kit().units()));
        return List.copyOf(new LinkedHashSet<>(says));
    }
}
