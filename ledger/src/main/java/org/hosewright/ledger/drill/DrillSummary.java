package org.hosewright.ledger.drill;

import java.time.LocalDate;
import java.util.OptionalLong;

/** One test night in a list.
 *
 * @param id UUIDv7
 * @param version as of {@link DrillRecord}
 * @param name the night's name
 * @param date the night
 * @param rows how many rows stand in its table
 * @param acceptedInto the kit version that its numbers were last taken over into; empty where not accepted
 */
public record DrillSummary(
        String id, long version, String name, LocalDate date, long rows, OptionalLong acceptedInto) {}
