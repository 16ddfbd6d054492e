package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.NetworkSolver;
import org.hosewright.hydraulics.network.NetworkState;
import org.hosewright.hydraulics.network.law.Allowance;
import org.hosewright.hydraulics.network.law.HeldTip;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;

/** A lay as a network of nodes and links: the general way to its flows, beside the folded one.
 *
 * @validFor a held pump pressure; lays without reducers and eductors, whose state a network does not choose
 */
public final class LayNetwork {
    private static final String PUMP = "pump";

    private final Network network = new Network();
    private final Map<String, Joint> joints;
    private final Map<String, Double> joinLifts_Pa = new LinkedHashMap<>();
    private int count;

    private LayNetwork(Map<String, Joint> joints) {
        this.joints = joints;
    }

    /** A place in the network.
     *
     * @param node its name
     * @param lift_Pa what its height above the pump takes [Pa]
     */
    private record Spot(String node, double lift_Pa) {}

    /** The flow of each open outlet at a held pump pressure, by its name.
     *
     * @throws InvalidInput a piece that is in one of several states; it is named
     */
    public static Map<String, Flow> flows(Lay laid, Pressure pump) {
        Lay lay = Bursts.opened(laid);
        LayNetwork made = new LayNetwork(lay.joins());
        made.network.fixed(PUMP, pump.pascals());
        lay.joins().keySet().forEach(name -> made.network.free("join " + name));
        for (Lay.FromDischarge line : lay.lines()) {
            Spot start = made.through(
                    new Spot(PUMP, 0), Splits.quadratic(line.discharge().lossOrNone()));
            made.leg(line.leg(), start);
        }
        NetworkState state = NetworkSolver.solve(made.behindJoins(lay));
        Map<String, Flow> flows = new LinkedHashMap<>();
        for (End.Outlet outlet : lay.outlets()) {
            if (!outlet.shut()) {
                flows.put(outlet.id(), new Flow(state.flow_m3s("tip " + outlet.id())));
            }
        }
        return flows;
    }

    private Network behindJoins(Lay lay) {
        for (String name : Joining.listInOrder(lay.joins())) {
            Branch behind = JoinPressures.behind(new Meeting(joints, Map.of()).joint(name));
            Spot at = new Spot("join " + name, joinLifts_Pa.getOrDefault(name, 0.0));
            for (ApplianceLoss loss : behind.entry()) {
                at = through(at, loss);
            }
            leg(behind.leg(), at);
        }
        return network;
    }

    private void leg(Leg leg, Spot start) {
        double extra = leg.extra_Pa(1);
        Spot at = extra > 0 ? linked(start, new Square(extra)) : start;
        for (int i = 0; i < leg.runs().size(); i++) {
            Run run = leg.runs().get(i);
            Law law = run.hose().over(run.length());
            double lift_Pa = at.lift_Pa() + Splits.lift_Pa(run.rise());
            if (leg.end() instanceof End.Join join && i == leg.runs().size() - 1) {
                join(join.name(), new Spot(at.node(), lift_Pa), law);
                return;
            }
            at = new Spot(linked(at, law).node(), lift_Pa);
        }
        end(leg.end(), at);
    }

    /** The last hose into a join; the siamese's own loss stands behind it. */
    private void join(String name, Spot start, Law hose) {
        joinLifts_Pa.put(name, start.lift_Pa());
        Spot at = start;
        Joint joint = new Meeting(joints, Map.of()).joint(name);
        Optional<ApplianceLoss> perLine = joint.appliance()
                .filter(named -> named.per() == Appliance.Per.LEG)
                .map(Appliance::loss);
        if (perLine.isPresent()) {
            at = through(at, perLine.get());
        }
        network.link("hose " + count++, at.node(), "join " + name, new OneWay(hose));
    }

    private void end(End end, Spot start) {
        if (end instanceof End.Outlet outlet) {
            if (!outlet.shut()) {
                tip("tip " + outlet.id(), outlet.tip(), start);
            }
            return;
        }
        if (end instanceof End.InlineEductor || end instanceof End.Reducer) {
            throw new InvalidInput("a piece in one of several states", Splits.name(end), "a lay without it", "");
        }
        Spot at = new Spot(start.node(), start.lift_Pa() + Splits.lift_Pa(end));
        at = Splits.total(end).isPresent() ? through(at, Splits.total(end).get()) : at;
        if (end instanceof End.Parted parted) {
            tip(parted.id(), parted.opening(), at);
        }
        for (Branch branch : Splits.branches(end)) {
            if (branch.most_Pa() < Double.POSITIVE_INFINITY) {
                throw new InvalidInput("a piece in one of several states", "reducer", "a lay without it", "");
            }
            Spot into = new Spot(at.node(), at.lift_Pa() + branch.before_Pa());
            for (ApplianceLoss loss : branch.entry()) {
                into = through(into, loss);
            }
            leg(branch.leg(), into);
        }
    }

    private void tip(String name, Tip tip, Spot at) {
        String air = name + " air";
        network.fixed(air, at.lift_Pa());
        Law law = tip instanceof Automatic held
                ? new HeldTip(
                        held.holds().pascals(),
                        held.from().cubicMetresPerSecond(),
                        held.to().cubicMetresPerSecond())
                : new Square(tip.pressure_Pa(1));
        network.link(name, at.node(), air, new OneWay(law));
    }

    private Spot through(Spot at, ApplianceLoss loss) {
        if (loss instanceof ApplianceLoss.Rule rule) {
            return linked(
                    at, new Allowance(rule.allowance().pascals(), rule.from().cubicMetresPerSecond()));
        }
        double k = loss.loss_Pa(1);
        return k > 0 ? linked(at, new Square(k)) : at;
    }

    private Spot linked(Spot at, Law law) {
        String node = "node " + count++;
        network.free(node);
        network.link("piece " + count++, at.node(), node, law);
        return new Spot(node, at.lift_Pa());
    }
}
