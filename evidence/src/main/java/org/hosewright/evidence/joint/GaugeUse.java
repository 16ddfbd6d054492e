package org.hosewright.evidence.joint;

import java.util.Optional;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument.PressureGauge;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.quantity.Pressure;

/** A pressure gauge as a reading was taken with it, every number filled in.
 *
 * @param id its id; a name in words where nobody named one
 * @param named whether the reading named it
 * @param fixed standard deviation of its fixed error [Pa], or its share where {@code proportional}
 * @param proportional whether the fixed error grows with the reading
 * @param leastCount smallest step read off it [Pa]
 * @param tap where it taps, where stated
 */
record GaugeUse(String id, boolean named, double fixed, boolean proportional, double leastCount, Optional<Tap> tap) {

    /** A gauge of the kit. */
    static GaugeUse of(PressureGauge gauge, double usualRange) {
        double range = gauge.range().map(Pressure::pascals).orElse(usualRange);
        boolean proportional = gauge.accuracy().of() == Accuracy.Of.READING;
        double fixed = gauge.accuracy().share() * (proportional ? 1 : range);
        double least = gauge.leastCount().map(Pressure::pascals).orElse(range * Priors.LEAST_COUNT_SHARE);
        return new GaugeUse(gauge.id(), true, fixed, proportional, least, gauge.tap());
    }

    /** A gauge that nobody named. */
    static GaugeUse unnamed(String words, double usualRange) {
        double fixed = Priors.GAUGE_SHARE * usualRange;
        double least = Priors.LEAST_COUNT_SHARE * usualRange;
        return new GaugeUse(words, false, fixed, false, least, Optional.empty());
    }

    /** Standard deviation of its fixed error at a reading [Pa]. */
    double fixed_Pa(double read_Pa) {
        return proportional ? fixed * Math.abs(read_Pa) : fixed;
    }

    /** Scatter that it begins with at a reading [Pa]. */
    double scatter_Pa(double read_Pa) {
        return Priors.SCATTER_SHARE * fixed_Pa(read_Pa) + leastCount / 2;
    }

    Unknown unknown() {
        return new Unknown(proportional ? Role.SPAN : Role.OFFSET, id, 0, fixed);
    }
}
