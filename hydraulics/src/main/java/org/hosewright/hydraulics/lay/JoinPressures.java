package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.error.NotConverged;

/** The pressures in the joins of a lay: in each, as much water comes as goes.
 *
 * <p>What comes falls with the pressure in a join and what goes rises with it, so that one join is one bracketed
 * unknown. Several joins are taken in turn, each balanced against the others as they stand, which never leads away
 * from the answer; between the rounds Newton's step is tried and kept where it leaves less out of balance.
 */
final class JoinPressures {
    /** Out of balance by less than this share of all flow counts as balanced [1]: a few last digits. */
    private static final double BALANCED = 1e-13;

    /** Far more rounds than any lay on the ground takes. */
    private static final int MOST_ROUNDS = 2000;

    private final List<Branch> lines;
    private final double pump_Pa;
    private final List<String> names;

    JoinPressures(List<Branch> lines, double pump_Pa, Map<String, Joint> joints) {
        this.lines = List.copyOf(lines);
        this.pump_Pa = pump_Pa;
        this.names = Joining.listInOrder(joints);
    }

    /** What follows a join. */
    static Branch behind(Joint joint) {
        List<ApplianceLoss> entry =
                joint.appliance().filter(named -> named.per() == Appliance.Per.TOTAL).map(Appliance::loss).stream()
                        .toList();
        return new Branch(entry, 0, Double.POSITIVE_INFINITY, joint.leg());
    }

    Meeting solve(Map<String, Joint> joints) {
        Map<String, Double> start = new LinkedHashMap<>();
        names.forEach(name -> start.put(name, pump_Pa / 2));
        Meeting meeting = new Meeting(joints, start);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            for (String name : names) {
                meeting = balanced(name, meeting);
            }
            if (names.size() < 2 || isBalanced(meeting)) {
                return meeting;
            }
            Meeting stepped = new JoinStep(names, this::over).from(meeting);
            meeting = worst(stepped) < worst(meeting) ? stepped : meeting;
        }
        throw new NotConverged("The flows into the joins of the lay were not found.", names.get(0));
    }

    private Meeting balanced(String name, Meeting meeting) {
        double at = meeting.pressure_Pa(name);
        double step = Math.max(1, Math.abs(pump_Pa));
        double low = Math.min(at, pump_Pa);
        double high = Math.max(at, pump_Pa);
        while (over(name, meeting.with(name, low)) > 0) {
            low -= step;
            step *= 2;
        }
        while (over(name, meeting.with(name, high)) < 0) {
            high += step;
            step *= 2;
        }
        return meeting.with(name, Rising.zero(p -> over(name, meeting.with(name, p)), low, high, Math.abs(pump_Pa)));
    }

    /** What goes out of a join more than comes in [m3/s]. */
    private double over(String name, Meeting meeting) {
        double out = behind(meeting.joint(name)).flow_m3s(meeting.pressure_Pa(name), meeting);
        return out - into(meeting).getOrDefault(name, 0.0);
    }

    /** What comes into each join [m3/s]. */
    private Map<String, Double> into(Meeting meeting) {
        Map<String, Double> into = new LinkedHashMap<>();
        lines.forEach(line -> line.addInto(into, pump_Pa, meeting));
        for (String name : names) {
            behind(meeting.joint(name)).addInto(into, meeting.pressure_Pa(name), meeting);
        }
        return into;
    }

    private double worst(Meeting meeting) {
        double worst = 0;
        for (String name : names) {
            worst = Math.max(worst, Math.abs(over(name, meeting)));
        }
        return worst;
    }

    private boolean isBalanced(Meeting meeting) {
        double sum = 0;
        for (double into : into(meeting).values()) {
            sum += into;
        }
        return worst(meeting) <= BALANCED * sum;
    }
}
