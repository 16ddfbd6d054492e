package org.hosewright.ledger.card;

import org.hosewright.hydraulics.order.OrderedCheck;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** One box of a card: a length, and the pump pressure that stands there or the reason why none does.
 *
 * @param length hose length, whole sections
 * @param sections how many sections that is
 * @param gauge the rounded pressure as the named gauge must show it
 * @param tested true where the length lies in the range that was flown
 * @param check the checks of the rounded pressure, two-sided; a refused one must not be printed as a number
 */
public record CardEntry(Length length, int sections, Pressure gauge, boolean tested, OrderedCheck check) {}
