package org.hosewright.hydraulics.network.law;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;

/** A piece that lets water through one way only: a check valve, a pump, a tip into the air.
 *
 * <p>As a law of its own it is, backward, a straight line so steep that what leaks is below rounding. A network treats
 * it exactly: its flow is 0 and its far end as high as may be, or its flow is forward and its loss that of the law.
 *
 * @param forward its law for forward flow
 */
public record OneWay(Law forward) implements Law {
    /** Loss of backward flow [Pa s/m3]: a megapascal drives 1e-16 m3/s. */
    static final double BACKWARD = 1e22;

    public OneWay {
        if (forward instanceof OneWay) {
            throw new InvalidInput("law of a one-way piece", "one-way", "the law of its forward flow", "");
        }
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        return flow_m3s < 0 ? forward.loss_Pa(0) + BACKWARD * flow_m3s : forward.loss_Pa(flow_m3s);
    }

    @Override
    public double slope(double flow_m3s) {
        return flow_m3s < 0 ? BACKWARD : forward.slope(flow_m3s);
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double open_Pa = forward.loss_Pa(0);
        return drop_Pa < open_Pa ? (drop_Pa - open_Pa) / BACKWARD : forward.flow_m3s(drop_Pa);
    }

    @Override
    public double pause_m3s(double from_m3s, double to_m3s) {
        return to_m3s < 0 ? to_m3s : forward.pause_m3s(Math.max(0, from_m3s), to_m3s);
    }

    @Override
    public double misfit_Pa(double flow_m3s, double drop_Pa) {
        double open_Pa = forward.loss_Pa(0);
        return flow_m3s <= 0 ? Math.max(0, drop_Pa - open_Pa) : forward.misfit_Pa(flow_m3s, drop_Pa);
    }

    @Override
    public List<String> listCoefficients() {
        return forward.listCoefficients();
    }

    @Override
    public double coefficient(int at) {
        return forward.coefficient(at);
    }

    @Override
    public Law withCoefficient(int at, double value) {
        return new OneWay(forward.withCoefficient(at, value));
    }

    @Override
    public double lossByCoefficient(int at, double flow_m3s) {
        return forward.lossByCoefficient(at, Math.max(0, flow_m3s));
    }
}
