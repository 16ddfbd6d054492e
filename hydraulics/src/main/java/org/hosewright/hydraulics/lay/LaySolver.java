package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Lay.FromDischarge;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Gate;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** A lay solved for its tips, or for the pump.
 *
 * @source pump for the line that needs most and gate the others down: common practice
 * @validFor one engine whose pump holds its pressure; lines that branch and do not join again
 */
public final class LaySolver {
    /** How little a line may be short of the highest and still stand open [1]. */
    private static final double SAME = 1e-9;

    private LaySolver() {}

    /** The lay as it is asked for.
     *
     * @throws InvalidInput no nozzle is open, or nothing sensible is asked
     */
    public static LayState solve(Lay lay, Ask ask) {
        if (lay.outlets().stream().allMatch(End.Outlet::shut)) {
            throw new InvalidInput("every nozzle of the lay", "shut", "a nozzle that is open", "");
        }
        if (ask instanceof Ask.AtPump pump) {
            Numbers.requireNotNegative("pump pressure", pump.pressure().pascals());
            return at(lay, pump.pressure(), List.of(), Map.of());
        }
        return asked(lay, needs(lay, ask));
    }

    /** What each open line needs at the pump, by discharge. */
    private static Map<String, Branch.Need> needs(Lay lay, Ask ask) {
        Map<String, Branch.Need> needs = new LinkedHashMap<>();
        for (FromDischarge line : lay.lines()) {
            if (line.leg().isOpen()) {
                needs.put(line.discharge().id(), branch(line, PointLoss.NONE).need(ask));
            }
        }
        return needs;
    }

    /** The pump at the highest need, every other line gated down to its own. */
    private static LayState asked(Lay lay, Map<String, Branch.Need> needs) {
        double pump_Pa = 0;
        for (Branch.Need need : needs.values()) {
            pump_Pa = Math.max(pump_Pa, need.start_Pa());
        }
        List<Gate> gates = new ArrayList<>();
        Map<String, PointLoss> losses = new LinkedHashMap<>();
        for (Map.Entry<String, Branch.Need> entry : needs.entrySet()) {
            Pressure down = new Pressure(pump_Pa - entry.getValue().start_Pa());
            if (down.pascals() > SAME * pump_Pa) {
                gates.add(new Gate(entry.getKey(), down));
                losses.put(
                        entry.getKey(),
                        PointLoss.of(down, new Flow(entry.getValue().flow_m3s())));
            }
        }
        return at(lay, new Pressure(pump_Pa), gates, losses);
    }

    /** The lay with one nozzle opened or shut, pump and gates untouched. */
    public static LayState turned(Lay lay, LayState before, String outlet) {
        Map<String, PointLoss> losses = new LinkedHashMap<>();
        for (Gate gate : before.gates()) {
            losses.put(gate.discharge(), PointLoss.of(gate.down(), flowOf(lay, before, gate.discharge())));
        }
        return at(lay.turned(outlet), before.pump(), before.gates(), losses);
    }

    private static Flow flowOf(Lay lay, LayState state, String discharge) {
        double sum = 0;
        for (FromDischarge line : lay.lines()) {
            if (line.discharge().id().equals(discharge)) {
                for (End.Outlet outlet : line.leg().outlets()) {
                    sum += state.getTip(outlet.id()).state().flow().cubicMetresPerSecond();
                }
            }
        }
        return new Flow(sum);
    }

    private static LayState at(Lay lay, Pressure pump, List<Gate> gates, Map<String, PointLoss> losses) {
        List<AtTip> tips = new ArrayList<>();
        for (FromDischarge line : lay.lines()) {
            PointLoss gate = losses.getOrDefault(line.discharge().id(), PointLoss.NONE);
            tips.addAll(Walk.of(line.discharge(), gate, branch(line, gate), pump));
        }
        double sum = 0;
        for (AtTip tip : tips) {
            sum += tip.state().flow().cubicMetresPerSecond();
        }
        return new LayState(pump, new Flow(sum), tips, gates);
    }

    private static Branch branch(FromDischarge line, PointLoss gate) {
        Discharge discharge = line.discharge();
        return new Branch(
                List.of(
                        new ApplianceLoss.Quadratic(Known.of(discharge.lossOrNone())),
                        new ApplianceLoss.Quadratic(Known.of(gate))),
                line.leg());
    }
}
