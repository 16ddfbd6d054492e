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
 * @param coupling what it is coupled by, where stated
 * @param type what it is a batch of, where said
 */
public record HoseRecord(
        Hose hose,
        Basis basis,
        Optional<LocalDate> tested,
        OptionalInt made,
        Optional<Coupling> coupling,
        Optional<String> type) {
    /** How long a service test is good. @source NFPA 1962: yearly */
    private static final int TEST_MONTHS = 12;

    /** The last day that its service test is good for, where one is known. */
    public Optional<LocalDate> testedUntil() {
        return tested.map(day -> day.plusMonths(TEST_MONTHS));
    }
}
