package org.hosewright.ledger.kit;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.equipment.Hose;

/** A hose as the company keeps it.
 *
 * @param hose what the water sees
 * @param basis what its loss rests on
 * @param tested day of its last service test, where known
 * @param made year of manufacture, where known
 */
public record HoseRecord(Hose hose, Basis basis, Optional<LocalDate> tested, OptionalInt made) {}
