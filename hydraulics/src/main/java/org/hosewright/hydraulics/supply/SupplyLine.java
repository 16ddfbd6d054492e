package org.hosewright.hydraulics.supply;

import java.util.List;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;

/** A hydrant and the hose from it to the pump.
 *
 * @param hydrant what the hydrant gives
 * @param runs hose from hydrant to pump, rise from hydrant to pump
 * @param keep lowest intake pressure that is pumped at
 */
public record SupplyLine(HydrantCurve hydrant, List<Run> runs, Pressure keep) {
    /** Halvings of the flow; the last one is below any meter's least count. */
    private static final int HALVINGS = 60;

    public SupplyLine {
        runs = List.copyOf(runs);
    }

    /** The intake pressure that a flow leaves at the pump; below {@code keep} it is not to be pumped. */
    public Pressure intakeAt(Flow flow) {
        double intake_Pa = hydrant.pressureAt(flow).pascals();
        double q = flow.cubicMetresPerSecond();
        for (Run run : runs) {
            intake_Pa -= run.hose().loss(run.length(), flow).pascals();
            intake_Pa -= Constants.WATER_PA_PER_M * run.rise().metres();
            intake_Pa -= run.end().map(end -> end.loss().loss_Pa(q)).orElse(0.0);
        }
        return new Pressure(intake_Pa);
    }

    /** The most flow that keeps the intake pressure; 0 where it is not even there with nothing flowing. */
    public Flow most() {
        double low = 0;
        double high = hydrant.flowAt(new Pressure(0)).cubicMetresPerSecond() * 2;
        while (intakeAt(new Flow(high)).pascals() > keep.pascals()) {
            high *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (intakeAt(new Flow(middle)).pascals() >= keep.pascals()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Flow(intakeAt(new Flow(0)).pascals() < keep.pascals() ? 0 : low);
    }
}
