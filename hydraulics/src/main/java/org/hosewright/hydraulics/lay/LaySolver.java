package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Lay.FromDischarge;
import org.hosewright.hydraulics.lay.LayState.Gate;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** A lay solved for its tips, or for the pump.
 *
 * @source pump for the line that needs most and gate the others down: common practice
 * @validFor one engine at the fire, fed or not; lines that branch, meet and branch again
 */
public final class LaySolver {
    /** How little a line may be short of the highest and still stand open [1]. */
    private static final double SAME = 1e-9;

    private LaySolver() {}

    /** The lay as it is asked for.
     *
     * @throws InvalidInput no outlet is open, or nothing sensible is asked, or a piece gives no pressure; it is named
     */
    public static LayState solve(Lay laid, Ask ask) {
        Lay lay = Bursts.opened(laid);
        if (lay.outlets().stream().allMatch(End.Outlet::shut)) {
            throw new InvalidInput("every nozzle of the lay", "shut", "a nozzle that is open", "");
        }
        Reducers.requireKnown(lay);
        if (ask instanceof Ask.AtPump pump) {
            Numbers.requireNotNegative("pump pressure", pump.pressure().pascals());
            if (lay.pump() instanceof PumpMode.FixedSpeed fixed) {
                return onCurve(lay, fixed, pump.pressure());
            }
            return at(lay, pump.pressure(), List.of(), Map.of());
        }
        Bursts.requireWhole(laid);
        return asked(lay, needs(lay, ask));
    }

    /** What each group of lines that leads to an open outlet needs at the pump. */
    private static Map<LineGroup, Double> needs(Lay lay, Ask ask) {
        Map<LineGroup, Double> needs = new LinkedHashMap<>();
        for (LineGroup group : LineGroup.listOf(lay)) {
            if (group.isOpen()) {
                needs.put(group, group.need_Pa(ask));
            }
        }
        return needs;
    }

    /** The pump at the highest need, every other line gated down to its own. */
    private static LayState asked(Lay lay, Map<LineGroup, Double> needs) {
        double pump_Pa = 0;
        for (double need_Pa : needs.values()) {
            pump_Pa = Math.max(pump_Pa, need_Pa);
        }
        List<Gate> gates = new ArrayList<>();
        Map<String, PointLoss> losses = new LinkedHashMap<>();
        for (Map.Entry<LineGroup, Double> entry : needs.entrySet()) {
            Pressure down = new Pressure(pump_Pa - entry.getValue());
            if (down.pascals() > SAME * pump_Pa) {
                Pressure own = new Pressure(entry.getValue());
                Map<String, Flow> flows =
                        entry.getKey().state(own, List.of(), Map.of()).parts().flows();
                flows.forEach((discharge, flow) -> {
                    if (flow.cubicMetresPerSecond() > 0) {
                        gates.add(new Gate(discharge, down));
                        losses.put(discharge, PointLoss.of(down, flow));
                    }
                });
            }
        }
        return at(lay, new Pressure(pump_Pa), gates, losses);
    }

    /** The lay with one nozzle opened or shut, pump and gates untouched. */
    public static LayState turned(Lay lay, LayState before, String outlet) {
        return untouched(lay.turned(outlet), before);
    }

    /** Another lay on the same discharges, with the pump and the gates left as they were.
     *
     * <p>A governor holds the pump pressure; a pump at a fixed speed slides along its curve.
     */
    static LayState untouched(Lay other, LayState before) {
        Map<String, PointLoss> losses = new LinkedHashMap<>();
        for (Gate gate : before.gates()) {
            Flow flow = before.parts().flows().getOrDefault(gate.discharge(), new Flow(0));
            losses.put(gate.discharge(), PointLoss.of(gate.down(), flow));
        }
        Lay lay = Bursts.opened(other);
        Reducers.requireKnown(lay);
        if (lay.pump() instanceof PumpMode.FixedSpeed fixed) {
            double intake_Pa =
                    before.intake().map(side -> side.pressure().pascals()).orElse(0.0);
            double net_Pa = before.pump().pascals() - intake_Pa;
            PumpSlide slide = new PumpSlide(net_Pa, before.flow().cubicMetresPerSecond(), fixed.rated());
            return slid(lay, slide, before.gates(), losses);
        }
        return at(lay, before.pump(), before.gates(), losses);
    }

    /** A pump at a fixed speed, through the point that was read.
     *
     * @throws InvalidInput another pump pressure is asked than the one that was read
     */
    private static LayState onCurve(Lay lay, PumpMode.FixedSpeed fixed, Pressure asked) {
        if (Math.abs(asked.pascals() - fixed.at().pascals()) > SAME * fixed.at().pascals()) {
            throw new InvalidInput(
                    "pump pressure asked of a pump at a fixed speed",
                    QuantityShown.both(asked),
                    QuantityShown.both(fixed.at()) + ", as it was read: its speed sets the rest",
                    "");
        }
        double intake_Pa = intake_Pa(lay, fixed.flow().cubicMetresPerSecond());
        PumpSlide slide =
                new PumpSlide(fixed.at().pascals() - intake_Pa, fixed.flow().cubicMetresPerSecond(), fixed.rated());
        return slid(lay, slide, List.of(), Map.of());
    }

    /** The lay where its lines take what the pump gives; with all of them shut the pump stands at the top of its curve. */
    private static LayState slid(Lay lay, PumpSlide slide, List<Gate> gates, Map<String, PointLoss> losses) {
        LineGroup whole = new LineGroup(lay.lines(), lay.joins());
        Pressure pump = slide.pressure(
                pump_Pa -> whole.state(new Pressure(pump_Pa), List.of(), losses)
                        .flow()
                        .cubicMetresPerSecond(),
                flow_m3s -> intake_Pa(lay, flow_m3s));
        return fed(lay, whole.state(pump, slide.shut(intake_Pa(lay, 0)), gates, losses));
    }

    private static double intake_Pa(Lay lay, double flow_m3s) {
        return lay.supply()
                .map(supply -> new Feeding(supply).intake_Pa(flow_m3s))
                .orElse(0.0);
    }

    private static LayState at(Lay lay, Pressure pump, List<Gate> gates, Map<String, PointLoss> losses) {
        return fed(lay, new LineGroup(lay.lines(), lay.joins()).state(pump, gates, losses));
    }

    private static LayState fed(Lay lay, LayState state) {
        return lay.supply()
                .map(supply -> state.withIntake(Optional.of(Intake.of(supply, state.flow()))))
                .orElse(state);
    }

    /** A line seen from the pump, with what its piping and its gate take. */
    static Branch branch(FromDischarge line, PointLoss gate) {
        return new Branch(
                List.of(Splits.quadratic(line.discharge().lossOrNone()), Splits.quadratic(gate)),
                0,
                Double.POSITIVE_INFINITY,
                line.leg());
    }
}
