package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Lay.FromDischarge;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Gate;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** Lines of a lay that meet in joins, or one line that does not; each discharge of it sees the same pressure.
 *
 * @param lines the lines
 * @param joins the joins that they lead to
 */
record LineGroup(List<FromDischarge> lines, Map<String, Joint> joins) {
    /** Beyond every pump [Pa]. */
    private static final double MOST_PA = 2000 * Constants.PSI_PA;

    LineGroup {
        lines = List.copyOf(lines);
    }

    /** The groups of a lay, in the order of their first lines. */
    static List<LineGroup> listOf(Lay lay) {
        List<LineGroup> groups = new ArrayList<>();
        List<FromDischarge> left = new ArrayList<>(lay.lines());
        while (!left.isEmpty()) {
            Map<String, Joint> joins = new LinkedHashMap<>();
            List<FromDischarge> lines = new ArrayList<>();
            grow(left.remove(0), lines, joins, lay);
            for (int i = 0; i < left.size(); i++) {
                if (meets(left.get(i), joins, lay)) {
                    grow(left.remove(i), lines, joins, lay);
                    i = -1;
                }
            }
            groups.add(new LineGroup(lines, joins));
        }
        return groups;
    }

    private static boolean meets(FromDischarge line, Map<String, Joint> joins, Lay lay) {
        Map<String, Joint> own = new LinkedHashMap<>();
        reach(line.leg(), own, lay);
        return own.keySet().stream().anyMatch(joins::containsKey);
    }

    private static void grow(FromDischarge line, List<FromDischarge> lines, Map<String, Joint> joins, Lay lay) {
        lines.add(line);
        reach(line.leg(), joins, lay);
    }

    private static void reach(Leg leg, Map<String, Joint> joins, Lay lay) {
        for (String name : leg.joins()) {
            Joint joint = lay.joins().get(name);
            if (joint != null && joins.put(name, joint) == null) {
                reach(joint.leg(), joins, lay);
            }
        }
    }

    /** The group as a lay of its own. */
    Lay alone() {
        return new Lay(lines, joins, Optional.empty(), new PumpMode.Governor());
    }

    /** Every outlet of its lines and behind its joins, shut ones too. */
    List<End.Outlet> outlets() {
        List<End.Outlet> all = new ArrayList<>();
        legs().forEach(leg -> all.addAll(leg.outlets()));
        return List.copyOf(all);
    }

    /** How many outlets of it are opened and shut on their own; the tips of one monitor are not. */
    int places() {
        return legs().stream().mapToInt(LineGroup::places).sum();
    }

    private static int places(Leg leg) {
        if (leg.end() instanceof End.Monitor || leg.end() instanceof End.Outlet) {
            return 1;
        }
        return leg.end().legs().stream().mapToInt(LineGroup::places).sum();
    }

    private List<Leg> legs() {
        List<Leg> legs = new ArrayList<>();
        lines.forEach(line -> legs.add(line.leg()));
        joins.values().forEach(joint -> legs.add(joint.leg()));
        return legs;
    }

    boolean isOpen() {
        return legs().stream().anyMatch(Leg::isOpen);
    }

    /** The least pump pressure that gives every open tip what is asked, or more [Pa].
     *
     * @throws InvalidInput lines that meet behind a reducer: no pump pressure gives it
     */
    double need_Pa(Ask ask) {
        if (joins.isEmpty()) {
            FromDischarge line = lines.get(0);
            return Needs.of(LaySolver.branch(line, PointLoss.NONE), ask).start_Pa();
        }
        double high_Pa = 100 * Constants.PSI_PA;
        while (shortBy(high_Pa, ask) < 0) {
            high_Pa *= 2;
            if (high_Pa > MOST_PA) {
                String places = String.join(", ", joins.keySet());
                throw new InvalidInput(
                        "what is asked behind " + places,
                        "more than any pump pressure gives there",
                        "less, or a piece on the way that lets more through",
                        "");
            }
        }
        return Rising.zero(pump_Pa -> shortBy(pump_Pa, ask), 0, high_Pa, high_Pa);
    }

    /** By which share of what is asked the worst tip is above it, negative below [1]. */
    private double shortBy(double pump_Pa, Ask ask) {
        double worst = Double.POSITIVE_INFINITY;
        for (AtTip tip : state(new Pressure(pump_Pa), List.of(), Map.of()).open()) {
            double asked = Asked.flow_m3s(tip.outlet(), ask);
            worst = Math.min(worst, tip.state().flow().cubicMetresPerSecond() / asked - 1);
        }
        return worst;
    }

    /** The group at a pump pressure that stands when everything shuts, with some discharges gated. */
    LayState state(Pressure pump, List<Gate> gates, Map<String, PointLoss> losses) {
        return state(pump, pump, gates, losses);
    }

    /** The group at a pump pressure, with some discharges gated.
     *
     * @param shut the pump pressure with every outlet shut
     */
    LayState state(Pressure pump, Pressure shut, List<Gate> gates, Map<String, PointLoss> losses) {
        List<Branch> branches = new ArrayList<>();
        for (FromDischarge line : lines) {
            branches.add(LaySolver.branch(line, gate(line, losses)));
        }
        Meeting meeting =
                joins.isEmpty() ? Meeting.NONE : new JoinPressures(branches, pump.pascals(), joins).solve(joins);
        Walk walk = new Walk(pump, shut, meeting);
        for (int i = 0; i < branches.size(); i++) {
            walk.along(lines.get(i), gate(lines.get(i), losses), branches.get(i));
        }
        for (String name : Joining.listInOrder(joins)) {
            walk.onFrom(name, JoinPressures.behind(meeting.joint(name)));
        }
        return walk.trace().state(pump, gates);
    }

    private static PointLoss gate(FromDischarge line, Map<String, PointLoss> losses) {
        return losses.getOrDefault(line.discharge().id(), PointLoss.NONE);
    }
}
