package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Cautions;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.supply.SupplyLine;
import org.hosewright.hydraulics.working.FlowWorking;
import org.hosewright.hydraulics.working.PumpWorking;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;

/** A lay of one line, solved: what its result file, its text and its page show.
 *
 * @param kit the kit
 * @param lay the lay and what was asked
 * @param state the line at the best estimate
 * @param pump pump pressure, with its standard error where it was worked out
 * @param flow flow at the tip, with its standard error where it was worked out
 * @param intake pressure that the supply leaves at the pump, where the supply is stated
 * @param limits every limit, the most used first
 * @param workings hand calculation of the answer
 * @param cautions what people must keep in mind
 * @param assumed each default that the result rests on
 */
public record LayReport(
        Kit kit,
        SingleLay lay,
        LineState state,
        Known<Pressure> pump,
        Known<Flow> flow,
        Optional<Pressure> intake,
        List<Limit> limits,
        List<Working> workings,
        List<String> cautions,
        List<String> assumed) {
    public LayReport {
        limits = List.copyOf(limits);
        workings = List.copyOf(workings);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }

    /** The lay solved.
     *
     * @param today the day that ages of tests are taken at; absent where they are not judged
     */
    public static LayReport of(Kit kit, SingleLay lay, Optional<LocalDate> today) {
        Line line =
                KitLines.of(kit, lay.laid(), new Length(0)).withRise(lay.rise().orElse(new Length(0)));
        LossErrors errors = KitErrors.of(kit);
        Optional<SupplyLine> supply = lay.supply().map(laid -> laid.line(kit));
        Bounds bounds = KitBounds.of(kit, lay.laid(), today).withSupply(supply.map(SupplyLine::most));
        LineState state = LineSolver.solve(line, lay.ask());
        Known<Flow> flow = lay.ask() instanceof Ask.AtPump pump
                ? LineSolver.delivered(line, errors, pump.pressure())
                : Known.of(state.flow());
        List<String> cautions = new ArrayList<>(lay.leftOut());
        lay.supply().ifPresent(laid -> cautions.addAll(laid.cautions()));
        cautions.addAll(Cautions.list(line, state, bounds, kit.units()));
        return new LayReport(
                kit,
                lay,
                state,
                LineSolver.neededPump(line, errors, lay.ask()),
                flow,
                supply.map(feeding -> feeding.intakeAt(state.flow())),
                LineLimits.of(line, state, bounds),
                workings(kit, line, lay.ask()),
                cautions,
                assumed(kit, lay, errors, line));
    }

    private static List<Working> workings(Kit kit, Line line, Ask ask) {
        return List.of(
                ask instanceof Ask.AtPump pump
                        ? FlowWorking.of(line, pump.pressure(), kit.units())
                        : PumpWorking.of(line, ask, kit.units()));
    }

    private static List<String> assumed(Kit kit, SingleLay lay, LossErrors errors, Line line) {
        List<String> assumed = new ArrayList<>();
        if (lay.rise().isEmpty()) {
            assumed.add("No rise is stated: the tip is taken level with the pump.");
        }
        lay.supply().ifPresent(laid -> assumed.addAll(laid.assumed(kit)));
        assumed.addAll(errors.listAssumed(line));
        return assumed;
    }
}
