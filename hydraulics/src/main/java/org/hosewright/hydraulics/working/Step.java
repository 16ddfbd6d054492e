package org.hosewright.hydraulics.working;

/** One step of a hand calculation.
 *
 * @param says what is worked out
 * @param formula the formula in letters; empty where there is none
 * @param numbers the formula with the numbers put in
 * @param result the result with its unit
 * @param source what the formula or the number rests on; empty where it is plain arithmetic
 */
public record Step(String says, String formula, String numbers, String result, String source) {}
