package org.hosewright.evidence.calibration;

/** A number that this night cannot tell.
 *
 * @param what the number, in words
 * @param why what it cannot be told apart from
 * @param needs the reading that would settle it
 */
public record Withheld(String what, String why, String needs) {}
