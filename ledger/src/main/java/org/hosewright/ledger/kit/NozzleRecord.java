package org.hosewright.ledger.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Nozzle;

/** A nozzle as the company keeps it.
 *
 * @param nozzle what the water sees
 * @param gauged day its bore was measured, where it was
 * @param coupling what it is coupled by, where stated
 */
public record NozzleRecord(Nozzle nozzle, Optional<LocalDate> gauged, Optional<Coupling> coupling) {}
