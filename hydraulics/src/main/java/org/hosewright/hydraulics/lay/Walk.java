package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** The walk along the lines from the pump to each of the tips, with the pressure behind every piece. */
final class Walk {
    private final Pressure pump;
    private final Pressure shut;
    private final Meeting joins;
    private final Trace trace = new Trace();
    private final Map<String, Way> entered = new LinkedHashMap<>();

    /** @param shut the pump pressure with every outlet shut */
    Walk(Pressure pump, Pressure shut, Meeting joins) {
        this.pump = pump;
        this.shut = shut;
        this.joins = joins;
    }

    /** What was met on the way. */
    Trace trace() {
        return trace;
    }

    /** Walks along a line from its discharge. */
    void along(Lay.FromDischarge line, PointLoss gate, Branch branch) {
        double flow_m3s = branch.flow_m3s(pump.pascals(), joins);
        double piping_Pa = line.discharge().lossOrNone().at(new Flow(flow_m3s)).pascals();
        Way way = trace.piece(
                Way.of(line.discharge(), pump, flow_m3s).withStill(shut.pascals()),
                line.discharge().id() + " piping",
                pump.pascals() - piping_Pa,
                flow_m3s);
        if (gate.k() > 0) {
            double gate_Pa = gate.at(new Flow(flow_m3s)).pascals();
            way = trace.piece(way, line.discharge().id() + " gate", way.pressure_Pa() - gate_Pa, flow_m3s);
        }
        trace.flows(line.discharge().id(), flow_m3s);
        along(branch, way.withPiping(piping_Pa), pump.pascals());
    }

    /** Walks on behind a join that has been entered. */
    void onFrom(String name, Branch behind) {
        double join_Pa = joins.pressure_Pa(name);
        double flow_m3s = behind.flow_m3s(join_Pa, joins);
        Way first = entered.get(name);
        if (first == null) {
            return;
        }
        Optional<Appliance> siamese = joins.joint(name).appliance();
        Way way = first.in(name);
        if (flow_m3s > 0) {
            double after_Pa = join_Pa;
            for (ApplianceLoss loss : behind.entry()) {
                after_Pa -= loss.loss_Pa(flow_m3s);
            }
            way = trace.piece(way, siamese.map(Appliance::id).orElse(name), siamese, after_Pa, flow_m3s);
        }
        along(behind, way, join_Pa);
    }

    private void along(Branch branch, Way start, double start_Pa) {
        double flow_m3s = branch.flow_m3s(start_Pa, joins);
        Leg leg = branch.leg();
        Way way = hurt(leg, start, flow_m3s);
        Optional<Appliance> fitting =
                leg.end() instanceof End.Join join ? joins.joint(join.name()).appliance() : Splits.appliance(leg.end());
        for (int i = 0; i < leg.runs().size(); i++) {
            boolean last = i == leg.runs().size() - 1;
            way = trace.hose(way, leg.runs().get(i), last ? fitting : Optional.empty(), flow_m3s);
        }
        if (leg.end() instanceof End.Outlet outlet) {
            trace.tip(tip(outlet, way, flow_m3s));
        } else if (leg.end() instanceof End.Join join) {
            enter(join.name(), way, flow_m3s);
        } else {
            split(branch, way, start_Pa, flow_m3s);
        }
    }

    /** What a gate at its start and a kink take. */
    private Way hurt(Leg leg, Way start, double flow_m3s) {
        Way way = start;
        if (leg.gate().isPresent()) {
            double loss_Pa = leg.gate().get().at(new Flow(flow_m3s)).pascals();
            way = trace.piece(way, "gate part shut", way.pressure_Pa() - loss_Pa, flow_m3s);
        }
        if (leg.damage().orElse(null) instanceof Damage.Kink kink) {
            double loss_Pa = kink.loss().at(new Flow(flow_m3s)).pascals();
            way = trace.piece(way, "kink", way.pressure_Pa() - loss_Pa, flow_m3s);
        }
        return way;
    }

    /** Of the ways into a join the one that brings water is kept, and the most that any of them can bring shut. */
    private void enter(String name, Way way, double flow_m3s) {
        double per_Pa = joins.perLine_Pa(name, flow_m3s);
        Way arrived = flow_m3s > 0 && per_Pa > 0 ? way.behind(name, way.pressure_Pa() - per_Pa, flow_m3s) : way;
        entered.merge(name, arrived, (before, now) -> {
            Way kept =
                    before.stations().get(before.stations().size() - 1).flow().cubicMetresPerSecond() > 0
                            ? before
                            : now;
            return kept.withStill(Math.max(before.still_Pa(), now.still_Pa()));
        });
    }

