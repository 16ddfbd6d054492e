package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.lay.Intake.PumpState;
import org.hosewright.hydraulics.lay.Supply.Feed;
import org.hosewright.hydraulics.lay.Supply.SupplyHose;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.supply.TankTime;

/** What is met on the way from the sources to an intake. */
final class SupplyTrace {
    private final List<PumpState> pumps = new ArrayList<>();
    private final List<Piece> hoses = new ArrayList<>();
    private Optional<TankTime> tank = Optional.empty();

    List<PumpState> pumps() {
        return pumps;
    }

    List<Piece> hoses() {
        return hoses;
    }

    Optional<TankTime> tank() {
        return tank;
    }

    /** Walks a supply at the flow of the engine that it feeds. */
    void walk(Supply supply, double flow_m3s) {
        Feeding feeding = new Feeding(supply);
        double intake_Pa = feeding.intake_Pa(flow_m3s);
        int number = 0;
        for (Feed feed : supply.feeds()) {
            number++;
            double own_m3s = supply.feeds().size() == 1 ? flow_m3s : feeding.flow_m3s(feed, intake_Pa);
            String place = supply.feeds().size() == 1 ? "supply" : "supply line " + number;
            if (feed.source() instanceof Source.Pumper pumper) {
                place = pumper.engine().id();
                pumper(pumper, feeding.pump_Pa(pumper, feed, own_m3s), own_m3s);
            }
            if (feed.source() instanceof Source.Tank source && own_m3s > 0) {
                tank = Optional.of(TankTime.of(source.level(), new Flow(own_m3s), source.most()));
            }
            double from_Pa = feeding.source_Pa(feed, own_m3s);
            double still_Pa = feed.source() instanceof Source.Pumper pumper
                    ? feeding.pump_Pa(pumper, feed, own_m3s)
                    : feeding.source_Pa(feed, 0);
            for (SupplyHose line : feed.lines()) {
                double line_m3s = feed.lines().size() == 1 ? own_m3s : Feeding.line_m3s(line, from_Pa - intake_Pa);
                hoses(place, line, line_m3s, new Start(from_Pa, still_Pa));
            }
        }
    }

    /** The pressures at the start of a line, flowing and with everything shut [Pa]. */
    private record Start(double flowing_Pa, double still_Pa) {}

    private void pumper(Source.Pumper pumper, double pump_Pa, double flow_m3s) {
        walk(pumper.supply(), flow_m3s);
        Feeding before = new Feeding(pumper.supply());
        pumps.add(new PumpState(
                pumper.engine(),
                new Pressure(before.intake_Pa(flow_m3s)),
                new Pressure(before.least_Pa()),
                new Pressure(pump_Pa),
                new Flow(flow_m3s)));
    }

    private void hoses(String place, SupplyHose line, double flow_m3s, Start start) {
        double at_Pa = start.flowing_Pa();
        double still_Pa = start.still_Pa();
        for (Run run : line.runs()) {
            double up_Pa = Splits.lift_Pa(run.rise());
            double fittings_Pa =
                    run.end().map(end -> end.loss().loss_Pa(flow_m3s)).orElse(0.0);
            double after_Pa = at_Pa - Leg.hose_Pa(run, flow_m3s) - up_Pa - fittings_Pa;
            hoses.add(new Piece(
                    place,
                    run.hose().id(),
                    Optional.of(run),
                    run.end(),
                    new Flow(flow_m3s),
                    new Pressure(at_Pa),
                    new Pressure(up_Pa),
                    new Pressure(after_Pa),
                    new Pressure(Math.max(still_Pa, still_Pa - up_Pa))));
            at_Pa = after_Pa;
            still_Pa -= up_Pa;
        }
    }
}
