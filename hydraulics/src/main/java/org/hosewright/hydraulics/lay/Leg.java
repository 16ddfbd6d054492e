package org.hosewright.hydraulics.lay;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Constants;

/** A chain of hose and what it ends in.
 *
 * @param runs hose in laying order; not empty
 * @param end a nozzle or a wye
 */
public record Leg(List<Run> runs, End end) {
    public Leg {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new InvalidInput("hose of a leg", "", "hose in laying order", "");
        }
    }

    /** Every nozzle that the leg leads to, shut ones too, in laying order. */
    public List<End.Outlet> outlets() {
        return end instanceof End.Wye wye
                ? wye.legs().stream().flatMap(leg -> leg.outlets().stream()).toList()
                : List.of((End.Outlet) end);
    }

    public boolean isOpen() {
        return outlets().stream().anyMatch(outlet -> !outlet.shut());
    }

    /** The same leg with one nozzle opened if it is shut, shut if it is open. */
    Leg turned(String outlet) {
        if (end instanceof End.Wye wye) {
            List<Leg> legs = wye.legs().stream().map(leg -> leg.turned(outlet)).toList();
            return new Leg(runs, new End.Wye(wye.appliance(), legs));
        }
        End.Outlet nozzle = (End.Outlet) end;
        return nozzle.id().equals(outlet) ? new Leg(runs, nozzle.turned()) : this;
    }

    double lift_Pa() {
        return Constants.WATER_PA_PER_M
                * runs.stream().mapToDouble(run -> run.rise().metres()).sum();
    }

    /** Loss of all its hose at a flow [Pa]. */
    double hose_Pa(double flow_m3s) {
        double sum = 0;
        for (Run run : runs) {
            sum += hose_Pa(run, flow_m3s);
        }
        return sum;
    }

    static double hose_Pa(Run run, double flow_m3s) {
        return run.hose().loss().value().r() * run.length().metres() * flow_m3s * flow_m3s;
    }
}
