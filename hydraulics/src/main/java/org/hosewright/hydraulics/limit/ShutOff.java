package org.hosewright.hydraulics.limit;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Pressure;

/** The pressures in a line with the nozzle shut and the pump untouched: nothing is lost, the fall of the ground adds.
 *
 * @param pump pump pressure
 * @param runs highest pressure in each run, in laying order
 * @param ends pressure at each run's end; the last one is at the nozzle
 */
public record ShutOff(Pressure pump, List<Pressure> runs, List<Pressure> ends) {
    public ShutOff {
        runs = List.copyOf(runs);
        ends = List.copyOf(ends);
    }

    public static ShutOff of(Line line, Pressure pump) {
        List<Pressure> runs = new ArrayList<>();
        List<Pressure> ends = new ArrayList<>();
        double start_Pa = pump.pascals();
        for (Run run : line.runs()) {
            double end_Pa = start_Pa - Constants.WATER_PA_PER_M * run.rise().metres();
            runs.add(new Pressure(Math.max(start_Pa, end_Pa)));
            ends.add(new Pressure(end_Pa));
            start_Pa = end_Pa;
        }
        return new ShutOff(pump, runs, ends);
    }

    public Pressure atNozzle() {
        return ends.get(ends.size() - 1);
    }

    /** The highest pressure anywhere, the pump included. */
    public Pressure highest() {
        double most_Pa = pump.pascals();
        for (Pressure run : runs) {
            most_Pa = Math.max(most_Pa, run.pascals());
        }
        return new Pressure(most_Pa);
    }
}
