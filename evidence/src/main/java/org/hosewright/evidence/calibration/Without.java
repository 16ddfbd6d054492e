package org.hosewright.evidence.calibration;

/** What a night would tell with one reading left out.
 *
 * @param terms the numbers that it would still determine
 * @param belief the answers for any line
 */
public record Without(Terms terms, Belief belief) {}
