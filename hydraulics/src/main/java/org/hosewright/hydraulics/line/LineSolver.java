package org.hosewright.hydraulics.line;

import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** One line solved for the pump, or for the tip; in closed form where its hose loses with the square of the flow.
 *
 * @source pump pressure = tip + friction + appliances + elevation: Fire Engineering, Spurgeon, October 2012
 * @validFor a rise known as a height
 */
public final class LineSolver {
    /** How near the held pressure counts as it [1]: the last digits of a unit conversion. */
    private static final double SAME_PRESSURE = 1e-9;

    private LineSolver() {}

    public static LineState solve(Line line, Ask ask) {
        if (ask instanceof Ask.AtTip tip) {
            return atTip(line, tip.pressure());
        }
        return ask instanceof Ask.AtFlow flow ? atFlow(line, flow.flow()) : atPump(line, ((Ask.AtPump) ask).pressure());
    }

    /** The line with so much pressure at the tip.
     *
     * @throws InvalidInput pressure not above 0, or the pressure that an automatic tip holds, which says nothing
     *     about its flow
     */
    public static LineState atTip(Line line, Pressure tip) {
        Numbers.requirePositive("tip pressure", tip.pascals());
        if (line.tip() instanceof Automatic automatic) {
            double held_Pa = automatic.holds().pascals();
            if (Math.abs(tip.pascals() - held_Pa) <= SAME_PRESSURE * held_Pa) {
                throw new InvalidInput(
                        "tip pressure of " + line.nozzle().id(),
                        "the pressure it holds",
                        "a flow: within its band an automatic tip's pressure says nothing about the flow",
                        "");
            }
        }
        return atFlow(line, new Flow(line.tip().flow_m3s(tip.pascals())));
    }

    /** The line with so much flow; no flow is the line just full.
     *
     * @throws InvalidInput flow below 0
     */
    public static LineState atFlow(Line line, Flow flow) {
        double flow_m3s = Numbers.requireNotNegative("flow", flow.cubicMetresPerSecond());
        return state(line, flow_m3s, LineCurve.of(line).pump_Pa(flow_m3s));
    }

    /** The line with so much pressure at the pump, nozzle open.
     *
     * @throws InvalidInput pressure below 0
     */
    public static LineState atPump(Line line, Pressure pump) {
        double pump_Pa = Numbers.requireNotNegative("pump pressure", pump.pascals());
        return state(line, LineCurve.of(line).flow_m3s(pump_Pa), pump_Pa);
    }

    /** The pump pressure that a tip pressure needs, with the standard error that the losses and the nozzle leave. */
    public static Known<Pressure> neededPump(Line line, LossErrors errors, Pressure tip) {
        return neededPump(line, errors, new Ask.AtTip(tip));
    }

    /** The pump pressure that is needed for what is asked; a pump pressure asked for is known exactly. */
    public static Known<Pressure> neededPump(Line line, LossErrors errors, Ask ask) {
        LineState state = solve(line, ask);
        if (ask instanceof Ask.AtPump || !errors.isStated(line)) {
            return Known.of(state.pump());
        }
        Slopes slopes = Slopes.of(line, state.flow());
        double perFactor = ask instanceof Ask.AtTip ? slopes.pumpPerFactorAtTip() : slopes.pumpPerFactorAtFlow();
        return Known.of(
                state.pump(), new Pressure(errors.spread(line).standardError(slopes.pumpPerResistance(), perFactor)));
    }

    /** The flow that a pump pressure delivers, with its standard error. */
    public static Known<Flow> delivered(Line line, LossErrors errors, Pressure pump) {
        Flow flow = atPump(line, pump).flow();
        if (!errors.isStated(line)) {
            return Known.of(flow);
        }
        Slopes slopes = Slopes.of(line, flow);
        return Known.of(
                flow, new Flow(errors.spread(line).standardError(slopes.flowPerResistance(), slopes.flowPerFactor())));
    }

    private static LineState state(Line line, double flow_m3s, double pump_Pa) {
        Flow flow = new Flow(flow_m3s);
        double hose_Pa = Resistance.ofHose(line) * flow_m3s * flow_m3s
                + HoseLaws.of(line).loss_Pa(flow_m3s);
        double piping_Pa = line.discharge().lossOrNone().at(flow).pascals();
        double lift_Pa = line.runs().stream().mapToDouble(Run::lift_Pa).sum();
        boolean plain = line.runs().stream().allMatch(run -> run.end().isEmpty());
        double tip_Pa = flow_m3s > 0 ? line.tip().pressure_Pa(flow_m3s) : pump_Pa - lift_Pa;
        double appliances_Pa = plain || flow_m3s == 0 ? 0 : pump_Pa - tip_Pa - lift_Pa - hose_Pa - piping_Pa;
        return new LineState(
                new Pressure(pump_Pa),
                flow,
                new Pressure(tip_Pa),
                new Force(line.tip().reaction_N(tip_Pa, flow_m3s)),
                new Pressure(hose_Pa),
                new Pressure(piping_Pa),
                new Pressure(appliances_Pa),
                new Pressure(lift_Pa));
    }
}
