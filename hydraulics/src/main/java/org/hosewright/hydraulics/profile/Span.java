package org.hosewright.hydraulics.profile;

import java.util.List;
import org.hosewright.hydraulics.quantity.Pressure;

/** The pressures that a drawing has to show.
 *
 * @param low_Pa lowest; 0 or below
 * @param high_Pa highest that is drawn or read
 * @param limit_Pa highest limit; 0 where there is none
 */
record Span(double low_Pa, double high_Pa, double limit_Pa) {
    /** A drawing of no pressure at all still has a scale. */
    private static final double LEAST_Pa = 1e5;

    static Span of(List<PressureAt> points, List<Pin> pins, List<LimitBand> limits) {
        double low = 0;
        double high = 0;
        for (PressureAt point : points) {
            low = Math.min(low, point.pressure().pascals() - point.half().pascals());
            high = Math.max(high, point.pressure().pascals() + point.half().pascals());
        }
        for (Pin pin : pins) {
            low = Math.min(low, pin.pressure().pascals() - pin.half().pascals());
            high = Math.max(high, pin.pressure().pascals() + pin.half().pascals());
        }
        double limit = 0;
        for (LimitBand band : limits) {
            limit = Math.max(limit, band.pressure().pascals());
        }
        return new Span(low, Math.max(high, limit > 0 ? 0 : LEAST_Pa), limit);
    }

    Pressure low() {
        return new Pressure(low_Pa);
    }

    /** The top of a plot in which so large a share above the highest limit is left for its hatching. */
    Pressure high(double share) {
        double forLimit = limit_Pa > 0 ? low_Pa + (limit_Pa - low_Pa) / (1 - share) : 0;
        return new Pressure(Math.max(high_Pa + 0.02 * (high_Pa - low_Pa), forLimit));
    }
}
