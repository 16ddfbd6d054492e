package org.hosewright.hydraulics.lay;

import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.quantity.Numbers;

/** A leg with what lies before its hose, as a rising curve of flow against the pressure at its start.
 *
 * <p>Where a hose parts the pressure there is the one unknown: the flows behind it rise with it, and so does the
 * pressure that their sum needs at the start of the hose. Reducers and eductors are rising curves too. Water does not
 * flow back from a tip or a join.
 *
 * @param entry what is lost at this leg's flow before its hose
 * @param before_Pa what a height before its hose takes [Pa]
 * @param most_Pa the most that a reducer lets stand behind that height [Pa]
 * @param leg the leg
 */
record Branch(List<ApplianceLoss> entry, double before_Pa, double most_Pa, Leg leg) {
    /** More than any hose carries [m3/s]: a way without any loss is no hose. */
    private static final double MOST_M3S = 1e6;

    Branch {
        entry = List.copyOf(entry);
    }

    /** The pressure that a pressure at the start leaves behind height and reducer, nothing lost [Pa]. */
    double in_Pa(double start_Pa) {
        return Math.min(start_Pa - before_Pa, most_Pa);
    }

    /** True where water may run: an outlet is open, a hose has parted, or a join takes it. */
    boolean leads() {
        return leads(leg);
    }

    private static boolean leads(Leg leg) {
        if (leg.end() instanceof End.Outlet outlet) {
            return !outlet.shut();
        }
        boolean takes = leg.end() instanceof End.Join || leg.end() instanceof End.Parted;
        return takes || leg.end().legs().stream().anyMatch(Branch::leads);
    }

    /** The flow that a pressure at the start drives [m3/s]. */
    double flow_m3s(double start_Pa, Meeting joins) {
        if (!leads()) {
            return 0;
        }
        if (leg.end() instanceof End.Outlet || leg.end() instanceof End.Join) {
            return lastFlow_m3s(in_Pa(start_Pa) - leg.lift_Pa(), joins);
        }
        return behind_m3s(end_Pa(start_Pa, joins), joins);
    }

    /** The flow of a chain that ends in a tip or a join. */
    private double lastFlow_m3s(double drop_Pa, Meeting joins) {
        double still_Pa = lastStill_Pa(joins);
        if (drop_Pa <= still_Pa) {
            return 0;
        }
        boolean square = leg.isSquare() && entry.stream().allMatch(ApplianceLoss.Quadratic.class::isInstance);
        if (square && leg.end() instanceof End.Outlet outlet && !(outlet.tip() instanceof Automatic)) {
            return Math.sqrt(drop_Pa / (outlet.tip().pressure_Pa(1) + losses_Pa(1, joins)));
        }
        double high = 1e-3;
        while (last_Pa(high, joins) < drop_Pa && high < MOST_M3S) {
            high *= 2;
        }
        return Rising.zero(q -> last_Pa(q, joins) - drop_Pa, 0, high, 0);
    }

    /** The pressure that holds the water back in a chain's end while nothing runs [Pa]. */
    private double lastStill_Pa(Meeting joins) {
        return leg.end() instanceof End.Join join ? joins.pressure_Pa(join.name()) : 0;
    }

    /** What a flow needs behind the rise of a chain that ends in a tip or a join [Pa]. */
    private double last_Pa(double flow_m3s, Meeting joins) {
        double end_Pa =
                leg.end() instanceof End.Outlet outlet ? outlet.tip().pressure_Pa(flow_m3s) : lastStill_Pa(joins);
        return end_Pa + losses_Pa(flow_m3s, joins);
    }

    /** The sum of the flows behind the piece that the hose ends in, at the pressure in that piece [m3/s]. */
    double behind_m3s(double end_Pa, Meeting joins) {
        double sum = 0;
        if (leg.end() instanceof End.InlineEductor eductor) {
            Branch behind = Splits.branches(eductor).get(0);
            double held = behind.flow_m3s(eductor.made().mostBack_Pa(end_Pa), joins);
            return Math.min(eductor.made().free_m3s(end_Pa), held);
        }
        if (leg.end() instanceof End.Parted parted) {
            sum = parted.opening().flow_m3s(end_Pa);
        }
        for (Branch branch : Splits.branches(leg.end())) {
            sum += branch.flow_m3s(end_Pa, joins);
        }
        return sum;
    }

    /** The pressure in the piece that the hose ends in [Pa]. */
    double end_Pa(double start_Pa, Meeting joins) {
        double high = in_Pa(start_Pa) - leg.lift_Pa() - Splits.lift_Pa(leg.end());
        double step = Math.max(1, Math.abs(high));
        double low = Math.min(0, high);
        while (behind_m3s(low, joins) > 0 && over_Pa(low, high, joins) > 0) {
            low -= step;
            step *= 2;
        }
        return Rising.zero(p -> over_Pa(p, high, joins), low, high, Math.abs(start_Pa));
    }

    private double over_Pa(double end_Pa, double still_Pa, Meeting joins) {
        return end_Pa + losses_Pa(behind_m3s(end_Pa, joins), joins) - still_Pa;
    }

    /** What is lost from the start to the piece at the end, that of its sum included, heights apart [Pa]. */
    double losses_Pa(double flow_m3s, Meeting joins) {
        double sum = leg.hose_Pa(flow_m3s);
        if (leg.end() instanceof End.Join join) {
            sum += joins.perLine_Pa(join.name(), flow_m3s);
        }
        sum += Splits.total(leg.end()).map(loss -> loss.loss_Pa(flow_m3s)).orElse(0.0);
        for (ApplianceLoss loss : entry) {
            sum += loss.loss_Pa(flow_m3s);
        }
        return sum;
    }

    /** Adds to each join what runs into it from here [m3/s]. */
    void addInto(Map<String, Double> joined, double start_Pa, Meeting joins) {
        if (leg.joins().isEmpty()) {
            return;
        }
        if (leg.end() instanceof End.Join join) {
            joined.merge(join.name(), flow_m3s(start_Pa, joins), Double::sum);
            return;
        }
        double end_Pa = back_Pa(end_Pa(start_Pa, joins), joins);
        Splits.branches(leg.end()).forEach(branch -> branch.addInto(joined, end_Pa, joins));
    }

    /** The pressure that the branches see where so much stands in the piece before them [Pa]. */
    double back_Pa(double end_Pa, Meeting joins) {
        if (!(leg.end() instanceof End.InlineEductor eductor)) {
            return end_Pa;
        }
        double most_Pa = eductor.made().mostBack_Pa(end_Pa);
        double free = eductor.made().free_m3s(end_Pa);
        Branch behind = Splits.branches(eductor).get(0);
        if (!Numbers.isAtLeast(behind.flow_m3s(most_Pa, joins), free)) {
            return most_Pa;
        }
        return Rising.zero(p -> behind.flow_m3s(p, joins) - free, Math.min(0, most_Pa), most_Pa, most_Pa);
    }
}
