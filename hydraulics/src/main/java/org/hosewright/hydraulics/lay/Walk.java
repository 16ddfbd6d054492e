package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Station;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** The walk along a line from the pump to each of its tips, with the pressure behind every piece. */
final class Walk {
    private final Discharge discharge;
    private final Pressure pump;
    private final double piping_Pa;
    private final List<AtTip> tips = new ArrayList<>();

    /** How far a walk has come.
     *
     * @param runs hose behind it
     * @param stations pressures behind it
     * @param hose_Pa what that hose lost
     * @param lift_Pa what its rise took
     */
    private record Way(List<Run> runs, List<Station> stations, double hose_Pa, double lift_Pa) {
        double pressure_Pa() {
            return stations.get(stations.size() - 1).pressure().pascals();
        }

        Way behind(String what, double pressure_Pa, double flow_m3s) {
            return behind(what, new Length(0), pressure_Pa, flow_m3s);
        }

        private Way behind(String what, Length length, double pressure_Pa, double flow_m3s) {
            List<Station> more = new ArrayList<>(stations);
            more.add(new Station(what, length, new Pressure(pressure_Pa), new Flow(flow_m3s)));
            return new Way(runs, more, hose_Pa, lift_Pa);
        }

        Way behind(Run run, Optional<Appliance> end, double flow_m3s) {
            double loss_Pa = Leg.hose_Pa(run, flow_m3s);
            double up_Pa = Constants.WATER_PA_PER_M * run.rise().metres();
            Way way = behind(run.hose().id(), run.length(), pressure_Pa() - loss_Pa, flow_m3s);
            if (up_Pa != 0) {
                way = way.behind(up_Pa > 0 ? "rise" : "fall", way.pressure_Pa() - up_Pa, flow_m3s);
            }
            List<Run> more = new ArrayList<>(runs);
            more.add(new Run(run.hose(), run.length(), run.rise(), end));
            return new Way(more, way.stations(), hose_Pa + loss_Pa, lift_Pa + up_Pa);
        }
    }

    private Walk(Discharge discharge, Pressure pump, double flow_m3s) {
        this.discharge = discharge;
        this.pump = pump;
        this.piping_Pa = discharge.lossOrNone().at(new Flow(flow_m3s)).pascals();
    }

    static List<AtTip> of(Discharge discharge, PointLoss gate, Branch branch, Pressure pump) {
        double flow_m3s = branch.flow_m3s(pump.pascals());
        Walk walk = new Walk(discharge, pump, flow_m3s);
        Way way = new Way(List.of(), List.of(), 0, 0)
                .behind("pump", pump.pascals(), flow_m3s)
                .behind(discharge.id() + " piping", pump.pascals() - walk.piping_Pa, flow_m3s);
        if (gate.k() > 0) {
            double gate_Pa = gate.at(new Flow(flow_m3s)).pascals();
            way = way.behind(discharge.id() + " gate", way.pressure_Pa() - gate_Pa, flow_m3s);
        }
        walk.along(branch.leg(), branch, way, pump.pascals());
        return walk.tips;
    }

    private void along(Leg leg, Branch branch, Way start, double start_Pa) {
        double flow_m3s = branch.flow_m3s(start_Pa);
        Optional<Appliance> fitting = leg.end() instanceof End.Wye wye ? wye.appliance() : Optional.empty();
        Way way = start;
        for (int i = 0; i < leg.runs().size(); i++) {
            boolean last = i == leg.runs().size() - 1;
            way = way.behind(leg.runs().get(i), last ? fitting : Optional.empty(), flow_m3s);
        }
        if (leg.end() instanceof End.Wye wye) {
            double wye_Pa = flow_m3s > 0 ? branch.wye_Pa(wye, start_Pa) : way.pressure_Pa();
            if (wye.perTotal().isPresent()) {
                way = way.behind(name(wye), wye_Pa, flow_m3s);
            }
            for (Branch next : branch.branches(wye)) {
                into(wye, next, way, wye_Pa);
            }
        } else {
            tips.add(tip((End.Outlet) leg.end(), way, flow_m3s));
        }
    }

    private void into(End.Wye wye, Branch next, Way way, double wye_Pa) {
        double flow_m3s = next.flow_m3s(wye_Pa);
        Way behind = way;
        if (wye.perLeg().isPresent()) {
            behind = way.behind(name(wye), wye_Pa - loss_Pa(wye, next, wye_Pa, flow_m3s), flow_m3s);
        }
        along(next.leg(), next, behind, wye_Pa);
    }

    /** The wye's loss on the way into a leg; at a rule's threshold whatever the tip leaves of it. */
    private static double loss_Pa(End.Wye wye, Branch next, double wye_Pa, double flow_m3s) {
        if (flow_m3s > 0 && next.leg().end() instanceof End.Outlet outlet) {
            double behind_Pa = outlet.tip().pressure_Pa(flow_m3s)
                    + next.leg().hose_Pa(flow_m3s)
                    + next.leg().lift_Pa();
            return wye_Pa - behind_Pa;
        }
        return wye.perLeg().orElseThrow().loss_Pa(flow_m3s);
    }

    private AtTip tip(End.Outlet outlet, Way way, double flow_m3s) {
        double tip_Pa = flow_m3s > 0 ? outlet.tip().pressure_Pa(flow_m3s) : way.pressure_Pa();
        double rest_Pa = pump.pascals() - piping_Pa - way.hose_Pa() - way.lift_Pa() - tip_Pa;
        LineState state = new LineState(
                pump,
                new Flow(flow_m3s),
                new Pressure(tip_Pa),
                new Force(outlet.tip().reaction_N(tip_Pa, flow_m3s)),
                new Pressure(way.hose_Pa()),
                new Pressure(piping_Pa),
                new Pressure(rest_Pa),
                new Pressure(way.lift_Pa()));
        Line path = new Line(discharge, way.runs(), outlet.nozzle(), outlet.setting());
        return new AtTip(outlet, path, state, way.stations());
    }

    private static String name(End.Wye wye) {
        return wye.appliance().map(Appliance::id).orElse("wye");
    }
}
