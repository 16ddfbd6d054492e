package org.hosewright.ledger.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;

/** An instrument as the company keeps it.
 *
 * @param instrument what it is and how well it reads
 * @param offset what a gauge reads less what is true, where a test night determined it
 * @param calibrated day of its last calibration, where known
 */
public record InstrumentRecord(
        Instrument instrument, Optional<Known<Pressure>> offset, Optional<LocalDate> calibrated) {
    /** How long a calibration is good. @source NWCG Water Handling Equipment Guide, App. C: yearly */
    private static final int CALIBRATION_MONTHS = 12;

    /** The last day that its calibration is good for, where one is known. */
    public Optional<LocalDate> calibratedUntil() {
        return calibrated.map(day -> day.plusMonths(CALIBRATION_MONTHS));
    }
}
