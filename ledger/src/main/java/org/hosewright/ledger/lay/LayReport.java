package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.lay.FieldMethods;
import org.hosewright.hydraulics.lay.Intake;
import org.hosewright.hydraulics.lay.LayCautions;
import org.hosewright.hydraulics.lay.LayLimits;
import org.hosewright.hydraulics.lay.LaySolver;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.PumpMode;
import org.hosewright.hydraulics.lay.SecondLine;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** A lay solved: what its result file, its text and its page show.
 *
 * @param kit the kit
 * @param laid the lay and what was asked
 * @param state pump, tips and gates at the best estimate
 * @param pump pump pressure, with its standard error where it was worked out
 * @param flows flow of each open tip by its name, with its standard error where it was worked out
 * @param outside water that does not come, piping that is not known, ranges that are left, as sentences; they stand
 *     before the numbers
 * @param secondLines what tips that hang together get when one opens or shuts with the pump untouched
 * @param secondSays the same as sentences; they stand before the numbers
 * @param intake pressure that the supply leaves at the pump, where the supply is stated
 * @param limits every limit, the most used first
 * @param workings hand calculation of the answer
 * @param methods the same by the trade's field methods, each good for it or refused with the reason
 * @param cautions what people must keep in mind, {@code radio}, {@code outside} and {@code secondSays} not among them
 * @param assumed each default that the result rests on
 */
public record LayReport(
        Kit kit,
        Laid laid,
        LayState state,
        Known<Pressure> pump,
        Map<String, Known<Flow>> flows,
        List<String> outside,
        List<SecondLine> secondLines,
        List<String> secondSays,
        Optional<Pressure> intake,
        List<Limit> limits,
        List<Working> workings,
        List<FieldMethods> methods,
        List<String> cautions,
        List<String> assumed) {
    public LayReport {
        flows = Collections.unmodifiableMap(new LinkedHashMap<>(flows));
        outside = List.copyOf(outside);
        secondLines = List.copyOf(secondLines);
        secondSays = List.copyOf(secondSays);
        limits = List.copyOf(limits);
        workings = List.copyOf(workings);
        methods = List.copyOf(methods);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }

    /** The lay solved.
     *
     * @param today the day that ages of tests are taken at; absent where they are not judged
     */
    public static LayReport of(Kit kit, Laid laid, Optional<LocalDate> today) {
        LayState state = LaySolver.solve(laid.lay(), laid.ask());
        Optional<Flow> most = state.intake().map(Intake::most).filter(flow -> flow.cubicMetresPerSecond() > 0);
        Bounds bounds = LayBounds.of(kit, laid, state, today).withSupply(most);
        List<SecondLine> second = SecondLine.listOf(laid.lay(), state);
        LayErrors errors = new LayErrors(kit, laid, state);
        return new LayReport(
                kit,
                laid,
                state,
                errors.pump(),
                errors.flows(),
                new BeforeNumbers(kit, laid).list(state, today),
                second,
                new SecondLineWords(kit, laid, bounds).says(second),
                state.intake().map(Intake::pressure),
                LayLimits.of(state, bounds),
                LayWorkings.list(kit, laid, state),
                FieldMethods.listOf(state, kit.units()),
                cautions(kit, laid, state, bounds),
                assumed(kit, laid, errors));
    }

    /** The flow of a tip as far as it is known. */
    public Known<Flow> flowOf(AtTip tip) {
        return flows.getOrDefault(tip.outlet().id(), Known.of(tip.state().flow()));
    }

    /** What is said by radio before anything else is done, as sentences: where hose has let go. */
    public List<String> radio() {
        return LayCautions.listBursts(state, kit.units());
    }

    /** What the gauges at the panel show, and those of the engines that relay to it. */
    public List<PanelReading> panel() {
        return PanelReading.listOf(kit, KitLines.get(kit.engines(), laid.engine(), "engine of the lay"), state);
    }

    private static List<String> cautions(Kit kit, Laid laid, LayState state, Bounds bounds) {
        List<String> cautions = new ArrayList<>(laid.cautions());
        cautions.addAll(LayCautions.list(state, laid.ask(), bounds, kit.units()));
        cautions.removeAll(LayCautions.listMissing(state, kit.units()));
        cautions.removeAll(LayCautions.listBursts(state, kit.units()));
        return cautions;
    }

    private static List<String> assumed(Kit kit, Laid laid, LayErrors errors) {
        Set<String> assumed = new LinkedHashSet<>(laid.assumed());
        assumed.addAll(errors.assumed());
        if (laid.lay().pump() instanceof PumpMode.FixedSpeed) {
            assumed.add(PumpMode.FixedSpeed.says(kit.units()));
        }
        return List.copyOf(assumed);
    }
}
