package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.lay.LayState.Station;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** How far a walk from the pump has come.
 *
 * @param discharge where it began
 * @param place the line, leg or join that it is in
 * @param runs hose behind it
 * @param stations pressures behind it
 * @param still_Pa the pressure here with every outlet shut [Pa]
 * @param sums what it has lost so far
 */
record Way(Discharge discharge, String place, List<Run> runs, List<Station> stations, double still_Pa, Sums sums) {
    Way {
        runs = List.copyOf(runs);
        stations = List.copyOf(stations);
    }

    /** What a way has lost.
     *
     * @param piping_Pa in the discharge [Pa]
     * @param hose_Pa in hose [Pa]
     * @param lift_Pa by rise [Pa]
     */
    record Sums(double piping_Pa, double hose_Pa, double lift_Pa) {}

    static Way of(Discharge discharge, Pressure pump, double flow_m3s) {
        Station start = new Station("pump", new Length(0), pump, new Flow(flow_m3s));
        return new Way(discharge, discharge.id(), List.of(), List.of(start), pump.pascals(), new Sums(0, 0, 0));
    }

    /** The pressure here [Pa]. */
    double pressure_Pa() {
        return stations.get(stations.size() - 1).pressure().pascals();
    }

    Way in(String otherPlace) {
        return new Way(discharge, otherPlace, runs, stations, still_Pa, sums);
    }

    Way withStill(double other_Pa) {
        return new Way(discharge, place, runs, stations, other_Pa, sums);
    }

    Way withPiping(double piping_Pa) {
        return new Way(discharge, place, runs, stations, still_Pa, new Sums(piping_Pa, sums.hose_Pa(), sums.lift_Pa()));
    }

    /** Behind a piece of no length. */
    Way behind(String what, double after_Pa, double flow_m3s) {
        return behind(what, new Length(0), after_Pa, flow_m3s);
    }

    private Way behind(String what, Length length, double after_Pa, double flow_m3s) {
        List<Station> more = new ArrayList<>(stations);
        more.add(new Station(what, length, new Pressure(after_Pa), new Flow(flow_m3s)));
        return new Way(discharge, place, runs, more, still_Pa, sums);
    }

    /** Behind a height. */
    Way lifted(double up_Pa, double flow_m3s) {
        if (up_Pa == 0) {
            return this;
        }
        Way way = behind(up_Pa > 0 ? "rise" : "fall", pressure_Pa() - up_Pa, flow_m3s);
        Sums more = new Sums(sums.piping_Pa(), sums.hose_Pa(), sums.lift_Pa() + up_Pa);
        return new Way(discharge, place, runs, way.stations, still_Pa - up_Pa, more);
    }

    /** Behind a valve that lets no more than a pressure through. */
    Way reduced(double most_Pa) {
        return withStill(Math.min(still_Pa, most_Pa));
    }

    /** Behind a run of hose and the fitting that it ends in. */
    Way behind(Run run, Optional<Appliance> fitting, double flow_m3s) {
        double loss_Pa = Leg.hose_Pa(run, flow_m3s);
        double up_Pa = Splits.lift_Pa(run.rise());
        Way way = behind(run.hose().id(), run.length(), pressure_Pa() - loss_Pa, flow_m3s)
                .lifted(up_Pa, flow_m3s);
        List<Run> more = new ArrayList<>(runs);
        more.add(new Run(run.hose(), run.length(), run.rise(), fitting));
        Sums lost = new Sums(sums.piping_Pa(), sums.hose_Pa() + loss_Pa, way.sums.lift_Pa());
        return new Way(discharge, place, more, way.stations, way.still_Pa, lost);
    }
}