    private void split(Branch branch, Way before, double start_Pa, double flow_m3s) {
        End end = branch.leg().end();
        double up_Pa = Splits.lift_Pa(end);
        if (end instanceof End.Standpipe standpipe) {
            trace.connection(standpipe, before);
        }
        Way way = before.lifted(up_Pa, flow_m3s);
        double end_Pa = flow_m3s > 0 ? branch.end_Pa(start_Pa, joins) : way.pressure_Pa();
        if (Splits.total(end).isPresent()) {
            way = trace.piece(way, Splits.name(end), Splits.appliance(end), end_Pa, flow_m3s);
        }
        double back_Pa = flow_m3s > 0 ? branch.back_Pa(end_Pa, joins) : end_Pa;
        if (end instanceof End.InlineEductor eductor) {
            trace.foam(eductor, end_Pa, back_Pa, flow_m3s);
            way = trace.piece(way, eductor.id(), back_Pa, flow_m3s);
        }
        if (end instanceof End.Parted parted) {
            trace.lost(parted, parted.opening().flow_m3s(end_Pa));
        }
        List<Branch> branches = Splits.branches(end);
        for (int i = 0; i < branches.size(); i++) {
            into(branch, i, way.in(place(before.place(), branches, i)), back_Pa);
        }
    }

    /** A leg is called by the tips that it leads to; where those are none of its own, by its place in the piece. */
    private static String place(String before, List<Branch> branches, int index) {
        List<End.Outlet> outlets = branches.get(index).leg().outlets();
        if (branches.size() == 1) {
            return before;
        }
        return outlets.isEmpty()
                ? before + " leg " + (index + 1)
                : String.join("+", outlets.stream().map(End.Outlet::id).toList());
    }

    private void into(Branch from, int index, Way way, double start_Pa) {
        Branch next = Splits.branches(from.leg().end()).get(index);
        double flow_m3s = next.flow_m3s(start_Pa, joins);
        End end = from.leg().end();
        Way behind = way.lifted(next.before_Pa(), flow_m3s);
        double still_Pa = flow_m3s > 0 ? start_Pa - next.before_Pa() : behind.pressure_Pa();
        if (next.most_Pa() < Double.POSITIVE_INFINITY) {
            trace.reducer(Reducers.name(end, index), next, still_Pa);
            double after_Pa = Math.min(next.most_Pa(), still_Pa);
            behind = trace.piece(behind.reduced(next.most_Pa()), Reducers.name(end, index), after_Pa, flow_m3s);
        }
        if (!next.entry().isEmpty()) {
            double after_Pa = behind.pressure_Pa() - entry_Pa(next, behind.pressure_Pa(), flow_m3s);
            behind = trace.piece(behind, name(end, index), Splits.appliance(end), after_Pa, flow_m3s);
        }
        along(next, behind, start_Pa);
    }

    /** What takes something on the way into a leg: a plate is its outlet's. */
    private static String name(End end, int index) {
        return end instanceof End.Standpipe ? Reducers.name(end, index) : Splits.name(end);
    }

    /** What is lost on the way into a leg; at a rule's threshold whatever the tip leaves of it. */
    private double entry_Pa(Branch next, double in_Pa, double flow_m3s) {
        if (flow_m3s > 0 && next.leg().end() instanceof End.Outlet outlet) {
            return in_Pa
                    - outlet.tip().pressure_Pa(flow_m3s)
                    - next.leg().hose_Pa(flow_m3s)
                    - next.leg().lift_Pa();
        }
        double sum = 0;
        for (ApplianceLoss loss : next.entry()) {
            sum += loss.loss_Pa(flow_m3s);
        }
        return sum;
    }

    private AtTip tip(End.Outlet outlet, Way way, double flow_m3s) {
        double tip_Pa = flow_m3s > 0 ? outlet.tip().pressure_Pa(flow_m3s) : way.pressure_Pa();
        Way.Sums sums = way.sums();
        double rest_Pa = pump.pascals() - sums.piping_Pa() - sums.hose_Pa() - sums.lift_Pa() - tip_Pa;
        LineState state = new LineState(
                pump,
                new Flow(flow_m3s),
                new Pressure(tip_Pa),
                new Force(outlet.tip().reaction_N(tip_Pa, flow_m3s)),
                new Pressure(sums.hose_Pa()),
                new Pressure(sums.piping_Pa()),
                new Pressure(rest_Pa),
                new Pressure(sums.lift_Pa()));
        List<Run> runs = way.runs();
        Line path = new Line(way.discharge(), runs, outlet.nozzle(), outlet.setting());
        return new AtTip(outlet, path, state, way.stations());
    }
}
