package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Lay.FromDischarge;

/** The joins of a lay: which there are, that lines lead to each, and the order that water reaches them in. */
final class Joining {
    private Joining() {}

    /** Refuses joins that are not described, that fewer than two lines enter, or that lead back into themselves. */
    static void check(List<FromDischarge> lines, Map<String, Joint> joins) {
        Map<String, Integer> entered = new LinkedHashMap<>();
        for (FromDischarge line : lines) {
            line.leg().joins().forEach(name -> entered.merge(name, 1, Integer::sum));
        }
        for (Joint joint : joins.values()) {
            joint.leg().joins().forEach(name -> entered.merge(name, 1, Integer::sum));
        }
        for (String name : entered.keySet()) {
            if (!joins.containsKey(name)) {
                throw new InvalidInput("join", name, "a join that stands under joins", "");
            }
        }
        for (String name : joins.keySet()) {
            int lead = entered.getOrDefault(name, 0);
            if (lead < 2) {
                throw new InvalidInput(
                        "join " + name, lead == 0 ? "no line" : "one line", "two lines or more that end in it", "");
            }
        }
        listInOrder(joins);
        lines.forEach(line -> requireHose(line.leg()));
        joins.values().forEach(joint -> requireHose(joint.leg()));
        JoinHeights.check(lines, joins);
    }

    /** Refuses a way into a join that loses nothing: what runs through it could not be told. */
    private static void requireHose(Leg leg) {
        if (leg.end() instanceof End.Join join && leg.runs().isEmpty()) {
            throw new InvalidInput("hose of a line into join " + join.name(), "", "hose in laying order", "");
        }
        leg.end().legs().forEach(Joining::requireHose);
    }

    /** The names of the joins, each after all that lead to it.
     *
     * @throws InvalidInput one leads back into itself
     */
    static List<String> listInOrder(Map<String, Joint> joins) {
        List<String> order = new ArrayList<>();
        for (String name : joins.keySet()) {
            visit(name, joins, order, new LinkedHashSet<>());
        }
        List<String> fromStart = new ArrayList<>();
        for (int i = order.size() - 1; i >= 0; i--) {
            fromStart.add(order.get(i));
        }
        return List.copyOf(fromStart);
    }

    private static void visit(String name, Map<String, Joint> joins, List<String> order, Set<String> way) {
        if (order.contains(name)) {
            return;
        }
        if (!way.add(name)) {
            throw new InvalidInput("join", name, "a join that does not lead back into itself", "");
        }
        Joint joint = joins.get(name);
        if (joint != null) {
            joint.leg().joins().forEach(next -> visit(next, joins, order, way));
        }
        way.remove(name);
        order.add(name);
    }
}
