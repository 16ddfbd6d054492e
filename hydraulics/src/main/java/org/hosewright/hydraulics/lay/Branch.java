package org.hosewright.hydraulics.lay;

import java.util.List;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Numbers;

/** A leg with what it loses before its hose, as a rising curve of flow against the pressure at its start.
 *
 * <p>At a wye the pressure is the one unknown: the legs' flows rise with it, and so does the pressure that their sum
 * needs at the start of the hose before it. Water does not flow back from a tip.
 *
 * @param entry what is lost at this leg's flow before its hose
 * @param leg the leg
 */
record Branch(List<ApplianceLoss> entry, Leg leg) {
    /** How near two pressures count as one [1]. */
    private static final double SAME = 1e-12;

    Branch {
        entry = List.copyOf(entry);
    }

    /** What a leg needs at its start for what was asked at its tips, and the flow that it then takes. */
    record Need(double start_Pa, double flow_m3s) {}

    /** The legs of the wye that it ends in. */
    List<Branch> branches(End.Wye wye) {
        return wye.legs().stream()
                .map(one -> new Branch(wye.perLeg().stream().toList(), one))
                .toList();
    }

    /** The flow that a pressure at the start drives [m3/s]. */
    double flow_m3s(double start_Pa) {
        if (!leg.isOpen()) {
            return 0;
        }
        if (leg.end() instanceof End.Wye wye) {
            double wye_Pa = wye_Pa(wye, start_Pa);
            return sum_m3s(branches(wye), wye_Pa);
        }
        Tip tip = ((End.Outlet) leg.end()).tip();
        double drop_Pa = start_Pa - leg.lift_Pa();
        if (drop_Pa <= 0) {
            return 0;
        }
        if (isSquare(tip)) {
            return Math.sqrt(drop_Pa / (tip.pressure_Pa(1) + losses_Pa(1)));
        }
        double high = tip.flow_m3s(drop_Pa);
        while (tip.pressure_Pa(high) + losses_Pa(high) < drop_Pa) {
            high *= 2;
        }
        return Rising.zero(q -> tip.pressure_Pa(q) + losses_Pa(q) - drop_Pa, 0, high, 0);
    }

    /** True where everything from the start to the tip grows with the square of the flow. */
    private boolean isSquare(Tip tip) {
        return !(tip instanceof Automatic) && entry.stream().allMatch(ApplianceLoss.Quadratic.class::isInstance);
    }

    /** The pressure at the wye that it ends in [Pa]. */
    double wye_Pa(End.Wye wye, double start_Pa) {
        List<Branch> branches = branches(wye);
        double high = start_Pa - leg.lift_Pa();
        double step = Math.max(1, Math.abs(high));
        double low = Math.min(0, high);
        while (sum_m3s(branches, low) > 0 && over_Pa(branches, low, high) > 0) {
            low -= step;
            step *= 2;
        }
        return Rising.zero(p -> over_Pa(branches, p, high), low, high, Math.abs(start_Pa));
    }

    private double over_Pa(List<Branch> branches, double wye_Pa, double still_Pa) {
        return wye_Pa + losses_Pa(sum_m3s(branches, wye_Pa)) - still_Pa;
    }

    /** What is lost from the start to the end at a flow, rise apart [Pa]. */
    double losses_Pa(double flow_m3s) {
        double sum = leg.hose_Pa(flow_m3s) + total_Pa(flow_m3s);
        for (ApplianceLoss loss : entry) {
            sum += loss.loss_Pa(flow_m3s);
        }
        return sum;
    }

    private double total_Pa(double flow_m3s) {
        return leg.end() instanceof End.Wye wye
                ? wye.perTotal().map(loss -> loss.loss_Pa(flow_m3s)).orElse(0.0)
                : 0;
    }

    /** The least start pressure that gives every open tip what is asked, or more. */
    Need need(Ask ask) {
        double end_Pa;
        double flow_m3s;
        if (leg.end() instanceof End.Wye wye) {
            List<Branch> open =
                    branches(wye).stream().filter(b -> b.leg().isOpen()).toList();
            List<Need> needs = open.stream().map(branch -> branch.need(ask)).toList();
            end_Pa = needs.stream().mapToDouble(Need::start_Pa).max().orElse(0);
            flow_m3s = 0;
            for (int i = 0; i < open.size(); i++) {
                boolean sets = Numbers.isAtLeast(needs.get(i).start_Pa(), end_Pa - SAME * Math.abs(end_Pa));
                flow_m3s += sets ? needs.get(i).flow_m3s() : open.get(i).flow_m3s(end_Pa);
            }
        } else {
            Tip tip = ((End.Outlet) leg.end()).tip();
            flow_m3s = Asked.flow_m3s((End.Outlet) leg.end(), ask);
            end_Pa = tip.pressure_Pa(flow_m3s);
        }
        return new Need(end_Pa + losses_Pa(flow_m3s) + leg.lift_Pa(), flow_m3s);
    }

    private static double sum_m3s(List<Branch> branches, double start_Pa) {
        double sum = 0;
        for (Branch branch : branches) {
            sum += branch.flow_m3s(start_Pa);
        }
        return sum;
    }
}
