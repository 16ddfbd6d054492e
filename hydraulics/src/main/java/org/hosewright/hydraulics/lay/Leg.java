package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.PointLoss;

/** A chain of hose and what it ends in.
 *
 * @param runs hose in laying order; empty where a piece stands straight on another
 * @param end what it ends in
 * @param gate what a gate at its start takes, where it is part shut
 * @param damage what is wrong with its hose
 */
public record Leg(List<Run> runs, End end, Optional<PointLoss> gate, Optional<Damage> damage) {
    public Leg {
        runs = List.copyOf(runs);
    }

    public Leg(List<Run> runs, End end) {
        this(runs, end, Optional.empty(), Optional.empty());
    }

    public Leg withGate(Optional<PointLoss> other) {
        return new Leg(runs, end, other, damage);
    }

    public Leg withDamage(Optional<Damage> other) {
        return new Leg(runs, end, gate, other);
    }

    /** Every outlet that the leg leads to without passing a join, shut ones too, in laying order. */
    public List<End.Outlet> outlets() {
        if (end instanceof End.Outlet outlet) {
            return List.of(outlet);
        }
        return end.legs().stream().flatMap(leg -> leg.outlets().stream()).toList();
    }

    /** The names of the joins that the leg leads to, once for each way. */
    public List<String> joins() {
        if (end instanceof End.Join join) {
            return List.of(join.name());
        }
        return end.legs().stream().flatMap(leg -> leg.joins().stream()).toList();
    }

    /** True where water can leave it by an outlet of its own. */
    public boolean isOpen() {
        return outlets().stream().anyMatch(outlet -> !outlet.shut());
    }

    /** The same leg with every outlet changed. */
    Leg changed(UnaryOperator<End.Outlet> change) {
        if (end instanceof End.Outlet outlet) {
            return new Leg(runs, change.apply(outlet), gate, damage);
        }
        List<Leg> legs = new ArrayList<>();
        end.legs().forEach(leg -> legs.add(leg.changed(change)));
        return new Leg(runs, end.withLegs(legs), gate, damage);
    }

    /** True where all its hose loses with the square of the flow. */
    boolean isSquare() {
        return runs.stream().allMatch(run -> run.hose().law().isEmpty());
    }

    double lift_Pa() {
        return Constants.WATER_PA_PER_M
                * runs.stream().mapToDouble(run -> run.rise().metres()).sum();
    }

    /** Loss of all its hose at a flow, with a gate part shut and a kink [Pa]. */
    double hose_Pa(double flow_m3s) {
        double sum = 0;
        for (Run run : runs) {
            sum += hose_Pa(run, flow_m3s);
        }
        return sum + extra_Pa(flow_m3s);
    }

    /** What a gate part shut and a kink take at a flow [Pa]. */
    double extra_Pa(double flow_m3s) {
        double k = gate.map(PointLoss::k).orElse(0.0);
        k += damage.orElse(null) instanceof Damage.Kink kink ? kink.loss().k() : 0;
        return k * flow_m3s * flow_m3s;
    }

    static double hose_Pa(Run run, double flow_m3s) {
        return run.hose().law().isPresent()
                ? run.hose().over(run.length()).loss_Pa(Math.abs(flow_m3s))
                : run.hose().loss().value().r() * run.length().metres() * flow_m3s * flow_m3s;
    }
}
