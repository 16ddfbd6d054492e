package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Lost;
import org.hosewright.hydraulics.lay.LayState.Reduced;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a walk has met, each piece once, in laying order. */
final class Trace {
    private final List<AtTip> tips = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Reduced> reducers = new ArrayList<>();
    private final List<FoamState> foam = new ArrayList<>();
    private final List<Lost> bursts = new ArrayList<>();
    private final List<LayState.Posted> posted = new ArrayList<>();
    private final Map<String, Flow> flows = new LinkedHashMap<>();

    /** The way behind a run of hose. */
    Way hose(Way way, Run run, Optional<Appliance> fitting, double flow_m3s) {
        Way behind = way.behind(run, fitting, flow_m3s);
        add(new Piece(
                way.place(),
                run.hose().id(),
                Optional.of(run),
                Optional.empty(),
                new Flow(flow_m3s),
                new Pressure(way.pressure_Pa()),
                new Pressure(Splits.lift_Pa(run.rise())),
                new Pressure(behind.pressure_Pa()),
                new Pressure(Math.max(way.still_Pa(), behind.still_Pa()))));
        return behind;
    }

    /** The way behind a piece of no length. */
    Way piece(Way way, String what, double after_Pa, double flow_m3s) {
        return piece(way, what, Optional.empty(), after_Pa, flow_m3s);
    }

    Way piece(Way way, String what, Optional<Appliance> appliance, double after_Pa, double flow_m3s) {
        add(new Piece(
                way.place(),
                what,
                Optional.empty(),
                appliance,
                new Flow(flow_m3s),
                new Pressure(way.pressure_Pa()),
                new Pressure(0),
                new Pressure(after_Pa),
                new Pressure(way.still_Pa())));
        return way.behind(what, after_Pa, flow_m3s);
    }

    private void add(Piece piece) {
        pieces.add(piece);
    }

    void tip(AtTip tip) {
        tips.add(tip);
    }

    void reducer(String name, Branch behind, double before_Pa) {
        boolean active = before_Pa > behind.most_Pa();
        List<String> feeds = behind.leg().outlets().stream().map(End.Outlet::id).toList();
        reducers.add(new Reduced(name, new Pressure(behind.most_Pa()), new Pressure(before_Pa), active, feeds));
    }

    void foam(End.InlineEductor eductor, double inlet_Pa, double back_Pa, double flow_m3s) {
        foam.add(FoamState.of(eductor, new Pressure(inlet_Pa), new Pressure(back_Pa), new Flow(flow_m3s)));
    }

    void lost(End.Parted parted, double flow_m3s) {
        List<String> feeds = parted.leg().outlets().stream().map(End.Outlet::id).toList();
        bursts.add(new Lost(parted.id(), new Flow(flow_m3s), feeds));
    }

    void connection(End.Standpipe standpipe, Way way) {
        standpipe
                .posted()
                .ifPresent(most -> posted.add(new LayState.Posted(way.place(), new Pressure(way.still_Pa()), most)));
    }

    void flows(String discharge, double flow_m3s) {
        flows.put(discharge, new Flow(flow_m3s));
    }

    /** The lay while it flows. */
    LayState state(Pressure pump, List<LayState.Gate> gates) {
        double sum = 0;
        for (Flow flow : flows.values()) {
            sum += flow.cubicMetresPerSecond();
        }
        return new LayState(
                pump,
                new Flow(sum),
                tips,
                gates,
                new LayState.Parts(flows, pieces, reducers, foam, bursts, posted),
                Optional.empty());
    }
}
