package org.hosewright.evidence.calibration;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;

/** What a night lets one believe about the line: every answer with its standard error, absent where the night cannot tell it.
 *
 * <p>A standard error here is such that 1.96 of them make the 95 % half-width, few readings included.
 */
public final class Belief {
    Belief() {}

    /** True pump pressure, at a gauge before the piping, that puts a true total pressure on the tip. */
    public Optional<Known<Pressure>> neededPump(Course line, Pressure tip) {
        throw new UnsupportedOperationException();
    }

    /** The same at a gauge at the discharge, which does not see the loss of the piping. */
    public Optional<Known<Pressure>> neededAtDischarge(Course line, Pressure tip) {
        throw new UnsupportedOperationException();
    }

    /** Flow that a true pump pressure, at a gauge before the piping, delivers. */
    public Optional<Known<Flow>> delivered(Course line, Pressure pump) {
        throw new UnsupportedOperationException();
    }

    /** Total pressure at the tip that a true pump pressure leaves. */
    public Optional<Known<Pressure>> tip(Course line, Pressure pump) {
        throw new UnsupportedOperationException();
    }

    /** Reaction on the crew at a true pump pressure. */
    public Optional<Known<Force>> reaction(Course line, Pressure pump) {
        throw new UnsupportedOperationException();
    }

    /** Loss of a hose. */
    public Optional<Known<HoseLoss>> hose(String id) {
        throw new UnsupportedOperationException();
    }

    /** Loss of a discharge's piping. */
    public Optional<Known<PointLoss>> discharge(String id) {
        throw new UnsupportedOperationException();
    }

    /** Flow factor of a nozzle, even where the night did not determine it and the belief is the prior's. */
    public Optional<Known<Ratio>> nozzle(String id) {
        throw new UnsupportedOperationException();
    }

    /** Correlation of a hose's loss with a discharge's, between -1 and 1; 0 where the night has not both. */
    public double correlation(String hose, String discharge) {
        throw new UnsupportedOperationException();
    }
}
