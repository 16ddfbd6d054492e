package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Numbers;

/** What branches need at their start for what is asked at their tips. */
final class Needs {
    /** How near two pressures count as one [1]. */
    private static final double SAME = 1e-12;

    private Needs() {}

    /** The pressure that a branch needs at its start, and the flow that it then takes. */
    record Need(double start_Pa, double flow_m3s) {}

    /** The least start pressure that gives every open tip what is asked, or more; where a reducer holds less than that,
     * the pressure from which pumping harder changes nothing.
     */
    static Need of(Branch branch, Ask ask) {
        Leg leg = branch.leg();
        Need end = leg.end() instanceof End.Outlet outlet ? atTip(outlet, ask) : behind(branch, ask);
        double in_Pa = end.start_Pa()
                + branch.losses_Pa(end.flow_m3s(), Meeting.NONE)
                + leg.lift_Pa()
                + Splits.lift_Pa(leg.end());
        if (in_Pa > branch.most_Pa()) {
            double start_Pa = branch.most_Pa() + branch.before_Pa();
            return new Need(start_Pa, branch.flow_m3s(start_Pa, Meeting.NONE));
        }
        return new Need(in_Pa + branch.before_Pa(), end.flow_m3s());
    }

    private static Need atTip(End.Outlet outlet, Ask ask) {
        Tip tip = outlet.tip();
        double flow_m3s = Asked.flow_m3s(outlet, ask);
        return new Need(tip.pressure_Pa(flow_m3s), flow_m3s);
    }

    private static Need behind(Branch branch, Ask ask) {
        End end = branch.leg().end();
        Map<Branch, Need> needs = new LinkedHashMap<>();
        for (Branch one : Splits.branches(end)) {
            if (one.leg().isOpen()) {
                needs.put(one, of(one, ask));
            }
        }
        double end_Pa =
                needs.values().stream().mapToDouble(Need::start_Pa).max().orElse(0);
        if (end instanceof End.InlineEductor eductor) {
            double through = needs.values().iterator().next().flow_m3s();
            double back_Pa = end_Pa / eductor.made().backShare().value();
            return new Need(Math.max(eductor.made().inlet_Pa(through), back_Pa), through);
        }
        double flow_m3s = end instanceof End.Parted parted ? parted.opening().flow_m3s(end_Pa) : 0;
        for (Branch one : Splits.branches(end)) {
            Need need = needs.get(one);
            boolean sets = need != null && Numbers.isAtLeast(need.start_Pa(), end_Pa - SAME * Math.abs(end_Pa));
            flow_m3s += need != null && sets ? need.flow_m3s() : one.flow_m3s(end_Pa, Meeting.NONE);
        }
        return new Need(end_Pa, flow_m3s);
    }
}
