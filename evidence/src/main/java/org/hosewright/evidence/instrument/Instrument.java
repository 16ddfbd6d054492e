package org.hosewright.evidence.instrument;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Pressure;

/** A thing that people read on a test night. */
public sealed interface Instrument {
    String id();

    Accuracy accuracy();

    /** A pressure gauge.
     *
     * @param range full scale, where known
     * @param tap where it taps, where known
     * @param leastCount the smallest step that can be read off it, where known
     */
    record PressureGauge(
            String id, Optional<Pressure> range, Accuracy accuracy, Optional<Tap> tap, Optional<Pressure> leastCount)
            implements Instrument {}

    /** A flow meter. */
    record FlowMeter(String id, Accuracy accuracy) implements Instrument {}
}
