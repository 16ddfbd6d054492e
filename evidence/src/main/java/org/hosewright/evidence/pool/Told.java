package org.hosewright.evidence.pool;

/** A number and how well it is known.
 *
 * @param value the number
 * @param deviation its standard error
 */
public record Told(double value, double deviation) {}
