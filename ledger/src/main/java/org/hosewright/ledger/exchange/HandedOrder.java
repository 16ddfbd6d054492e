package org.hosewright.ledger.exchange;

import java.time.LocalDate;

/** The order that handed figures are of.
 *
 * @param number its number at its owner's
 * @param code the short code that its sheets bear
 * @param signed the day it was signed
 * @param by who signed it
 */
public record HandedOrder(long number, String code, LocalDate signed, String by) {}
