package org.hosewright.ledger.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;

/** An instrument as the company keeps it.
 *
 * @param instrument what it is and how well it reads
 * @param calibrated day of its last calibration, where known
 */
public record InstrumentRecord(Instrument instrument, Optional<LocalDate> calibrated) {}
