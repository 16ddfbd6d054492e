package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.network.Derivatives;
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

    /** A loss far below what any piping has [Pa s2/m6]. */
    private static final double NEXT_TO_NOTHING = 1;

    private final Network network = new Network();
    private final Map<String, Joint> joints;
    private final Map<String, Double> joinLifts_Pa = new LinkedHashMap<>();
    private final KitNumbers numbers = new KitNumbers();
    private int count;

    private LayNetwork(Map<String, Joint> joints) {
        this.joints = joints;
    }

    /** A lay's network, solved.
     *
     * @param state it
     * @param numbers where the kit's numbers stand in it
     */
    record Solved(NetworkState state, KitNumbers numbers) {
        Derivatives ofTip(String outlet) {
            return state.ofFlow("tip " + outlet);
        }

        /** How an answer moves with the pump pressure [answer per Pa]. */
        double byPump(Derivatives answer) {
            return answer.byFixedHead(PUMP);
        }

        /** How an answer moves with a number of the kit [answer per SI unit of it]. */
        double by(Derivatives answer, String term) {
            return numbers.slope(answer, state, term);
        }
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
    public static Map<String, Flow> flows(Lay lay, Pressure pump) {
        NetworkState state = solved(lay, pump).state();
        Map<String, Flow> flows = new LinkedHashMap<>();
        for (End.Outlet outlet : lay.outlets()) {
            if (!outlet.shut()) {
                flows.put(outlet.id(), new Flow(state.flow_m3s("tip " + outlet.id())));
            }
        }
        return flows;
    }

    /** True where a lay has a piece in one of several states. */
    static boolean hasStates(Lay lay) {
        return lay.lines().stream().anyMatch(line -> hasStates(line.leg().end()))
                || lay.joins().values().stream()
                        .anyMatch(joint -> hasStates(joint.leg().end()));
    }

    private static boolean hasStates(End end) {
        if (end instanceof End.InlineEductor || end instanceof End.Reducer) {
            return true;
        }
        return Splits.branches(end).stream()
                .anyMatch(branch -> branch.most_Pa() < Double.POSITIVE_INFINITY
                        || hasStates(branch.leg().end()));
    }

    /** The lay's network at a held pump pressure.
     *
     * @throws InvalidInput a piece that is in one of several states; it is named
     */
    static Solved solved(Lay laid, Pressure pump) {
        Lay lay = Bursts.opened(laid);
        LayNetwork made = new LayNetwork(lay.joins());
        made.network.fixed(PUMP, pump.pascals());
        lay.joins().keySet().forEach(name -> made.network.free("join " + name));
        for (Lay.FromDischarge line : lay.lines()) {
            made.leg(line.leg(), made.piping(line.discharge()));
        }
        return new Solved(NetworkSolver.solve(made.behindJoins(lay)), made.numbers);
    }

    /** Behind a discharge; piping of which only an error is known stands there too, so that the error has a place. */
    private Spot piping(Discharge discharge) {
        if (discharge.loss().isEmpty()) {
            return new Spot(PUMP, 0);
        }
        double k = Math.max(discharge.lossOrNone().k(), NEXT_TO_NOTHING);
        Spot behind = linked(new Spot(PUMP, 0), new Square(k));
        numbers.piping(discharge.id(), lastPiece());
        return behind;
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
                numbers.hose(run, join(join.name(), new Spot(at.node(), lift_Pa), law));
                return;
            }
            at = new Spot(linked(at, law).node(), lift_Pa);
            numbers.hose(run, lastPiece());
        }
        end(leg.end(), at);
    }

    /** The last hose into a join, by the name of its link; the siamese's own loss stands before it. */
    private String join(String name, Spot start, Law hose) {
        joinLifts_Pa.put(name, start.lift_Pa());
        Spot at = start;
        Joint joint = new Meeting(joints, Map.of()).joint(name);
        Optional<ApplianceLoss> perLine = joint.appliance()
                .filter(named -> named.per() == Appliance.Per.LEG)
                .map(Appliance::loss);
        if (perLine.isPresent()) {
            at = through(at, perLine.get());
        }
        String link = "hose " + count++;
        network.link(link, at.node(), "join " + name, new OneWay(hose));
        return link;
    }

    private void end(End end, Spot start) {
        if (end instanceof End.Outlet outlet) {
            if (!outlet.shut()) {
                numbers.tip(outlet, tip("tip " + outlet.id(), outlet.tip(), start));
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

    /** A tip, by the name of its link with its law. */
    private KitNumbers.Lawful tip(String name, Tip tip, Spot at) {
        String air = name + " air";
        network.fixed(air, at.lift_Pa());
        Law law = tip instanceof Automatic held
                ? new HeldTip(
                        held.holds().pascals(),
                        held.from().cubicMetresPerSecond(),
                        held.to().cubicMetresPerSecond())
                : new Square(tip.pressure_Pa(1));
        network.link(name, at.node(), air, new OneWay(law));
        return new KitNumbers.Lawful(name, law);
    }

    private String lastPiece() {
        return "piece " + (count - 1);
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
