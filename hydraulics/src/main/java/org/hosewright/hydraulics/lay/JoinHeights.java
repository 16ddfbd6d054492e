package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Lay.FromDischarge;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** The height of each join above the pump: the same along every line that leads to it. */
final class JoinHeights {
    /** How much two ways may differ [m]: the last digits of a unit conversion. */
    private static final double SAME_M = 1e-6;

    private final Map<String, Double> heights_m = new LinkedHashMap<>();

    private JoinHeights() {}

    /** Refuses a join that stands at two heights. */
    static void check(List<FromDischarge> lines, Map<String, Joint> joins) {
        JoinHeights heights = new JoinHeights();
        lines.forEach(line -> heights.along(line.leg(), 0));
        for (String name : Joining.listInOrder(joins)) {
            Joint joint = joins.get(name);
            Double at_m = heights.heights_m.get(name);
            if (joint != null && at_m != null) {
                heights.along(joint.leg(), at_m);
            }
        }
    }

    private void along(Leg leg, double from_m) {
        double at_m = from_m
                + leg.runs().stream().mapToDouble(run -> run.rise().metres()).sum();
        if (leg.end() instanceof End.Join join) {
            arrive(join.name(), at_m);
        } else if (leg.end() instanceof End.Standpipe standpipe) {
            double foot_m = at_m + standpipe.rise().metres();
            standpipe
                    .floors()
                    .forEach(floor -> along(floor.leg(), foot_m + floor.rise().metres()));
        } else {
            leg.end().legs().forEach(next -> along(next, at_m));
        }
    }

    private void arrive(String name, double at_m) {
        Double before_m = heights_m.putIfAbsent(name, at_m);
        if (before_m != null && Math.abs(before_m - at_m) > SAME_M) {
            throw new InvalidInput(
                    "rise of the lines into join " + name,
                    feet(before_m) + " and " + feet(at_m),
                    "one height: lines that meet end at the same place",
                    "");
        }
    }

    private static String feet(double height_m) {
        return Numbers.plain(Numbers.toNearest(new Length(height_m).feet(), 0.001)) + " ft ("
                + Numbers.plain(Numbers.toNearest(height_m, 0.001)) + " m)";
    }
}
