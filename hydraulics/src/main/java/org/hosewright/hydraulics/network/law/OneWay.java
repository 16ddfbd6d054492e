package org.hosewright.hydraulics.network.law;

/** A piece that lets water through one way only: a check valve, a pump, a tip into the air.
 *
 * <p>Backward it is a straight line so steep that what leaks is below rounding; the network stays one smooth convex
 * problem, and the solver reports the leak as no flow.
 *
 * @param forward its law for forward flow
 */
public record OneWay(Law forward) implements Law {
    /** Loss of backward flow [Pa s/m3]: a megapascal drives 1e-16 m3/s. */
    static final double BACKWARD = 1e22;

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
}
