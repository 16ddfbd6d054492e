package org.hosewright.ledger.drill;

import org.hosewright.ledger.history.Mark;

/** That a night's numbers were taken over into the kit.
 *
 * @param drillVersion version of the drill with this acceptance in it; a later version was changed since
 * @param kitVersion the kit version that first held the numbers
 * @param mark who, when, why
 */
public record AcceptanceRecord(long drillVersion, long kitVersion, Mark mark) {}
